import { describe, expect, test } from 'vitest'
import measure from '../../../plugins/measure/index.ts'
import quantities from '../../../plugins/quantities/index.ts'
import unitCheck from '../../../plugins/unit-check/index.ts'
import { bare, plain, run } from '../chain.ts'

const alone = plain().use(unitCheck).freeze()
const withProperties = bare()
  .use(unitCheck, { properties: { length: 'length', mass: 'mass' } })
  .freeze()

const rules = (text: string, chain = alone): string[] =>
  run(chain, text).file.messages.map(({ ruleId, line, column }) => `${line}:${column} ${ruleId}`)

test('the doubtful figures of a README are told where they stand, and nothing is changed', () => {
  const text = '# Shelf\n\nIt is 860 mm wide and weighs\n25 pounds.\n'
  const { tree, file } = run(alone, text)
  expect(
    file.messages.map(({ ruleId, line, column, source, fatal }) => ({ ruleId, line, column, source, fatal })),
  ).toEqual([{ ruleId: 'ambiguous-unit', line: 4, column: 1, source: 'oddleg', fatal: false }])
  expect(tree).toEqual(plain.parse(text))
})

describe('what is doubtful', () => {
  test.each([
    ['it is 12,5 mm', '1:7 decimal-mark'],
    ['takes 3 gal of it', '1:7 ambiguous-unit'],
    ['Cut 2 350 mm lengths', '1:5 two-readings'],
  ])('%j is told', (text, message) => {
    expect(rules(text)).toEqual([message])
  })

  test.each(['it is 12.5 mm', 'takes 3 imp gal of it', 'Cut two 350 mm lengths', '`3 gal`'])('%j is clear', text => {
    expect(rules(text)).toEqual([])
  })

  test('options settle what they name', () => {
    const settled = plain().use(unitCheck, { gallon: 'imperial', decimal: 'comma' }).freeze()
    expect(rules('takes 3 gal, 12,5 mm', settled)).toEqual([])
  })
})

describe('the dimension of a measure', () => {
  test('is told where the property has another', () => {
    expect(run(withProperties, 'a :measure[64 L]{of="shelf/length"} b').messages).toEqual([
      '1:3-1:36 dimension Unexpected volume `64 L` for `shelf/length`, expected a length',
    ])
  })

  test.each([
    ':measure[64 mm]{of="shelf/length"}',
    ':measure[64 L]{of="shelf/contents"}',
    ':measure[64 L]{of="shelf/toString"}',
    ':measure[64 L]',
    ':other[64 L]{of="shelf/length"}',
  ])('%s is clear', text => {
    expect(rules(text, withProperties)).toEqual([])
  })
})

test('behind the plugins that read figures nothing is told twice', () => {
  const chain = bare()
    .use(measure)
    .use(quantities)
    .use(unitCheck, { properties: { length: 'length' } })
    .freeze()
  expect(rules('25 pounds, :measure[25 pounds]{of="a/mass"} and :measure[64 L]{of="a/length"}', chain)).toEqual([
    '1:21 ambiguous-unit',
    '1:1 ambiguous-unit',
    '1:49 dimension',
  ])
})
