import { defineCheck, type Example } from '../checker/check.ts'
import { circuitCurrent } from '../checker/derived/circuit-current.ts'
import { jointsResistance, outwardResistance, returnResistance } from '../checker/derived/loop-resistance.ts'
import { publishedDrop, startingCircuits } from '../checker/derived/starting-circuits.ts'
import { startingFeed } from '../checker/derived/starting-feed.ts'
import { saidWords } from '../checker/inputs/said-words.ts'
import type { Limit } from '../checker/limit.ts'

const limit = (by: string, symbol: string): Limit => ({
  who: 'practice',
  source:
    "a battery tester's manual for 12 V: 0.5 V on the positive side, 0.3 V on the negative, 0.8 V together; a US Army manual has 0.20 V for each 100 A. The starter maker's figure goes first: write it as a limit of build.md",
  by,
  max: { share: 1, of: symbol },
})

const starter = {
  'circuit/duty': 'starting',
  'circuit/load': '200 A ± 0 A',
  'circuit/cable.area': '35 mm²',
  'circuit/length': '2.0 m ± 0 m',
  'circuit/return': 'chassis',
  'circuit/joints': '0.8 mΩ ± 0 mΩ',
  'build/nominal': '12 V',
  'build/ambient': '20 °C ± 0 °C',
} as const

const both: Example[] = [
  {
    given: {
      ...starter,
      'circuit/return': 'cable',
      'circuit/return.area': '35 mm²',
      'circuit/return.length': '1.0 m ± 0 m',
    },
    aspect: 'both',
    expect: 'pass',
    value: 0.4924,
    source: 'IEC 60228, class 5, 35 mm²: 0.554 mΩ/m × 3.0 m = 1.662 mΩ, joints 0.8 mΩ once; × 200 A',
  },
  {
    given: { ...starter, 'circuit/joints': '90 mΩ ± 0 mΩ' },
    aspect: 'both',
    expect: 'fail',
    value: 18.2216,
    source:
      'OpenStax College Physics 2e, 21.2, problem: 90 mΩ of corrosion in a starter circuit; at a held 200 A it would take more than the battery has',
  },
]

/** What service manuals allow at this current, beside the limit and moving no verdict. */
const sayManuals = (amperes: number): string =>
  `Others have, by manuals for particular vehicles: the US Army ${(0.2 * (amperes / 100)).toFixed(2)} V at this current (0.20 V for each 100 A, TM 10-3930-671-24) and 0.4 V on the positive side, on a truck of 24 V 0.2 V to the solenoid and over its contact (TM 9-2320-211-20); a maker's manual of 1983 0.1 V for each of post to frame, frame to starter, post to starter.`

/** What is lost between battery and starter while it cranks. */
export default defineCheck({
  id: 'starting-drop',
  title: 'Starting drop',
  question: 'What is lost between battery and starter while cranking, joints included?',
  subject: startingCircuits(),
  worthAsking: ['circuit/length', 'circuit/joints', 'circuit/return.length'],
  inputs: {
    current: circuitCurrent(),
    outward: outwardResistance(),
    back: returnResistance(),
    joints: jointsResistance(),
    feedOut: startingFeed('supply'),
    feedBack: startingFeed('earth'),
    supplyLimit: publishedDrop('U_s', 0.5),
    earthLimit: publishedDrop('U_e', 0.3),
    bothLimit: publishedDrop('U_b', 0.8),
    supply: saidWords('supply', 'the side of the supply'),
    earth: saidWords('earth', 'the side of the earth'),
    both: saidWords('both', 'both sides'),
  },
  onlyWorsens: ['R_out', 'R_back', 'R_feed_s', 'R_feed_e'],
  aspects: {
    supply: {
      formula: [
        {
          line: 'DeltaU_s = I * (R_out + R_j / 2 + R_feed_s)',
          unit: 'V',
          says: 'lost on the way there, with half of the joints',
        },
      ],
      limit: limit('supply', 'U_s'),
    },
    earth: {
      formula: [
        {
          line: 'DeltaU_e = I * (R_back + R_j / 2 + R_feed_e)',
          unit: 'V',
          says: 'lost on the way back, with half of the joints',
        },
      ],
      limit: limit('earth', 'U_e'),
    },
    both: {
      formula: [
        {
          line: 'DeltaU = I * (R_out + R_back + R_j + R_feed_s + R_feed_e)',
          unit: 'V',
          says: 'lost there and back, with all joints',
        },
      ],
      limit: limit('both', 'U_b'),
    },
  },
  source: {
    title: 'OpenStax College Physics 2e',
    section: '21.1 and 21.2: resistances in series with the starter take U = I × R of the battery',
  },
  limit: null,
  remark: { of: ['I'], say: ({ I }) => (I === undefined ? null : sayManuals(I.value)) },
  caution:
    'A starter lead is usually without a fuse and can weld a spanner to the body. Take the earth lead off the battery first and put it on last, crank for seconds only and let it cool; local codes and licensed practice decide.',
  examples: [
    {
      given: { ...starter },
      aspect: 'supply',
      expect: 'pass',
      value: 0.3016,
      source: 'IEC 60228, class 5, 35 mm²: 0.554 mΩ/m × 2.0 m = 1.108 mΩ, half of the joints 0.4 mΩ; × 200 A',
    },
    {
      given: { ...starter, 'circuit/joints': '2.784 mΩ ± 0 mΩ' },
      aspect: 'supply',
      expect: 'pass',
      value: 0.5,
      source: 'IEC 60228, class 5: 1.108 mΩ and 1.392 mΩ are 2.5 mΩ; × 200 A is 0.5 V, at the limit',
    },
    {
      given: { ...starter, 'circuit/joints': '2.79 mΩ ± 0 mΩ' },
      aspect: 'supply',
      expect: 'fail',
      value: 0.5006,
      source: 'IEC 60228, class 5: 1.108 mΩ and 1.395 mΩ; just past the limit',
    },
    {
      given: { ...starter },
      aspect: 'earth',
      expect: 'pass',
      value: 0.08,
      source: 'Half of the joints, 0.4 mΩ × 200 A; the chassis is assumed to be 0 Ω',
    },
    {
      given: { ...starter, 'circuit/earth': 'nose', 'earth-point:nose/resistance': '1.2 mΩ ± 0 mΩ' },
      aspect: 'earth',
      expect: 'fail',
      value: 0.32,
      source: 'Measured 1.2 mΩ to the chassis and half of the joints, 1.6 mΩ × 200 A, against 0.3 V',
    },
    ...both,
    {
      given: {
        ...starter,
        'circuit/fuse.box': 'nose-box',
        'fuse-box:nose-box/feed': 'nose-feed',
        'circuit:nose-feed/cable.area': '50 mm²',
        'circuit:nose-feed/length': '1.0 m ± 0 m',
        'circuit:nose-feed/return': 'chassis',
        'circuit:nose-feed/joints': '0.4 mΩ ± 0 mΩ',
      },
      aspect: 'supply',
      expect: 'pass',
      value: 0.4188,
      source:
        'IEC 60228, class 5: 1.108 mΩ and half of the joints, 0.4 mΩ; the feed of the box has 0.386 mΩ and half of its joints, 0.2 mΩ, at the same current: 2.094 mΩ × 200 A',
    },
    {
      given: { ...starter, 'circuit/length': '11.2 m ± 0 m', 'build/nominal': '24 V' },
      aspect: 'both',
      expect: 'fail',
      value: 1.401,
      source:
        'IEC 60228, class 5: 0.554 mΩ/m × 11.2 m + 0.8 mΩ = 7.0048 mΩ × 200 A; at 24 V the limit of 12 V is borrowed',
    },
    {
      given: {
        'circuit/duty': 'starting',
        'circuit/cable.area': '35 mm²',
        'circuit/length': '2.0 m',
        'circuit/return': 'chassis',
        'build/ambient': '20 °C',
      },
      aspect: 'supply',
      expect: 'missing',
      missing: ['circuit:example/load'],
      source: 'The current while cranking was not measured',
    },
  ],
})
