import { defineCheck } from '../checker/check.ts'
import { nominalVoltage } from '../checker/derived/circuit-current.ts'
import { droppingResistance, fanCurrent } from '../checker/derived/fan-current.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'
import { nearestPreferred } from '../checker/tables/preferred-values.ts'

/** The values on sale either side of a resistance in ohms. */
function sayPreferred(ohms: number): string {
  const [coarse, fine] = [nearestPreferred('E12', ohms), nearestPreferred('E24', ohms)]
  return `Next to it are sold, by IEC 60063, ${coarse.below} and ${coarse.above} Ω of the series E12, ${fine.below} and ${fine.above} Ω of E24; the greater makes the fan slower.`
}

/** What a fan's dropping resistor turns into heat at its speed. */
export default defineCheck({
  id: 'series-resistor',
  title: 'Series resistor',
  question: "What does each fan speed's resistor have to dissipate, and what does the fan get?",
  subject: parts(['resistor'], 'each resistor that is fitted, modified, made or trial-fitted'),
  worthAsking: ['resistor/resistance', 'resistor/power-rating', 'resistor/current'],
  inputs: {
    current: fanCurrent('I'),
    resistance: droppingResistance(),
    rating: value({
      of: 'resistor/power-rating',
      symbol: 'P_r',
      meaning: 'power rating of the resistor',
      dimension: 'power',
      unit: 'W',
      exact: true,
    }),
    nominal: nominalVoltage(),
  },
  formula: [{ line: 'P = I^2 * R', unit: 'W', says: 'what the resistor turns into heat' }],
  beside: [
    { line: 'U_fan = U_n - I * R', unit: 'V', says: 'what the fan gets' },
    {
      line: 'P_blocked = U_n^2 / R',
      unit: 'W',
      says: 'with the fan blocked, at worst: all of the voltage on the resistor',
    },
  ],
  remark: {
    of: ['R'],
    say: ({ R }) => (R === undefined || !(R.value > 0) ? null : sayPreferred(R.value)),
  },
  source: {
    title: 'OpenStax College Physics 2e',
    section: '20.4 and 21.1: P = I²R; a current in series is one current',
  },
  limit: {
    who: 'practice',
    source:
      'common practice, no source: a wire-wound resistor at half of its rating, since its rating is for free air and a hot body',
    max: { share: 0.5, of: 'P_r' },
  },
  caution:
    'A dropping resistor glows when its fan is blocked: mount it in the air stream, on metal, away from fuel and loom, with a thermal fuse. Local codes and licensed practice decide.',
  examples: [
    {
      given: {
        'resistor/resistance': '13 Ω ± 0 Ω',
        'resistor/current': '0.6 A ± 0 A',
        'resistor/power-rating': '10 W',
        'build/nominal': '12 V',
      },
      expect: 'pass',
      value: 4.68,
      source:
        'OpenStax College Physics 2e, 21.1, example: 13.0 Ω in series carries 0.600 A and dissipates 4.68 W; half of 10 W',
    },
    {
      given: {
        'resistor/resistance': '5 Ω ± 0 Ω',
        'resistor/current': '2 A ± 0 A',
        'resistor/power-rating': '20 W',
        'build/nominal': '12 V',
      },
      expect: 'fail',
      value: 20,
      source:
        'Lessons In Electric Circuits, volume I, chapter 2: 10 V and 2 A need 5 Ω of at least 20 W; at half of its rating that is too small',
    },
    {
      given: {
        'resistor/resistance': '5 Ω ± 0 Ω',
        'resistor/current': '2 A ± 0 A',
        'resistor/power-rating': '40 W',
        'build/nominal': '12 V',
      },
      expect: 'pass',
      value: 20,
      source: 'Lessons In Electric Circuits, volume I, chapter 2: 20 W, and half of 40 W is 20 W, at the limit',
    },
    {
      given: {
        'resistor/resistance': '5 Ω ± 0 Ω',
        'resistor/current': '2.01 A ± 0 A',
        'resistor/power-rating': '40 W',
        'build/nominal': '12 V',
      },
      expect: 'fail',
      value: 20.2005,
      source: '2.01² × 5; just past the limit',
    },
    {
      given: {
        'resistor/resistance': '1.0 Ω',
        'resistor/power-rating': '100 W',
        'resistor/feeds': 'heater-fan',
        'circuit:blower/feeds': 'heater-fan',
        'circuit:blower/load': '12 A',
        'build/nominal': '12 V',
      },
      expect: 'pass',
      value: 36,
      source:
        'Ohm: 12 V / (1 Ω + 12 V / 12 A) = 6 A, 36 W; half of 100 W. The nodal solution of the two in series says the same',
    },
    {
      given: { 'resistor/resistance': '1.0 Ω', 'resistor/power-rating': '100 W', 'build/nominal': '12 V' },
      expect: 'missing',
      missing: ['example/current'],
      source: 'The current was not measured, and no circuit feeds the fan',
    },
    {
      given: { 'resistor/resistance': '1.0 Ω', 'resistor/current': '6.0 A', 'build/nominal': '12 V' },
      expect: 'missing',
      missing: ['example/power-rating'],
      source: 'What the resistor may dissipate is not written',
    },
  ],
})
