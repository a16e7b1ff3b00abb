import { describe, expect, test } from 'vitest'
import measure from '../../../plugins/measure/index.ts'
import quantities from '../../../plugins/quantities/index.ts'
import { bare, run } from '../chain.ts'
import { nodeOf, nodesOf, outline } from '../nodes-of.ts'

const alone = bare().use(measure).freeze()
const before = bare().use(quantities).use(measure).freeze()
const after = bare().use(measure).use(quantities).freeze()

const readme = 'The shelf is :measure[860 mm]{of="shelf/length" with="steel tape"} long.'

test('a measure of a README names its figure', () => {
  const { tree, messages } = run(alone, readme)
  expect(outline(tree)).toEqual([
    'root',
    '  paragraph',
    '    text "The shelf is "',
    '    measure',
    '      quantity "860 mm"',
    '    text " long."',
  ])
  expect(nodeOf(tree, 'measure')).toMatchObject({
    of: 'shelf/length',
    with: 'steel tape',
    note: null,
    supersedes: false,
  })
  expect(nodeOf(tree, 'quantity').quantity).toMatchObject({ number: 860, unit: 'mm', dimension: 'length' })
  expect(messages).toEqual([])
})

test('before or after the figures of the prose are read, the tree is the same', () => {
  const text = `${readme} It weighs :measure[about **25 kg**]{of="shelf/mass"} and 5 mm more.`
  expect(run(before, text).tree).toEqual(run(after, text).tree)
  expect(nodesOf(run(after, text).tree, 'quantity').map(({ value }) => value)).toEqual(['860 mm', '25 kg', '5 mm'])
})

describe('where the value of an attribute stands', () => {
  const attributes: [attributes: string, places: Record<string, string>][] = [
    ['{of="a/b"}', { of: 'a/b' }],
    ["{of='a/b' with=tape}", { of: 'a/b', with: 'tape' }],
    ['{ of = "a/b"  note="to the neck"}', { of: 'a/b', note: 'to the neck' }],
    ['{of="a/b" supersedes}', { of: 'a/b', supersedes: 'supersedes' }],
    ['{of="a/b" supersedes=true}', { of: 'a/b', supersedes: 'true' }],
    ['{#one .two of="a}b"}', { id: 'one', class: 'two', of: 'a}b' }],
    ['{of="first" of="second"}', { of: 'second' }],
    ['{of=""}', { of: '' }],
  ]
  test.each(attributes)('%s', (written, places) => {
    const text = `🛠 [x](y) :measure[a \\] 5 mm [z]]${written} end`
    const node = nodeOf(run(alone, text).tree, 'measure')
    const found = Object.entries(node.attributePositions).map(([key, { start, end }]) => [
      key,
      text.slice(start.offset, end.offset),
    ])
    expect(Object.fromEntries(found)).toEqual(places)
  })

  test('over the lines of a quote', () => {
    const text = '> a :measure[5 mm]{of="a/b"\n> with="steel tape"} b'
    const place = nodeOf(run(alone, text).tree, 'measure').attributePositions.with
    expect(place).toMatchObject({ start: { line: 2, column: 9 }, end: { line: 2, column: 19 } })
  })
})

describe('a label holds one quantity', () => {
  const accepted = [
    '860 mm',
    'about 860 mm',
    '**860 mm**',
    '860 mm long',
    '[860 mm](https://example.org)',
    '4.30',
    '−3',
    '1/2',
    '12',
  ]
  test.each(accepted)('`%s` is accepted', label => {
    expect(run(alone, `:measure[${label}]{of="a/b"}`).messages).toEqual([])
  })

  const refused: [label: string, message: string][] = [
    ['fairly long', '1:1-1:32 not-a-quantity Unexpected `fairly long`, expected one quantity such as `860 mm`'],
    ['', '1:1-1:21 not-a-quantity Unexpected ``, expected one quantity such as `860 mm`'],
    [
      '860 mm, then 5 mm',
      '1:1-1:38 not-a-quantity Unexpected 2 quantities in `860 mm, then 5 mm`, expected one quantity such as `860 mm`',
    ],
    ['`860 mm`', '1:1-1:29 not-a-quantity Unexpected `860 mm`, expected one quantity such as `860 mm`'],
  ]
  test.each(refused)('`%s` is refused', (label, message) => {
    expect(run(alone, `:measure[${label}]{of="a/b"}`).messages).toEqual([message])
  })

  test('a doubtful unit is the one mistake that is told, alone or before the figures of the prose are read', () => {
    const text = 'It weighs :measure[25 pounds]{of="a/mass"}.'
    for (const chain of [alone, after]) {
      expect(run(chain, text).file.messages.map(({ ruleId, line, column }) => `${ruleId} ${line}:${column}`)).toEqual([
        'ambiguous-unit 1:20',
      ])
    }
  })
})

test.each([
  ['supersedes', true],
  ['supersedes=true', true],
  ['supersedes=false', false],
  ['note=x', false],
])('{%s} supersedes: %j', (attribute, supersedes) => {
  expect(nodeOf(run(alone, `:measure[5 mm]{of="a/b" ${attribute}}`).tree, 'measure').supersedes).toBe(supersedes)
})

test('an attribute that a measure does not know is told where it stands, with the nearest known one', () => {
  const { file, messages } = run(alone, ':measure[5 mm]{off="a/b" with=tape}')
  expect(messages).toEqual([
    '1:21-1:24 unknown-key Unexpected `off` of `measure`, expected `of`, `with`, `note`, `supersedes`',
  ])
  expect(file.messages[0]?.note).toBe('of')
})
