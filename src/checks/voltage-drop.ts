import { defineCheck } from '../checker/check.ts'
import { circuitCurrent, nominalVoltage } from '../checker/derived/circuit-current.ts'
import { feedDrop } from '../checker/derived/loop-drop.ts'
import { jointsResistance, outwardResistance, returnResistance } from '../checker/derived/loop-resistance.ts'
import { words } from '../checker/inputs/words.ts'
import { circuits } from '../checker/subjects.ts'
import { cableSizes } from '../checker/tables/conductor-resistance.ts'

const threePercent = { max: { share: 0.03, of: 'U_n' } } as const

/** What a circuit loses between its box or battery and its load and back, at the temperature of its zone. */
export default defineCheck({
  id: 'voltage-drop',
  title: 'Voltage drop',
  question: 'What is lost on the way there and back, at temperature?',
  subject: circuits('each circuit that is live'),
  worthAsking: ['circuit/length', 'circuit/joints', 'circuit/return.length'],
  inputs: {
    load: circuitCurrent(),
    outward: outwardResistance(),
    back: returnResistance(),
    joints: jointsResistance(),
    feed: feedDrop(),
    nominal: nominalVoltage(),
    use: words({
      of: 'circuit/use',
      meaning: 'use of the circuit',
      default: { words: 'other', said: 'use `other`, the limit of the rest' },
    }),
  },
  formula: [{ line: 'DeltaU = I * (R_out + R_back + R_j) + DeltaU_feed', unit: 'V', says: 'lost there and back' }],
  onlyWorsens: ['R_out', 'R_back', 'DeltaU_feed'],
  notes: [
    'A section in mm² is counted as plain flexible copper, IEC 60228, class 5: tinned cable has up to 3 % more, cable of few thick strands (classes 1 and 2) mostly less.',
  ],
  whatIf: { of: ['circuit/cable.area', 'circuit/return.area'], sizes: cableSizes },
  source: {
    title: 'FAA AC 43.13-1B, change 1',
    section: '11-66 and tables 11-7 and 11-8: resistance of each length × length × current, the whole run',
  },
  limit: {
    who: 'practice',
    source:
      'ABYC E-11 and ISO 10133 4.8 as makers quote them: 3 % where it must not fall short, 10 % elsewhere; no law for cars was found',
    by: 'use',
    groups: { lighting: threePercent, pump: threePercent, ignition: threePercent, charging: threePercent },
    max: { share: 0.1, of: 'U_n' },
  },
  caution:
    'A pump or lamp short of voltage does less than it should, and a motor draws more. A cable large enough for this may still be too small for its fuse: that is asked separately. Disconnect the battery before you work on wiring; local codes and licensed practice decide.',
  examples: [
    {
      given: {
        'circuit/load': '10 A',
        'circuit/use': 'pump',
        'circuit/length': '3 m',
        'circuit/cable.area': '4 mm²',
        'circuit/return': 'chassis',
        'circuit/joints': '0 mΩ',
        'build/nominal': '12 V',
        'build/ambient': '20 °C',
      },
      expect: 'pass',
      value: 0.1485,
      source: 'IEC 60228, class 5, 4 mm²: 4.95 mΩ/m × 3 m × 10 A; 3 % of 12 V is 0.36 V',
    },
    {
      given: {
        'circuit/load': '7 A',
        'circuit/use': 'pump',
        'circuit/length': '4.8 m',
        'circuit/cable.area': '1.5 mm²',
        'circuit/return': 'chassis',
        'circuit/joints': '6 mΩ',
        'circuit/zone': 'engine-bay',
        'build/nominal': '12 V',
        'build/zones.engine-bay': '70 °C',
      },
      expect: 'fail',
      value: 0.5767,
      source:
        'IEC 60228, class 5, 1.5 mm²: 13.3 mΩ/m × (1 + 0.00393 × 50) = 15.913 mΩ/m; × 4.8 m = 76.38 mΩ; + 6 mΩ; × 7 A',
    },
    {
      given: {
        'circuit/load': '7 A',
        'circuit/use': 'pump',
        'circuit/length': '4.8 m',
        'circuit/cable.area': '2.5 mm²',
        'circuit/return': 'chassis',
        'circuit/joints': '6 mΩ',
        'circuit/zone': 'engine-bay',
        'build/nominal': '12 V',
        'build/zones.engine-bay': '70 °C',
      },
      expect: 'marginal',
      value: 0.3628,
      source:
        'IEC 60228, class 5, 2.5 mm²: 7.98 mΩ/m × 1.1965 × 4.8 m = 45.83 mΩ; + 6 mΩ; × 7 A. A load written as 7 A is 6.5 A to 7.5 A, so U is 0.03 V',
    },
    {
      given: {
        'circuit/load': '5.0 A',
        'circuit/use': 'heating',
        'circuit/length': '10 m',
        'circuit/cable.area': '12 AWG',
        'circuit/return.area': '12 AWG',
        'circuit/return.length': '10 m',
        'circuit/joints': '0 mΩ',
        'build/nominal': '12 V',
        'build/ambient': '20 °C',
      },
      expect: 'pass',
      value: 0.521,
      source:
        'Copper wire tables: 12 AWG is 5.21 Ω/km at 20 °C; × 20 m there and back × 5 A. OpenStax College Physics, 20.3, has 0.104 Ω for 20 m of it',
    },
    {
      given: {
        'circuit/load': '60 W',
        'circuit/use': 'lighting',
        'circuit/length': '2.0 m',
        'circuit/cable.area': '2.5 mm²',
        'circuit/return': 'chassis',
        'circuit/joints': '0 mΩ',
        'circuit/fuse.box': 'front-box',
        'fuse-box:front-box/feed': 'main-feed',
        'circuit:main-feed/cable.area': '16 mm²',
        'circuit:main-feed/length': '1.0 m',
        'circuit:main-feed/return': 'chassis',
        'circuit:main-feed/joints': '0 mΩ',
        'circuit:lamps/load': '15 A',
        'circuit:lamps/fuse.box': 'front-box',
        'build/nominal': '12 V',
        'build/ambient': '20 °C',
      },
      expect: 'pass',
      value: 0.104,
      source:
        'IEC 60228, class 5: 60 W / 12 V = 5 A × 7.98 mΩ/m × 2 m = 0.0798 V; the feed carries 5 A + 15 A over 1 m of 16 mm², 1.21 mΩ/m: 0.0242 V more',
    },
    {
      given: {
        'circuit/load': '10.0 A',
        'circuit/use': 'lighting',
        'circuit/length': '5.00 m',
        'circuit/cable.area': '2.5 mm²',
        'circuit/return': 'chassis',
        'circuit/joints': '0 mΩ',
        'build/nominal': '12 V',
        'build/ambient': '20 °C',
        'limit/voltage-drop/lighting': 'max 4 %, work lamps only',
      },
      expect: 'waived',
      value: 0.399,
      source:
        'IEC 60228, class 5, 2.5 mm²: 7.98 mΩ/m × 5 m × 10 A; more than 3 % of 12 V and less than the 4 % of build.md',
    },
    {
      given: {
        'circuit/load': '10 A',
        'circuit/joints': '6 mΩ',
        'circuit/cable.area': '4 mm²',
        'circuit/return': 'chassis',
        'build/nominal': '12 V',
        'build/ambient': '20 °C',
      },
      expect: 'missing',
      missing: ['circuit:example/length'],
      source: 'Nothing can be worked without the length of the cable',
    },
  ],
})
