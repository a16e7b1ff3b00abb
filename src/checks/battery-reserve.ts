import { defineCheck } from '../checker/check.ts'
import { partElseBuild } from '../checker/derived/part-else-build.ts'
import { drainedFrom, standingLoads } from '../checker/derived/running-loads.ts'
import { constant, value } from '../checker/inputs/value.ts'

const given = {
  'battery/capacity': '100 Ah',
  'circuit:alarm/load': '5 A ± 0 A',
  'circuit:alarm/duty': 'standing',
  'build/nominal': '12 V',
} as const

/** How long the battery lasts with the ignition off, down to half of its capacity. */
export default defineCheck({
  id: 'battery-reserve',
  title: 'Battery reserve',
  question: 'How long do the standing loads take to flatten the battery?',
  subject: drainedFrom(),
  worthAsking: 'always',
  inputs: {
    loads: standingLoads('I_i'),
    capacity: partElseBuild('battery', 'capacity', {
      symbol: 'C',
      meaning: 'capacity of the battery at its 20 h rate',
      dimension: 'charge',
      unit: 'Ah',
    }),
    hours: constant({ symbol: 'H', meaning: 'hours of the rated capacity', dimension: 'time', value: 20, unit: 'h' }),
    exponent: value({
      of: 'battery/peukert',
      symbol: 'k',
      meaning: "Peukert's exponent",
      dimension: 'ratio',
      unit: '1',
      exact: true,
      default: { value: 1.2, unit: '1', said: "Peukert's exponent 1.2" },
    }),
  },
  formula: [
    { line: 'I = sum(I_i)', unit: 'A', says: 'what draws with the ignition off' },
    { line: 't_0 = H * (C / (I * H))^k', unit: 'h', says: "until it is empty, by Peukert's form for a 20 h capacity" },
    { line: 't = 0.5 * t_0', unit: 'h', says: 'until half of the capacity is gone' },
  ],
  beside: [
    { line: 't_lin = 0.5 * C / sum(I_i)', unit: 'h', says: 'half of the capacity over the current, without Peukert' },
  ],
  source: {
    title: "Peukert's law in the form of a rated capacity",
    section:
      't = H (C / (I H))^k, C the capacity at the 20 h rate, as battery trade texts give it; not the form in which C is the capacity at one ampere',
  },
  limit: {
    who: 'builder',
    source: 'required in build.md',
    required: ['battery/reserve', 'battery/reserve-time', 'vehicle/battery-reserve', 'vehicle/reserve'],
  },
  notes: [
    "Far below the 20 h rate Peukert's form promises more than the battery holds, and a battery also empties itself: the line beside it is the safer one there.",
    'Where a battery is sold by its reserve capacity, minutes at 25 A down to 10.5 V (SAE J537), service information of GM takes 0.6 Ah for each minute, 69 Ah for 115 min, and has no start once about 40 % are gone: such a capacity is an estimate, so mark it `~`.',
  ],
  caution:
    'A flat lead-acid battery freezes and gives off explosive gas when charged: charge it in the open and keep sparks away. Local codes and licensed practice decide.',
  examples: [
    {
      given,
      expect: 'pass',
      value: 10,
      source:
        'Peukert, the identity of the rated form: 100 Ah at C/20 = 5 A lasts 20 h, half of it 10 h. The one-ampere form has 14.5 h for the same figures, published by an electrical engineering site: 100/5^1.2',
    },
    {
      given: { ...given, 'require/example/reserve': 'at least 10 h' },
      expect: 'pass',
      value: 10,
      source: 'The identity of the rated form, required and reached, at the limit',
    },
    {
      given: { ...given, 'circuit:alarm/load': '5.01 A ± 0 A', 'require/example/reserve': 'at least 10 h' },
      expect: 'fail',
      value: 9.976,
      source: '10 h × (5/5.01)^1.2; just past the limit',
    },
    {
      given: {
        ...given,
        'circuit:alarm/load': '60 W ± 0 W',
        'circuit:fridge/load': '5 A ± 0 A',
        'circuit:fridge/duty': 'standing',
        'battery/peukert': '1.0',
      },
      expect: 'pass',
      value: 5,
      source:
        'Lessons In Electric Circuits, volume I, chapter 11, hours are ampere-hours over amperes: with k = 1, 100 Ah / 10 A is 10 h, half of it 5 h',
    },
    {
      given: { ...given, 'circuit:clock/duty': 'standing' },
      expect: 'missing',
      missing: ['circuit:clock/load'],
      source: 'What the clock draws is not written',
    },
    {
      given: { 'battery/cold-cranking': '540 A', 'circuit:alarm/load': '20 mA', 'circuit:alarm/duty': 'standing' },
      expect: 'missing',
      missing: ['example/capacity'],
      source: 'The capacity of the battery is not written',
    },
  ],
})
