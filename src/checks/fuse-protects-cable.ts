import { defineCheck } from '../checker/check.ts'
import { correctedRating } from '../checker/derived/cable-rating.ts'
import { value } from '../checker/inputs/value.ts'
import { circuits } from '../checker/subjects.ts'

/** What other rules let the fuse of a cable be where it is more than the cable carries; they move no verdict. */
function sayOtherRules(fuse: number, rating: number): string | null {
  if (!(rating > 0) || fuse <= rating) return null
  const [road, boat] = [1.25, 1.5].map(share => `${(share * rating).toFixed(1)} A`)
  return `Rules differ: the California Department of Transportation (electrical standard, 3.4) takes the next size up to 125 % of what the cable carries, here ${road}; 33 CFR 183.455(c)(1) and 46 CFR 183.380(d), for boats, up to 150 %, here ${boat}. The one taken here is none of these.`
}

/** Whether the fuse opens before the cable is too hot: its rating against what the cable carries where it runs. */
export default defineCheck({
  id: 'fuse-protects-cable',
  title: 'Fuse protects cable',
  question: 'Does the fuse open before the cable overheats?',
  subject: circuits('each circuit that is live; one that starts the engine only where the maker rates its cable', {
    not: [{ key: 'duty', is: ['starting'], unlessGiven: 'cable.rating' }],
  }),
  worthAsking: ['circuit/fuse.rating', 'circuit/fuse.box'],
  inputs: {
    fuse: value({
      of: 'circuit/fuse.rating',
      symbol: 'I_n',
      meaning: 'rating of the fuse',
      dimension: 'current',
      unit: 'A',
      exact: true,
    }),
    rating: correctedRating(),
  },
  formula: [{ line: 'I_fuse = I_n', unit: 'A', says: 'the fuse' }],
  onlyWorsens: [],
  remark: {
    of: ['I_n', 'I_z'],
    say: ({ I_n, I_z }) => sayOtherRules(I_n?.value ?? Number.NaN, I_z?.value ?? Number.NaN),
  },
  source: { title: 'IEC 60364-4-43', section: '433.1: In ≤ Iz, the fuse is rated at no more than the cable carries' },
  limit: {
    who: 'standard',
    source:
      'IEC 60364-4-43, 433.1, In ≤ Iz, which is stricter than the 150 % of 33 CFR 183.455(c)(1) for boats; which rule holds is for local codes and licensed practice to decide',
    max: { share: 1, of: 'I_z' },
  },
  caution:
    'A cable that carries more than it can stand burns inside the loom before anyone sees it. Never fit a larger fuse to stop one from blowing. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  examples: [
    {
      given: {
        'circuit/fuse.rating': '25 A',
        'circuit/cable.area': '16 AWG',
        'circuit/cable.insulation': '105 °C',
        'build/ambient': '30 °C',
      },
      expect: 'pass',
      value: 25,
      source: '33 CFR 183.425, table 5: 16 AWG, 105 °C, carries 25 A at 30 °C; the fuse is at the limit',
    },
    {
      given: {
        'circuit/fuse.rating': '30 A',
        'circuit/cable.area': '16 AWG',
        'circuit/cable.insulation': '105 °C',
        'build/ambient': '30 °C',
      },
      expect: 'fail',
      value: 30,
      source: '33 CFR 183.425, table 5: 16 AWG, 105 °C, carries 25 A at 30 °C',
    },
    {
      given: {
        'circuit/fuse.rating': '20 A',
        'circuit/cable.area': '14 AWG',
        'circuit/cable.insulation': '105 °C',
        'circuit/zone': 'engine-bay',
        'circuit/loom': 'body-loom',
        'circuit:horn/loom': 'body-loom',
        'circuit:lamps/loom': 'body-loom',
        'build/zones.engine-bay': '50 °C',
      },
      expect: 'pass',
      value: 20,
      source:
        '33 CFR 183.425, table 5, with its notes 1 and 2: 35 A × 0.85 in an engine space of 50 °C × 0.7 for three cables is 20.8 A as a cable maker prints it',
    },
    {
      given: {
        'circuit/fuse.rating': '30 A',
        'circuit/cable.area': '2.5 mm²',
        'circuit/cable.insulation': '105 °C',
        'build/ambient': '30 °C',
      },
      expect: 'fail',
      value: 30,
      source: "Makers' data sheets of ISO 6722 class B cable: 2.5 mm² carries 29 A",
    },
    {
      given: {
        'circuit/fuse.rating': '10 A',
        'circuit/cable.area': '2.5 mm²',
        'circuit/cable.insulation': '90 °C',
        'circuit/zone': 'manifold',
        'build/zones.manifold': '95 °C',
      },
      expect: 'fail',
      value: 10,
      source: '√((90 − 95)/(90 − 30)) does not exist: a cable in a zone as hot as its insulation carries nothing',
    },
    {
      given: {
        'circuit/fuse.rating': '15 A',
        'circuit/cable.rating': '32 A',
        'circuit/return': 'chassis',
        'build/ambient': '30 °C',
      },
      expect: 'missing',
      missing: ['circuit:example/cable.insulation'],
      source: 'Without the temperature of the insulation the rating cannot be corrected for its zone',
    },
  ],
})
