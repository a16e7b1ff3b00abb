import { defineCheck } from '../checker/check.ts'
import { ifGiven } from '../checker/inputs/choose.ts'
import { derived } from '../checker/inputs/derived.ts'
import { partCount } from '../checker/inputs/part-count.ts'
import { value } from '../checker/inputs/value.ts'
import { parts } from '../checker/subjects.ts'

const length = (key: string, symbol: string, meaning: string) =>
  value({ of: `duct/${key}`, symbol, meaning, dimension: 'length', unit: 'mm' })
const area = { symbol: 'A', meaning: 'area of the ducts fitted', dimension: 'area' } as const

const round = derived({
  ...area,
  inputs: { count: partCount('n'), bore: length('bore', 'd', 'bore of one') },
  formula: [{ line: 'A = n * pi / 4 * d^2', unit: 'mm2', says: 'the ducts fitted, together' }],
})

const flat = derived({
  ...area,
  inputs: {
    count: partCount('n'),
    width: length('width', 'B', 'inside width of one'),
    height: length('height', 'H', 'inside height of one'),
  },
  formula: [{ line: 'A = n * B * H', unit: 'mm2', says: 'the ducts fitted, together' }],
})

/** Area of the ducts that replace another, as a share of what was there. */
export default defineCheck({
  id: 'duct-area',
  title: 'Duct area',
  question: 'Do the ducts that replace another carry the same area?',
  subject: parts(['duct'], 'each duct that is fitted, modified, made or trial-fitted'),
  worthAsking: ['duct/replaced-bore', 'duct/replaced-count'],
  inputs: {
    fitted: ifGiven({ ...area, of: 'duct/width' }, ifGiven({ ...area, of: 'duct/bore' }, round, flat), round),
    replacedBore: length('replaced-bore', 'd_0', 'bore of one that was replaced'),
    replacedCount: value({
      of: 'duct/replaced-count',
      symbol: 'n_0',
      meaning: 'how many were replaced',
      dimension: 'ratio',
      unit: '1',
      exact: true,
      default: { value: 1, unit: '1', said: 'replaced-count 1' },
    }),
  },
  formula: [
    { line: 'A_0 = n_0 * pi / 4 * d_0^2', unit: 'mm2', says: 'the ducts that were there' },
    { line: 's = A / A_0', unit: 'percent', says: 'share of the area that was there' },
  ],
  source: {
    title: 'OpenStax College Physics 2e',
    section: '12.1: the flow in n equal pipes is n·A·v, so equal areas carry equal flow at equal speed',
  },
  limit: {
    who: 'practice',
    source: 'common practice, no source: a tenth less area is a tenth more speed',
    min: { value: 90, unit: 'percent' },
  },
  notes: ['Equal area is not equal resistance: several narrow ducts hold the flow back more than one wide one.'],
  caution: null,
  examples: [
    {
      given: { 'duct/bore': '60.0 mm', 'duct/replaced-bore': '60.0 mm', 'duct/replaced-count': '1' },
      expect: 'pass',
      value: 100,
      source: 'The same duct again: all of the area',
    },
    {
      given: { 'duct/bore': '60 mm', 'duct/replaced-bore': '75 mm', 'duct/replaced-count': '1' },
      expect: 'fail',
      value: 64,
      source: 'OpenStax College Physics 2e, 12.1, areas as squares of bores: 60²/75² = 0.64',
    },
    {
      given: { 'duct/width': '100 mm', 'duct/height': '50 mm', 'duct/replaced-bore': '80 mm' },
      expect: 'pass',
      value: 99.47,
      source: 'Plane geometry: 100 × 50 mm = 5000 mm² beside π/4 × 80² = 5026.5 mm²',
    },
    {
      given: { 'duct/bore': '57 mm', 'duct/replaced-bore': '60 mm' },
      expect: 'marginal',
      value: 90.25,
      source: '57²/60² = 0.9025, and half a millimetre in either bore moves it past 0.90',
    },
    {
      given: { 'duct/replaced-bore': '75 mm', 'duct/replaced-count': '2' },
      expect: 'missing',
      missing: ['example/bore'],
      source: 'The bore of the new duct is not written',
    },
  ],
})
