import { defineCheck } from '../checker/check.ts'
import { designAcceleration } from '../checker/derived/design-acceleration.ts'
import { nextHolder, weakestHolder } from '../checker/derived/restraint.ts'
import { holderKinds, holdersOf } from '../checker/derived/tank-holders.ts'
import { parts } from '../checker/subjects.ts'

const tank = {
  'tank/mass': '10.0 kg ± 0 kg',
  'tank/filled-volume': '50.0 L ± 0 L',
  'tank/contents-density': '0.800 kg/L ± 0 kg/L',
}
const straps = {
  'strap:tank-straps/count': '2',
  'strap:tank-straps/width': '30.0 mm ± 0 mm',
  'strap:tank-straps/thickness': '2.0 mm ± 0 mm',
  'strap:tank-straps/yield-stress': '210 MPa',
}
const thin = { ...straps, 'strap:tank-straps/thickness': '0.5 mm ± 0 mm' }
const force = '10 kg + 0.95 × 50 L × 0.8 kg/L = 48 kg; × 20 × 9.80665 = 9414.4 N'

/** Whether what holds a full tank stands the acceleration that it is designed for: straps, brackets, bolts and welds, of which the weakest counts. */
export default defineCheck({
  id: 'restraint',
  title: 'Restraint',
  question: 'Do straps, brackets and bolts hold the full tank under braking and bumps?',
  subject: parts(['tank'], 'each tank that is fitted, modified, made or trial-fitted'),
  worthAsking: scope => holderKinds.some(kind => holdersOf(scope, kind).length > 0),
  inputs: {
    stress: weakestHolder('stress'),
    allowed: weakestHolder('allowed'),
    secondStress: nextHolder(2, 'stress'),
    secondAllowed: nextHolder(2, 'allowed'),
    thirdStress: nextHolder(3, 'stress'),
    thirdAllowed: nextHolder(3, 'allowed'),
    fourthStress: nextHolder(4, 'stress'),
    fourthAllowed: nextHolder(4, 'allowed'),
    acceleration: designAcceleration(),
  },
  formula: [{ line: 'sigma_most = sigma', unit: 'MPa', says: 'the stress in what holds it least well' }],
  beside: [
    { line: 's_1 = sigma / sigma_a', unit: 'percent', says: 'of what holds it least well, the share that is used' },
    { line: 's_2 = sigma_2 / sigma_2_a', unit: 'percent', says: 'of the next weakest' },
    { line: 's_3 = sigma_3 / sigma_3_a', unit: 'percent', says: 'of the third' },
    { line: 's_4 = sigma_4 / sigma_4_a', unit: 'percent', says: 'of the fourth' },
  ],
  source: {
    title: "Shigley's Mechanical Engineering Design, 9th edition",
    section:
      'stress is force over area, in bending M over b t²/6; a fillet by its throat, table 9-2; the force is the mass of the full tank × the design acceleration',
  },
  limit: {
    who: 'practice',
    source:
      'yield stress over 1.5 (common practice, no source), three quarters of proof stress for bolts (ISO 898-1), at the acceleration of UN R67 for gas containers in cars, borrowed and from memory; no rule for petrol tanks was found, and local codes decide',
    max: { share: 1, of: 'sigma_a' },
    setting: {
      dimension: 'acceleration',
      own: {
        max: {
          formula: [
            {
              line: 'sigma_own = sigma_a * a / 20 gn',
              unit: 'MPa',
              says: 'what it could be here if it held at the default 20 gₙ',
            },
          ],
        },
      },
    },
  },
  notes: [
    'Each kind is taken to carry the whole force in turn, as links of a chain, and the parts of one kind to share it. What they are fixed to is not in it: thin sheet tears out before a strap breaks.',
  ],
  caution:
    'A tank that comes loose in a crash burns. Lift and try it empty, never under a vehicle on a jack; never weld at a tank that has held fuel before it was made safe. Whether it may go on the road is for the authority that approves it.',
  examples: [
    {
      given: { ...tank, ...straps },
      expect: 'pass',
      value: 39.227,
      source: `${force} over 2 × 2 × 30 × 2 = 240 mm²; yield 210/1.5 = 140 MPa`,
    },
    {
      given: { ...tank, ...thin },
      expect: 'fail',
      value: 156.906,
      source: `${force} over 2 × 2 × 30 × 0.5 = 60 mm²; yield 210/1.5 = 140 MPa`,
    },
    {
      given: { ...tank, ...thin, 'limit/restraint/tank:example': 'max 10 gn, for the field only' },
      expect: 'waived',
      value: 78.453,
      source: '48 kg × 10 × 9.80665 over 60 mm²: it holds at the 10 gₙ of build.md and would not at 20 gₙ',
    },
    {
      given: {
        ...tank,
        ...straps,
        'bolt:tank-bolts/count': '4',
        'bolt:tank-bolts/stress-area': '36.6 mm²',
        'bolt:tank-bolts/proof-stress': '580 MPa',
      },
      expect: 'pass',
      value: 39.227,
      source: `${force}; straps 39.2 of 140 MPa (28 %), bolts 9414 N over 4 × 36.6 mm² = 64.3 of 435 MPa (15 %): the straps are the weakest`,
    },
    {
      given: {
        ...tank,
        'bracket:tank-bracket/count': '4',
        'bracket:tank-bracket/width': '40.0 mm ± 0 mm',
        'bracket:tank-bracket/thickness': '5.0 mm ± 0 mm',
        'bracket:tank-bracket/arm': '20.0 mm ± 0 mm',
        'bracket:tank-bracket/yield-stress': '235 MPa',
      },
      expect: 'fail',
      value: 282.43,
      source: `${force} / 4 × 20 mm = 47 072 N·mm over 40 × 5²/6 = 166.67 mm³; yield 235/1.5 = 156.7 MPa`,
    },
    {
      given: {
        ...tank,
        'weld:tank-foot-weld/leg-size': '3.0 mm ± 0 mm',
        'weld:tank-foot-weld/length': '100 mm ± 0 mm',
        'weld:tank-foot-weld/allowable-stress': '90 MPa',
      },
      expect: 'pass',
      value: 44.387,
      source: `${force} over 0.707 × 3 × 100 = 212.1 mm² of throat (Shigley, table 9-2)`,
    },
    {
      given: {
        ...straps,
        'tank/mass': '10.0 kg',
        'tank/contents': 'petrol',
        'tank/filled-volume': '50 L',
        'strap:side-strap/width': '25 mm',
      },
      expect: 'missing',
      missing: ['side-strap/thickness', 'side-strap/yield-stress'],
      source: 'Of one of the straps it is not known how thick and how strong it is',
    },
  ],
})
