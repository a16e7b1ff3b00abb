import { defineCheck } from '../checker/check.ts'
import { anyParts } from '../checker/derived/any-parts.ts'
import { value } from '../checker/inputs/value.ts'

/** The air between a part and the nearest thing that it must not touch. */
export default defineCheck({
  id: 'pipe-clearance',
  title: 'Pipe clearance',
  question: 'Are hot, moving and fuel-carrying parts far enough apart?',
  subject: anyParts('each part whose clearance was measured'),
  worthAsking: ['part/clearance'],
  inputs: {
    clearance: value({
      of: 'part/clearance',
      symbol: 'c',
      meaning: 'clearance to the nearest thing that it must not touch',
      dimension: 'length',
      unit: 'mm',
    }),
  },
  formula: [{ line: 'c_least = c', unit: 'mm', says: 'the least clearance' }],
  source: {
    title: 'Maryland COMAR 11.22.03.10',
    section:
      'B(2): an inspection there rejects a fuel line less than 1½ in (38.1 mm) from exhaust or moving parts; a value for rejecting, not for design, and other places have others',
  },
  limit: { who: 'builder', source: 'the clearance that build.md requires', required: ['part/clearance'] },
  notes: ['Measure with the engine rocked, the suspension at both ends of its travel and the wheels at both locks.'],
  caution:
    'Fuel that drips on a hot exhaust burns, and a brake pipe that rubs fails without a sign. Let the exhaust cool before you reach in. Local codes and an inspector decide what is enough.',
  examples: [
    {
      given: { 'pipe/clearance': '46 mm ± 2 mm', 'require/example/clearance': 'at least 40 mm' },
      expect: 'pass',
      value: 46,
      source: 'JCGM 106:2012, 8.2: 46 ± 2.3 mm lies above 40 mm with its whole uncertainty',
    },
    {
      given: { 'pipe/clearance': '34 mm ± 0 mm', 'require/example/clearance': 'at least 1.5 in' },
      expect: 'fail',
      value: 34,
      source: 'COMAR 11.22.03.10B(2): 1½ in is 38.1 mm, and 34 mm is less',
    },
    {
      given: { 'hose/clearance': '25 mm' },
      expect: 'pass',
      value: 25,
      source: 'Nothing is required of it, so it is a working',
    },
    {
      given: { 'ask/pipe-clearance': 'example', 'pipe/bore': '6 mm', 'require/example/clearance': 'at least 40 mm' },
      expect: 'missing',
      missing: ['example/clearance'],
      source: 'It was asked for, and nobody measured it',
    },
  ],
})
