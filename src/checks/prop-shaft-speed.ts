import { defineCheck } from '../checker/check.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const length = (key: string, symbol: string, meaning: string) =>
  value({ of: `prop-shaft/${key}`, symbol, meaning, dimension: 'length', unit: 'mm', sense: 'more' })

const critical = [
  { line: 'd = D - 2 * w', unit: 'mm', says: 'bore of the tube' },
  { line: 'i = sqrt(D^2 + d^2) / 4', unit: 'mm', says: 'radius of gyration of a tube' },
  {
    line: 'n_c = pi / (2 * L^2) * i * sqrt(E / rho)',
    unit: 'rpm',
    says: 'critical speed: the first mode of a tube held at its joints',
  },
] as const

const tube = {
  'prop-shaft/length': '1000 mm',
  'prop-shaft/outside-diameter': '50.0 mm',
  'prop-shaft/wall': '2.0 mm',
}

/** How near to the speed at which it whirls a shaft runs. */
export default defineCheck({
  id: 'prop-shaft-speed',
  title: 'Prop shaft speed',
  question: 'How close to its critical speed does the shaft run?',
  subject: parts(['prop-shaft'], 'each shaft with a joint at each end that is fitted, modified, made or trial-fitted'),
  worthAsking: ['prop-shaft/outside-diameter', 'prop-shaft/wall', 'prop-shaft/max-speed'],
  inputs: {
    speed: value({
      of: 'prop-shaft/max-speed',
      symbol: 'n',
      meaning: 'fastest that it turns',
      dimension: 'frequency',
      unit: 'rpm',
    }),
    length: length('length', 'L', 'length between joint centres'),
    outside: length('outside-diameter', 'D', 'outside diameter of the tube'),
    wall: length('wall', 'w', 'wall of the tube'),
    modulus: value({
      of: 'prop-shaft/elastic-modulus',
      symbol: 'E',
      meaning: "Young's modulus",
      dimension: 'pressure',
      unit: 'GPa',
      exact: true,
      default: { value: 207, unit: 'GPa', said: 'steel, E = 207 GPa' },
    }),
    density: value({
      of: 'prop-shaft/density',
      symbol: 'rho',
      meaning: 'density of the metal',
      dimension: 'density',
      unit: 'kg_m3',
      exact: true,
      default: { value: 7850, unit: 'kg_m3', said: 'steel, 7850 kg/m³' },
    }),
  },
  formula: [{ line: 'n_run = n', unit: 'rpm', says: 'the running speed' }],
  beside: [...critical, { line: 's = n / n_c', unit: 'percent', says: 'share of the critical speed' }],
  alsoFails: ({ outside, wall }) =>
    2 * wall > outside * (1 + 1e-9)
      ? [{ path: 'prop-shaft/wall', why: 'is thicker than half of the tube that it is the wall of' }]
      : [],
  source: {
    title: "Carvill, Mechanical Engineer's Data Handbook",
    section: '1.6.6: whirling of a uniform shaft in short bearings, N = (π/2L²) √(EI/m); I/A of a tube is (D² + d²)/16',
  },
  limit: {
    who: 'practice',
    source: 'common practice, no source: at most three quarters of the critical speed',
    max: {
      formula: [...critical, { line: 'n_max = 0.75 * n_c', unit: 'rpm', says: '75 % of the critical speed' }],
    },
  },
  notes: [
    'The tube is taken as straight, in balance and held at its joint centres; sliding joints, dents and runout lower the speed at which it whirls.',
  ],
  caution:
    'A shaft that whirls breaks its joints and thrashes about under the seats: hoops round it, and never run it with anyone beside it or under the vehicle. A shaft that was cut or welded has to be balanced by a specialist.',
  examples: [
    {
      given: { ...tube, 'prop-shaft/max-speed': '5000 rpm' },
      expect: 'pass',
      value: 5000,
      source:
        'Carvill, 1.6.6: i = √(50² + 46²)/4 = 16.985 mm, √(207 GPa / 7850) = 5135.2 m/s, π/2 × 0.016985 × 5135.2 = 137.0 Hz = 8220 rpm, of which 75 % is 6165 rpm',
    },
    {
      given: { ...tube, 'prop-shaft/length': '1400 mm', 'prop-shaft/max-speed': '5000 rpm' },
      expect: 'fail',
      value: 5000,
      source: 'The same tube 1.4 times as long: the critical speed falls with the square, 8220/1.96 = 4194 rpm',
    },
    {
      given: { ...tube, 'prop-shaft/max-speed': '6200 rpm ± 100 rpm' },
      expect: 'marginal',
      value: 6200,
      source: 'The same tube at 6165 rpm, 75 %, within what the running speed can be',
    },
    {
      given: { 'prop-shaft/length': '872 mm', 'prop-shaft/outside-diameter': '35 mm', 'prop-shaft/wall': '5.0 mm' },
      expect: 'missing',
      missing: ['example/max-speed'],
      source: 'How fast it turns is not written',
    },
  ],
})
