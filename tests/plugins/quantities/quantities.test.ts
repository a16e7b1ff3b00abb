import { describe, expect, test } from 'vitest'
import quantities from '../../../plugins/quantities/index.ts'
import { plain, run } from '../chain.ts'
import { nodesOf, outline } from '../nodes-of.ts'

const alone = plain().use(quantities).freeze()
const comma = plain().use(quantities, { decimal: 'comma' }).freeze()

const read = (text: string): string[] => nodesOf(run(alone, text).tree, 'quantity').map(({ value }) => value)

test('the figures of a README become nodes, its other words stay', () => {
  const { tree, messages } = run(alone, '# Shelf, 860 mm wide\n\nCut it from *18 mm* board; it carries **25 kg**.\n')
  expect(outline(tree)).toEqual([
    'root',
    '  heading',
    '    text "Shelf, "',
    '    quantity "860 mm"',
    '    text " wide"',
    '  paragraph',
    '    text "Cut it from "',
    '    emphasis',
    '      quantity "18 mm"',
    '    text " board; it carries "',
    '    strong',
    '      quantity "25 kg"',
    '    text "."',
  ])
  expect(messages).toEqual([])
})

describe('where figures are read', () => {
  const places: [text: string, figures: string[]][] = [
    ['plain 5 mm words', ['5 mm']],
    ['## Heading of 5 mm', ['5 mm']],
    ['Heading of 5 mm\n===', ['5 mm']],
    ['| a | b |\n|-|-|\n| 5 mm | 6 mm |', ['5 mm', '6 mm']],
    ['> quoted 5 mm', ['5 mm']],
    ['- item of 5 mm\n  1. inner of 6 mm', ['5 mm', '6 mm']],
    ['a[^1]\n\n[^1]: note of 5 mm', ['5 mm']],
    ['[a link of 5 mm](https://example.org)', ['5 mm']],
    ['struck ~~5 mm~~ out', ['5 mm']],
    ['a figure of 5\nmm over a soft break', ['5\nmm']],
    ['a figure of 5&nbsp;mm by reference', ['5\u00A0mm']],
  ]
  test.each(places)('%j is read', (text, figures) => {
    expect(read(text)).toEqual(figures)
  })

  const passedBy = [
    '`5 mm`',
    '```\n5 mm\n```',
    '    5 mm',
    '![5 mm](a.png "6 mm")',
    '[a](https://example.org/5%20mm "5 mm")',
    'https://example.org/5mm',
    '<https://example.org/5mm>',
    '<b title="5 mm">',
    '<div>\n5 mm\n</div>',
    '[a]: /b "5 mm"\n\n[a]',
    'struck ~~5~~ mm',
    '`5` mm',
    '5![a](b.png) mm',
  ]
  test.each(passedBy)('%j is not read', text => {
    expect(read(text)).toEqual([])
  })
})

describe('a figure across emphasis is one figure, and stands where its digits stand', () => {
  test('about **64 L**', () => {
    const { tree } = run(alone, 'holds about **64 L** of it')
    expect(outline(tree)).toEqual([
      'root',
      '  paragraph',
      '    text "holds about "',
      '    strong',
      '      quantity "64 L"',
      '    text " of it"',
    ])
    const [figure] = nodesOf(tree, 'quantity')
    expect(figure?.quantity).toMatchObject({ text: 'about 64 L', number: 64, unit: 'L', approximate: true })
  })

  test('**5** mm', () => {
    const { tree } = run(alone, 'only **5** mm')
    expect(outline(tree)).toEqual([
      'root',
      '  paragraph',
      '    text "only "',
      '    strong',
      '      quantity "5"',
      '    text " mm"',
    ])
    expect(nodesOf(tree, 'quantity')[0]?.quantity).toMatchObject({ text: '5 mm', number: 5, unit: 'mm' })
  })
})

describe('what is doubtful is told where it stands, and stays text', () => {
  test('pounds may be mass or money', () => {
    const { tree, file } = run(alone, 'first line\n> it weighs &amp; costs 25 pounds')
    const [message, ...others] = file.messages
    expect(others).toEqual([])
    expect(message).toMatchObject({
      ruleId: 'ambiguous-unit',
      source: 'oddleg',
      line: 2,
      column: 25,
      actual: '25 pounds',
    })
    expect(message?.place).toMatchObject({ start: { line: 2, column: 25 }, end: { line: 2, column: 34 } })
    expect(message?.note).toBe(message?.expected?.[0])
    expect(nodesOf(tree, 'quantity')).toEqual([])
  })

  test('a decimal mark is told or read by the option', () => {
    expect(
      run(alone, 'it is 12,5 mm thick').file.messages.map(({ ruleId, line, column }) => `${ruleId} ${line}:${column}`),
    ).toEqual(['decimal-mark 1:7'])
    const { tree, messages } = run(comma, 'it is 12,5 mm thick')
    expect(messages).toEqual([])
    expect(nodesOf(tree, 'quantity').map(({ quantity }) => quantity.number)).toEqual([12.5])
  })
})

test('groups are numbered through the note', () => {
  const { tree } = run(alone, '860 × 380 × 300 mm\n\n50 × 20 mm, then 5 mm')
  expect(nodesOf(tree, 'quantity').map(({ value, quantity }) => [value, quantity.group])).toEqual([
    ['860', 1],
    ['380', 1],
    ['300 mm', 1],
    ['50', 2],
    ['20 mm', 2],
    ['5 mm', null],
  ])
})

test('running the plugin twice changes nothing more', () => {
  const text = 'It is 860 mm and **25 kg**.'
  const again = plain().use(quantities).freeze()
  const { tree, file } = run(alone, text)
  expect(again.runSync(structuredClone(tree), file)).toEqual(tree)
})
