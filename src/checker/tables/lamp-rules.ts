/** What a lamp is for, by the names of the rule, and the words by which builders say it. The first that matches counts. */
export const lampFunctions: readonly (readonly [name: string, words: RegExp])[] = [
  ['daytime-running-lamp', /daytime|\bdrl\b/],
  ['dipped-beam', /\bdip(?:ped)?\b|low beam|passing beam/],
  ['main-beam', /\bmain beam|high beam|full beam|driving beam|^main$/],
  ['front-fog-lamp', /front fog/],
  ['rear-fog-lamp', /rear fog/],
  ['side-marker-lamp', /side marker/],
  ['side-reflector', /side (?:retro )?reflector/],
  ['front-reflector', /front (?:retro )?reflector/],
  ['rear-reflector', /reflector/],
  ['rear-position-lamp', /rear position|rear side|\btail/],
  ['front-position-lamp', /front position|front side/],
  ['high-stop-lamp', /(?:high|third|cent).*(?:stop|brake)/],
  ['stop-lamp', /\bstop\b|\bbrake\b/],
  ['hazard-warning', /hazard/],
  ['direction-indicator', /indicator|\bturn\b|flasher/],
  ['reversing-lamp', /revers|backup/],
  ['rear-plate-lamp', /plate/],
]

/** The functions that a car must have, whatever else its date and class ask for. */
export const requiredFunctions: Readonly<Record<string, string>> = {
  'main-beam': 'UN R48, 6.1',
  'dipped-beam': 'UN R48, 6.2',
  'reversing-lamp': 'UN R48, 6.4',
  'direction-indicator': 'UN R48, 6.5',
  'stop-lamp': 'UN R48, 6.7',
  'rear-plate-lamp': 'UN R48, 6.8',
  'front-position-lamp': 'UN R48, 6.9',
  'rear-position-lamp': 'UN R48, 6.10',
  'rear-fog-lamp': 'UN R48, 6.11',
  'rear-reflector': 'UN R48, 6.14',
} // the numbers of the paragraphs are from memory

export type LampSize = 'height-top' | 'height-bottom' | 'spacing' | 'edge-distance'

/** Where a lamp may be, in mm, by its function: only what was read in the regulation. The other rows are not here, so that their answer is missing. */
export const lampRows: Readonly<Record<string, Partial<Record<LampSize, number>>>> = {
  'daytime-running-lamp': { 'height-top': 1500, 'height-bottom': 250, spacing: 600 }, // UN R48, 6.19.4
}

/** What daytime running lamps may be apart on a vehicle narrower than 1300 mm. */
export const narrowSpacing = 400 // mm, UN R48, 6.19.4
export const narrowWidth = 1300 // mm, UN R48, 6.19.4

/** `impracticable`: the top where the shape of the vehicle allows no lower one. */
export type Pointer = { readonly source: string; readonly impracticable?: number } & Partial<Record<LampSize, number>>

const federal = '49 CFR 571.108 (FMVSS 108), as a letter of the NHTSA quotes it'
const inch = 25.4 // mm, exactly (NIST SP 811)

/** What other rules give, in mm: they stand beside a row that was not seen, and judge nothing. */
export const otherRows: Readonly<Record<string, readonly Pointer[]>> = {
  'stop-lamp': [
    {
      source: 'Road Vehicles Lighting Regulations 1989 (SI 1989/1796), schedule 12',
      'height-top': 1500,
      impracticable: 2100,
      'height-bottom': 350,
      spacing: 400,
    },
    { source: federal, 'height-top': 72 * inch, 'height-bottom': 15 * inch },
  ],
  'rear-fog-lamp': [
    {
      source: 'Road Vehicles Lighting Regulations 1989 (SI 1989/1796), schedule 11, by an owners’ club’s summary',
      'height-top': 1000,
      'height-bottom': 250,
    },
  ],
  'direction-indicator': [{ source: federal, 'height-top': 83 * inch, 'height-bottom': 15 * inch }],
  'front-position-lamp': [
    {
      source: 'Road Vehicles Lighting Regulations 1989 (SI 1989/1796), schedule 2, first used from 1 April 1986',
      'height-top': 1500,
      impracticable: 2100,
      'edge-distance': 400,
    },
  ],
  'dipped-beam': [
    {
      source: 'Road Vehicles Lighting Regulations (Northern Ireland) 2000 (SR 2000/169), schedule 4',
      'height-top': 1200,
      'edge-distance': 400,
    },
    {
      source: 'Road Vehicles Lighting Regulations 1989 (SI 1989/1796), schedule 4, by an owners’ club’s summary',
      'height-bottom': 500,
    },
  ],
  'rear-position-lamp': [
    {
      source: 'Road Vehicles Lighting Regulations 1989 (SI 1989/1796), schedule 10, by an owners’ club’s summary',
      'height-top': 1500,
      impracticable: 2100,
      'height-bottom': 350,
      spacing: 500,
      'edge-distance': 400,
    },
  ],
  'rear-reflector': [
    { source: 'Road Vehicles Lighting Regulations 1989 (SI 1989/1796), schedule 18', 'edge-distance': 400 },
  ],
}
