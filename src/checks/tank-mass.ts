import { defineCheck } from '../checker/check.ts'
import { densityOfContents, fullVolume } from '../checker/derived/tank-contents.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const given = { 'tank/mass': '14.60 kg', 'tank/filled-volume': '58.40 L', 'tank/contents': 'petrol' }

/** What a tank weighs full: its own mass and its contents, 95 % of what it holds. It feeds restraint and axle loads. */
export default defineCheck({
  id: 'tank-mass',
  title: 'Tank mass',
  question: 'What does it weigh full, and where?',
  subject: parts(['tank'], 'each tank that is fitted, modified, made or trial-fitted'),
  worthAsking: ['tank/contents', 'tank/contents-density', 'tank/filled-volume', 'tank/fill-line', 'volume/outside'],
  inputs: {
    own: value({ of: 'tank/mass', symbol: 'm_t', meaning: 'mass of the empty tank', dimension: 'mass', unit: 'kg' }),
    full: fullVolume(),
    density: densityOfContents(),
    at: value({
      of: 'tank/at',
      symbol: 'x',
      meaning: 'how far behind the front axle it stands',
      dimension: 'length',
      unit: 'mm',
    }),
  },
  formula: [{ line: 'm_full = m_t + V_full * rho', unit: 'kg', says: 'the tank and its contents at full' }],
  beside: [{ line: 'x_tank = x', unit: 'mm', says: 'how far behind the front axle it stands' }],
  source: {
    title: 'OpenStax College Physics 2e',
    section:
      '11.2: mass is density × volume; EN 228 and EN 590 for the densities of petrol and diesel, the heavier end of what they allow',
  },
  limit: null,
  caution:
    'A full tank is heavy and its contents move: drain it before you lift it, and never lie under one that hangs on a jack or a rope. Petrol vapour is heavier than air and runs along the floor to the nearest spark.',
  examples: [
    {
      given: { ...given, 'tank/at': '1890 mm' },
      expect: 'pass',
      value: 57.6,
      source: 'EN 228: petrol at 0.775 kg/L × 0.95 × 58.4 L = 42.997 kg, and 14.6 kg of tank',
    },
    {
      given: { 'tank/mass': '12 kg', 'tank/filled-volume': '60 L', 'tank/contents-density': '0.84 kg/L' },
      expect: 'pass',
      value: 59.88,
      source: 'Density × volume: 0.84 kg/L × 57 L = 47.88 kg, and 12 kg of tank',
    },
    {
      given: {
        'volume/outside': 'box 500 x 300 x 200 mm',
        'tank/wall': '2 mm',
        'tank/mass': '9.0 kg',
        'tank/contents': 'diesel',
      },
      expect: 'pass',
      value: 32.1,
      source: 'EN 590: diesel at 0.845 kg/L × 0.95 × 28.776 L = 23.10 kg, and 9.0 kg of tank',
    },
    {
      given: { 'tank/mass': '14.6 kg', 'tank/filled-volume': '58.4 L' },
      expect: 'missing',
      missing: ['example/contents'],
      source: 'Without its contents nothing says what a litre of them weighs',
    },
    {
      given: { 'tank/filled-volume': '58.4 L', 'tank/contents': 'petrol' },
      expect: 'missing',
      missing: ['example/mass'],
      source: 'The empty tank was not weighed',
    },
  ],
})
