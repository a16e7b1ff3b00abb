import { defineCheck } from '../checker/check.ts'
import { coolantHoses } from '../checker/derived/coolant-hose.ts'
import { ifGiven } from '../checker/inputs/choose.ts'
import { ofAnother } from '../checker/inputs/each.ts'
import { constant, value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const flow = (of: string) => value({ of, symbol: 'q', meaning: 'coolant that flows', dimension: 'flow', unit: 'L_min' })
const temperature = (key: string, symbol: string, meaning: string) =>
  value({ of: `part/temperature-${key}`, symbol, meaning, dimension: 'temperature', unit: 'degC' })
const bore = value({ of: 'part/bore', symbol: 'd', meaning: 'bore of the hose', dimension: 'length', unit: 'mm' })

const given = {
  'radiator/flow': '30.0 L/min',
  'radiator/temperature-in': '90.0 °C',
  'radiator/temperature-out': '80.0 °C',
}

/** The heat that the coolant leaves in the radiator, and how fast it runs in the hose. */
export default defineCheck({
  id: 'cooling',
  title: 'Cooling',
  question: 'What heat does the coolant flow carry, and at what speed in the hose?',
  subject: parts(['radiator', 'heater'], 'each radiator and heater that is fitted, modified, made or trial-fitted'),
  worthAsking: ['part/temperature-in', 'part/temperature-out', 'part/flow'],
  inputs: {
    flow: ifGiven(
      { symbol: 'q', meaning: 'coolant that flows', dimension: 'flow', of: 'part/flow' },
      flow('part/flow'),
      flow('engine/coolant-flow'),
    ),
    hotter: temperature('in', 't_in', 'temperature of what flows in'),
    cooler: temperature('out', 't_out', 'temperature of what flows out'),
    density: constant({
      symbol: 'rho',
      meaning: 'density of the coolant, as water',
      dimension: 'density',
      value: 1,
      unit: 'kg_L',
    }),
    capacity: constant({
      symbol: 'c',
      meaning: 'heat that 1 kg of water takes up for 1 K, in J',
      dimension: 'ratio',
      value: 4186,
      unit: '1',
    }),
    bore: ofAnother(coolantHoses, bore, bore),
  },
  formula: [{ line: 'Q = rho * q * c * (t_in - t_out)', unit: 'kW', says: 'the heat that the coolant carries' }],
  beside: [{ line: 'v = q / (pi / 4 * d^2)', unit: 'm_s', says: 'speed of the coolant in the hose' }],
  source: {
    title: 'OpenStax College Physics 2e',
    section: '14.2: Q = m c ΔT, c of water 4186 J/(kg·K); 12.1: Q = A v',
  },
  limit: {
    who: 'builder',
    source: 'the heat that build.md requires',
    required: ['part/heat', 'vehicle/cooling', 'engine/heat'],
  },
  notes: [
    'The coolant is taken as water. Water and glycol half and half carry some 10 to 15 % less at the same flow (from memory).',
  ],
  caution:
    'Never open a hot cooling system: it boils over at once and scalds. Keep hands and sleeves away from the fan.',
  examples: [
    {
      given,
      expect: 'pass',
      value: 20.93,
      source: 'OpenStax, 14.2: 0.5 kg/s × 4186 J/(kg·K) × 10 K; nothing is required, so it is a working',
    },
    {
      given: {
        'radiator/flow': '0.250 L/s ± 0 L/s',
        'radiator/temperature-in': '80.0 °C ± 0 °C',
        'radiator/temperature-out': '20.0 °C ± 0 °C',
        'require/example/heat': 'at least 62 kW',
      },
      expect: 'pass',
      value: 62.79,
      source: 'OpenStax, 14.2: 0.250 kg of water through 60 K is 62.8 kJ; here each second',
    },
    {
      given: { ...given, 'require/example/heat': 'at least 30 kW' },
      expect: 'fail',
      value: 20.93,
      source: 'OpenStax, 14.2: 20.93 kW, and build.md asks for 30 kW',
    },
    {
      given: {
        'engine:engine/coolant-flow': '44 L/min ± 2 L/min',
        'radiator/temperature-in': '86 °C ± 1 °C',
        'radiator/temperature-out': '78 °C ± 1 °C',
        'require/example/heat': 'at least 22 kW',
        'hose:top-hose/bore': '32 mm',
      },
      expect: 'marginal',
      value: 24.6,
      source:
        'OpenStax, 14.2: 0.7333 kg/s × 4186 × 8 K = 24.56 kW; the two temperatures alone leave U = 5 kW; in a hose of 32 mm it runs at 0.91 m/s',
    },
    {
      given: { 'radiator/flow': '44 L/min', 'radiator/temperature-in': '86 °C' },
      expect: 'missing',
      missing: ['example/temperature-out'],
      source: 'What the radiator took out is not known',
    },
  ],
})
