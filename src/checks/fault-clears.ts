import { defineCheck } from '../checker/check.ts'
import { nominalVoltage } from '../checker/derived/circuit-current.ts'
import { breakingCapacity, clearingCurrent } from '../checker/derived/clearing-current.ts'
import { leastFaultWay } from '../checker/derived/fault-current.ts'
import { circuits } from '../checker/subjects.ts'

const pump = {
  'circuit/fuse.rating': '15 A',
  'circuit/cable.area': '2.5 mm²',
  'circuit/cable.insulation': '105 °C',
  'circuit/length': '4.0 m',
  'circuit/return': 'chassis',
  'circuit/joints': '6.0 mΩ',
  'build/nominal': '12 V',
} as const

const hot = '2.5 mm², IEC 60228, class 5, at 105 °C: 7.98 mΩ/m × (1 + 0.00393 × 85) = 10.6457 mΩ/m'

/** Whether a short at the far end, at its weakest, still opens the fuse before the cable is cooked. */
export default defineCheck({
  id: 'fault-clears',
  title: 'Fault clears',
  question: 'Does a short at the far end draw enough to open the fuse quickly?',
  subject: circuits('each circuit that is live, but not those that start the engine', {
    not: [{ key: 'duty', is: ['starting'] }],
  }),
  worthAsking: ['circuit/fuse.rating', 'circuit/fuse.type', 'circuit/fuse.clears', 'circuit/fuse.breaking'],
  inputs: { nominal: nominalVoltage(), ...leastFaultWay(), clears: clearingCurrent(), breaking: breakingCapacity() },
  formula: [
    { line: 'R_f = R_out + R_back + R_j + R_feed + R_b', unit: 'mOhm', says: 'the whole way of the fault' },
    { line: 'I_f = U_n / R_f', unit: 'A', says: 'the least that a short at the far end draws' },
  ],
  source: {
    title: 'Lessons In Electric Circuits, volume I',
    section: 'chapter 11: a short draws the voltage over the resistance that is left',
  },
  limit: {
    who: 'practice',
    source:
      'common practice after ISO 8820-3, whose table was not seen: 3.5 times its rating opens a blade fuse within half a second',
    min: { share: 1, of: 'I_c' },
    max: { share: 1, of: 'I_br' },
    instead: {
      whenGiven: 'circuit/fuse.clears',
      limit: {
        who: 'maker',
        source: "the fuse maker's figure",
        min: { share: 1, of: 'I_c' },
        max: { share: 1, of: 'I_br' },
      },
    },
  },
  notes: [
    'The return through an unmeasured chassis counts 5 mΩ, the most that the FAA handbook (FAA-H-8083-31) allows it.',
  ],
  caution:
    'Never try a short on the vehicle: a battery drives hundreds of amperes, which burn skin and start fires. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  examples: [
    {
      given: { ...pump, 'battery:starter-battery/internal-resistance': '10 mΩ' },
      expect: 'pass',
      value: 188.7,
      source: `${hot} × 4 m = 42.583 mΩ; joints 6 mΩ, chassis 5 mΩ, battery 10 mΩ: 12 V / 63.583 mΩ; 3.5 × 15 A is 52.5 A`,
    },
    {
      given: { ...pump, 'build/battery.cold-cranking': '540 A' },
      expect: 'pass',
      value: 188.7,
      source: `SAE J537, as a vehicle maker's service information prints it: 7.2 V at the current of the label, (12.6 − 7.2) V / 540 A = 10 mΩ, as measured above; ${hot}`,
    },
    {
      given: {
        ...pump,
        'circuit/length': '60 m',
        'circuit/cable.area': '1.5 mm²',
        'build/battery.cold-cranking': '540 A',
      },
      expect: 'fail',
      value: 11.05,
      source:
        '1.5 mm², IEC 60228, class 5, at 105 °C: 13.3 mΩ/m × 1.33405 × 60 m = 1064.57 mΩ; + 21 mΩ: 12 V / 1085.57 mΩ is less than 52.5 A',
    },
    {
      given: {
        ...pump,
        'circuit/cable.insulation': '20 °C ± 0 °C',
        'circuit/length': '20 m ± 0 m',
        'circuit/joints': '63.971428571428571 mΩ ± 0 mΩ',
      },
      expect: 'pass',
      value: 52.5,
      source: '12 V / 52.5 A = 228.5714 mΩ: 159.6 mΩ of cable at 20 °C, 5 mΩ of chassis and the joints; at the limit',
    },
    {
      given: {
        ...pump,
        'circuit/cable.insulation': '20 °C ± 0 °C',
        'circuit/length': '20 m ± 0 m',
        'circuit/joints': '64.5 mΩ ± 0 mΩ',
      },
      expect: 'fail',
      value: 52.379,
      source: '12 V / (159.6 + 5 + 64.5) mΩ; just past the limit',
    },
    {
      given: {
        ...pump,
        'circuit/fuse.rating': '80 A',
        'circuit/fuse.type': 'strip',
        'circuit/fuse.clears': '280 A',
        'circuit/fuse.breaking': '2000 A',
        'circuit/cable.area': '16 mm²',
        'circuit/length': '1.0 m',
        'circuit/joints': '0 mΩ',
        'battery:starter-battery/internal-resistance': '0.1 mΩ',
      },
      expect: 'pass',
      value: 1787.3,
      source:
        '16 mm², IEC 60228, class 5, at 105 °C: 1.21 mΩ/m × 1.33405 = 1.6142 mΩ; chassis 5 mΩ; battery 0.1 mΩ: 12 V / 6.7142 mΩ, between 280 A and 2000 A',
    },
    {
      given: {
        ...pump,
        'circuit/fuse.breaking': '1000 A',
        'circuit/cable.area': '16 mm²',
        'circuit/length': '1.0 m',
        'circuit/joints': '0 mΩ',
      },
      expect: 'fail',
      value: 1814.3,
      source: 'ISO 8820-3 fuses break 1000 A; 12 V / (1.61420 + 5) mΩ is more, with the battery left out and said so',
    },
    {
      given: {
        ...pump,
        'circuit/fuse.box': 'aux-fuses',
        'fuse-box:aux-fuses/feed': 'aux-feed',
        'circuit:aux-feed/cable.area': '16 mm²',
        'circuit:aux-feed/cable.insulation': '105 °C',
        'circuit:aux-feed/length': '2.0 m',
        'circuit:aux-feed/return': 'chassis',
        'circuit:aux-feed/joints': '1.0 mΩ',
      },
      expect: 'pass',
      value: 207.6,
      source: `${hot} × 4 m; joints 6 mΩ, chassis 5 mΩ, once; the feed 1.6142 mΩ/m × 2 m + 1 mΩ = 4.2284 mΩ: 12 V / 57.811 mΩ`,
    },
    {
      given: { ...pump, 'circuit/fuse.rating': '60 A', 'circuit/fuse.type': 'strip' },
      expect: 'missing',
      missing: ['circuit:example/fuse.clears'],
      source: 'Only its maker knows what opens a strip fuse',
    },
    {
      given: { ...pump, 'circuit/fuse.rating': '60 A' },
      expect: 'missing',
      missing: ['circuit:example/fuse.clears'],
      source: 'Above 40 A a fuse is not taken for a blade fuse',
    },
  ],
})
