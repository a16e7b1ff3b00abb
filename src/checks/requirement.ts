import { defineCheck } from '../checker/check.ts'
import { asWritten } from '../checker/formula.ts'
import { requiredValue } from '../checker/inputs/required-value.ts'
import { requiredPaths } from '../checker/subjects.ts'

/** Each thing that build.md requires something of, against what the record holds. */
export default defineCheck({
  id: 'requirement',
  title: 'Requirement',
  question: 'Does each thing meet what build.md requires of it, or by how much not?',
  subject: requiredPaths('each path that build.md requires a figure of'),
  worthAsking: 'always',
  inputs: { measured: requiredValue('x') },
  formula: [{ line: 'x_measured = x', unit: asWritten, says: 'what the record holds' }],
  source: {
    title: 'JCGM 106:2012',
    section: '8.2 and 8.3: a measured value is held against its limits with its expanded uncertainty',
  },
  limit: { who: 'builder', source: 'required in build.md', ofSubject: true },
  caution: null,
  examples: [
    {
      given: { 'require/example/length': '612 mm to 618 mm', 'prop-shaft/length': '615 mm' },
      expect: 'pass',
      value: 615,
      source: 'JCGM 106:2012, 8.2: 615 ± 0.58 mm lies between 612 and 618 mm with its whole uncertainty',
    },
    {
      given: { 'require/example/ground-clearance': 'at least 200 mm', 'tank/ground-clearance': '196 mm' },
      expect: 'fail',
      value: 196,
      source: 'Short by 4 mm, and U is 0.58 mm: 2 × 0.5 mm / √3 (JCGM 100:2008, 4.3.7)',
    },
    {
      given: { 'require/example/ground-clearance': 'at least 200 mm', 'tank/ground-clearance': '200 mm' },
      expect: 'marginal',
      value: 200,
      source: 'JCGM 106:2012, 8.3: the limit lies within the uncertainty, so it may be 199.5 mm',
    },
    {
      given: { 'require/example/length': '612 mm to 618 mm', 'prop-shaft/wall': '2.5 mm' },
      expect: 'missing',
      missing: ['example/length'],
      source: 'What was not measured meets no requirement',
    },
  ],
})
