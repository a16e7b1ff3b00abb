import { describe, expect, test } from 'vitest'
import { type Check, defineCheck, type Example } from '../../src/checker/check.ts'
import { value } from '../../src/checker/inputs/value.ts'
import { parts } from '../../src/checker/subjects.ts'
import { weaknessesOf } from './weak-examples.ts'

const source = 'invented for this test'
const pass: Example = { given: { 'duct/bore': '60 mm' }, expect: 'pass', value: 60, source }
const fail: Example = { given: { 'duct/bore': '40 mm' }, expect: 'fail', value: 40, source }
const missing: Example = { given: { 'duct/width': '40 mm' }, expect: 'missing', missing: ['example/bore'], source }

function checkWith(examples: readonly Example[]): Check {
  return defineCheck({
    id: 'bore',
    title: 'Bore',
    question: 'Is the bore wide enough?',
    subject: parts(['duct'], 'each duct'),
    worthAsking: 'always',
    inputs: { bore: value({ of: 'duct/bore', symbol: 'd', meaning: 'bore', dimension: 'length', unit: 'mm' }) },
    formula: [{ line: 'd_in = d', unit: 'mm', says: 'the bore' }],
    source: { title: 'None', section: 'invented for this test' },
    limit: { who: 'builder', source: 'invented', min: { value: 50, unit: 'mm' } },
    caution: null,
    examples,
  })
}

describe('examples that try a check from all sides', () => {
  test('a pass, a fail and a missing, all different, are enough', () => {
    expect(weaknessesOf(checkWith([pass, fail, missing]))).toEqual([])
  })

  test.each([
    ['no example fails', [pass, missing], ['no example comes out as fail']],
    ['no example is missing', [pass, fail], ['no example comes out as missing']],
    [
      'no example at all',
      [],
      ['no example comes out as pass', 'no example comes out as fail', 'no example comes out as missing'],
    ],
    ['the same example twice', [pass, fail, missing, pass], ['example 4 is example 1 again']],
    [
      'an example without a source',
      [pass, fail, missing, { ...pass, given: {}, source: ' ' }],
      ['example 4 has no source'],
    ],
    ['a pass without a value', [{ given: {}, expect: 'pass', source }, fail, missing], ['example 1 has no value']],
    [
      'a missing that names nothing',
      [pass, fail, { given: {}, expect: 'missing', source }],
      ['example 3 does not say what is missing'],
    ],
    ['a missing with a value', [pass, fail, { ...missing, value: 3 }], ['example 3 is missing and has a value']],
    [
      'a pass that names what is missing',
      [{ ...pass, missing: ['a/b'] }, fail, missing],
      ['example 1 is not missing and names what is'],
    ],
  ] as [string, Example[], string[]][])('%s is weak', (_, examples, weaknesses) => {
    expect(weaknessesOf(checkWith(examples))).toEqual(weaknesses)
  })
})
