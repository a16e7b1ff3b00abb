import { defineCheck } from '../checker/check.ts'
import { ofPump } from '../checker/derived/fuel-line.ts'
import { engineDemand } from '../checker/derived/fuel-use.ts'
import { densityOfContents, ofFuel } from '../checker/derived/tank-contents.ts'
import { ifGiven } from '../checker/inputs/choose.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const hole = { symbol: 'd', meaning: 'bore of the hole', dimension: 'length' } as const
const push = { symbol: 'p', meaning: 'pressure before it', dimension: 'pressure' } as const
const bore = (key: string) => value({ of: `restrictor/${key}`, ...hole, unit: 'mm' })
const pressure = (of: string) => value({ of, ...push, unit: 'kPa' })

const given = {
  'restrictor/bore': '1.40 mm',
  'pump:fuel-pump/flow': '95 L/h',
  'pump:fuel-pump/pressure': '25.0 kPa',
  'engine:engine/consumption': '16 L/h',
  'tank:fuel-tank/contents': 'petrol',
}

/** What a small hole lets back to the tank, so that the rest is enough for the engine. */
export default defineCheck({
  id: 'return-restrictor',
  title: 'Return restrictor',
  question: "How much does the restrictor send back at the pump's pressure?",
  subject: parts(['restrictor'], 'each restrictor that is fitted, modified, made or trial-fitted'),
  worthAsking: ['restrictor/bore', 'restrictor/return-bore', 'restrictor/discharge-coefficient'],
  inputs: {
    coefficient: value({
      of: 'restrictor/discharge-coefficient',
      symbol: 'C_d',
      meaning: 'share of the ideal flow that passes',
      dimension: 'ratio',
      unit: '1',
      default: { value: 0.62, unit: '1', said: 'discharge coefficient 0.62, a sharp edge' },
    }),
    bore: ifGiven({ ...hole, of: 'restrictor/bore' }, bore('bore'), bore('return-bore')),
    pressure: ifGiven(
      { ...push, of: 'restrictor/pressure' },
      pressure('restrictor/pressure'),
      ofPump(pressure('pump/pressure'), 'pump/pressure'),
    ),
    density: ofFuel(densityOfContents()),
    pumped: ofPump(
      value({
        of: 'pump/flow',
        symbol: 'q_p',
        meaning: 'what the pump moves',
        dimension: 'flow',
        unit: 'L_h',
        exact: true,
      }),
      'pump/flow',
    ),
    demand: engineDemand(),
  },
  formula: [{ line: 'q = C_d * pi / 4 * d^2 * sqrt(2 * p / rho)', unit: 'L_h', says: 'what the hole sends back' }],
  source: {
    title: 'Crane TP 410',
    section: 'orifice Q = C A √(2 Δp/ρ), example 7-23, as restated in the documentation of the fluids library',
  },
  limit: {
    who: 'practice',
    source:
      'what the pump moves less what the engine burns at full power: more sent back starves it; the bore is taken against that of the line as small',
    max: {
      formula: [{ line: 'q_max = q_p - q_e', unit: 'L_h', says: "the pump's flow less the engine's demand" }],
    },
  },
  notes: [
    "The pump's flow is that of its maker, free; against a pressure it moves less. A hole this small blocks: filter before it.",
  ],
  caution:
    'Let the pressure off before you open a line, engine cold and battery off. Petrol work is done outside, away from anything that sparks, with an extinguisher at hand.',
  examples: [
    {
      given,
      expect: 'pass',
      value: 27.6,
      source:
        '0.62 × 1.5394 mm² × √(2 × 25 kPa / 775 kg/m³) = 0.62 × 1.5394 × 8.032 m/s = 7.666 cm³/s; 95 − 16 = 79 L/h are left',
    },
    {
      given: { ...given, 'restrictor/bore': '3.00 mm' },
      expect: 'fail',
      value: 126.7,
      source: '0.62 × 7.0686 mm² × 8.032 m/s = 35.20 cm³/s, and 79 L/h are left',
    },
    {
      given: {
        'restrictor/return-bore': '2.000 in',
        'restrictor/discharge-coefficient': '0.625',
        'restrictor/pressure': '2.003 psi',
        'pump:fuel-pump/flow': '30000 L/h',
        'engine:engine/consumption': '16 L/h',
        'tank:fuel-tank/contents-density': '999 kg/m³',
      },
      expect: 'pass',
      value: 23979,
      source:
        'Crane TP 410, example 7-23: a 2 in orifice with C = 0.625 under 4.4 inHg of water, less the water above it, 13.81 kPa, passes 106 US gal/min = 24 075 L/h; here 0.625 × 2026.8 mm² × 5.258 m/s',
    },
    {
      given: { ...given, 'engine:engine/consumption': '67.5 L/h' },
      expect: 'marginal',
      value: 27.6,
      source:
        'The same hole, and 95 − 67.5 = 27.5 L/h are left; a bore written as 1.40 mm may be 1.395 mm, and the pressure 24.95 kPa',
    },
    {
      given: {
        'restrictor/bore': '1.4 mm',
        'pump:fuel-pump/flow': '95 L/h',
        'engine:engine/consumption': '16 L/h',
        'tank:fuel-tank/contents': 'petrol',
      },
      expect: 'missing',
      missing: ['fuel-pump/pressure'],
      source: 'What the pump pushes with is not known',
    },
  ],
})
