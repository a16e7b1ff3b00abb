import { defineCheck } from '../checker/check.ts'
import { sayLeastRadius } from '../checker/derived/sheet-words.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const length = (key: string, symbol: string, meaning: string) =>
  value({ of: `part/${key}`, symbol, meaning, dimension: 'length', unit: 'mm' })

const allowance = {
  line: 'A_b = theta * (r + K * t)',
  unit: 'mm',
  says: 'length of the neutral line round the bend',
} as const

const given = {
  'bracket/thickness': '3.0 mm',
  'bracket/inside-radius': '4.0 mm',
  'bracket/bend-angle': '90°',
  'bracket/k-factor': '0.42',
}
const channel = {
  'bracket/thickness': '0.0400 in',
  'bracket/inside-radius': '0.1600 in',
  'bracket/bend-angle': '90°',
  'bracket/k-factor': '0.447',
}

/** How long a folded piece is before it is folded. Legs are outside, to where the faces would meet. */
export default defineCheck({
  id: 'bend-allowance',
  title: 'Bend allowance',
  question: 'How long must the flat be for the folded bracket?',
  subject: parts(['bracket', 'strap'], 'each bracket and strap that is fitted, modified, made or trial-fitted'),
  worthAsking: ['part/inside-radius', 'part/bend-angle', 'part/k-factor', 'part/leg-a', 'part/leg-b'],
  inputs: {
    angle: value({
      of: 'part/bend-angle',
      symbol: 'theta',
      meaning: 'angle bent through',
      dimension: 'angle',
      unit: 'deg',
    }),
    radius: length('inside-radius', 'r', 'radius at the inside of the bend'),
    thickness: length('thickness', 't', 'thickness'),
    kFactor: value({
      of: 'part/k-factor',
      symbol: 'K',
      meaning: 'where the neutral line lies, as a share of the thickness',
      dimension: 'ratio',
      unit: '1',
    }),
    legA: length('leg-a', 'a', 'first leg, outside'),
    legB: length('leg-b', 'b', 'second leg, outside'),
  },
  aspects: {
    allowance: { formula: [allowance], limit: null },
    flat: {
      formula: [
        allowance,
        {
          line: 'L_flat = a + b + A_b - 2 * (r + t) * tan(theta / 2)',
          unit: 'mm',
          says: 'both legs and the bend, less both setbacks',
        },
      ],
      limit: null,
    },
  },
  afterword: (_, scope) => sayLeastRadius(scope),
  source: {
    title: 'FAA-H-8083-31, Aviation Maintenance Technician Handbook, Airframe',
    section:
      "chapter 4, straight line bends: bend allowance and setback K (R + T); K-factors by thickness in Machinery's Handbook run from 0.38 to 0.48",
  },
  limit: null,
  notes: [
    "Bend a test piece of the same sheet and measure it: K differs with the tool and the temper. No radius is judged here; a sheet bent tighter than its maker's least radius cracks.",
  ],
  caution: null,
  examples: [
    {
      given: channel,
      aspect: 'allowance',
      expect: 'pass',
      value: 7.1,
      source:
        'FAA-H-8083-31, U-channel of 0.040 in sheet, R = 0.16 in, with the formula of US Navy training, (0.0173 R + 0.0078 T) N, whose K is 0.447: 0.28 in; worked here, the printed answer is from memory',
    },
    {
      given: { ...channel, 'bracket/leg-a': '1.000 in', 'bracket/leg-b': '1.000 in' },
      aspect: 'flat',
      expect: 'pass',
      value: 47.7,
      source:
        'FAA-H-8083-31, U-channel: setback 0.16 + 0.04 = 0.20 in, flats 0.80 in each, and 0.28 in of bend: 0.80 + 0.80 + 0.28 = 1.88 in',
    },
    {
      given: { ...given, 'bracket/leg-a': '40 mm', 'bracket/leg-b': '65 mm' },
      aspect: 'flat',
      expect: 'pass',
      value: 99.262,
      source: 'π/2 × (4 + 0.42 × 3) = 8.262 mm; 40 + 65 + 8.262 − 2 × 7 × tan 45°',
    },
    {
      given: { ...given, 'bracket/bend-angle': '30°', 'bracket/leg-a': '40 mm', 'bracket/leg-b': '65 mm' },
      aspect: 'flat',
      expect: 'pass',
      value: 104.003,
      source: 'π/6 × 5.26 = 2.754 mm; 105 + 2.754 − 14 × tan 15° (0.267949) = 105 + 2.754 − 3.751',
    },
    {
      given: { ...given, 'bracket/leg-a': '40 mm' },
      aspect: 'flat',
      expect: 'missing',
      missing: ['example/leg-b'],
      source: 'A bracket of two legs, of which one was not measured',
    },
  ],
})
