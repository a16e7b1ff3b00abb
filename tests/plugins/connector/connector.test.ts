import { expect, test } from 'vitest'
import connector from '../../../plugins/connector/index.ts'
import { bare, run } from '../chain.ts'
import { nodeOf, outline } from '../nodes-of.ts'

const alone = bare().use(connector).freeze()

test('a connector of a README holds its pin table', () => {
  const text =
    ':::connector{#stalk-switch mates="column-loom" rating="10 A"}\n| Pin | Wire |\n|---|---|\n| 1 | black |\n:::\n'
  const { tree, messages } = run(alone, text)
  const node = nodeOf(tree, 'connector')
  expect(node).toMatchObject({ id: 'stalk-switch', mates: 'column-loom', name: null, rating: '10 A' })
  expect(node.children.map(({ type }) => type)).toEqual(['table'])
  const places = Object.entries(node.attributePositions).map(([key, { start, end }]) => [
    key,
    text.slice(start.offset, end.offset),
  ])
  expect(places).toEqual([
    ['id', 'stalk-switch'],
    ['mates', 'column-loom'],
    ['rating', '10 A'],
  ])
  expect(messages).toEqual([])
})

test('the words of its label are its name and stay a paragraph', () => {
  const { tree } = run(alone, ':::connector[Stalk *switch*]{#stalk-switch}\nwords\n:::')
  expect(nodeOf(tree, 'connector').name).toBe('Stalk switch')
  expect(outline(tree)).toEqual([
    'root',
    '  connector',
    '    paragraph',
    '      text "Stalk "',
    '      emphasis',
    '        text "switch"',
    '    paragraph',
    '      text "words"',
  ])
})

test('a name given in braces goes before the label', () => {
  expect(nodeOf(run(alone, ':::connector[Words]{#a name="Stalk switch"}\nx\n:::').tree, 'connector').name).toBe(
    'Stalk switch',
  )
})

test('a connector without an identifier is told', () => {
  const { tree, messages } = run(alone, ':::connector{mates=b}\nx\n:::')
  expect(messages).toEqual([
    '1:1 pin-table Unexpected connector without an identifier, expected one such as `:::connector{#stalk-switch}`',
  ])
  expect(nodeOf(tree, 'connector').id).toBeNull()
})

test('other containers are left alone', () => {
  const text = ':::box{#a}\nx\n:::'
  expect(run(alone, text).tree).toEqual(bare.parse(text))
})

test('an attribute that a connector does not know is told', () => {
  expect(run(alone, ':::connector{#a mate=b}\nx\n:::').messages).toEqual([
    '1:22-1:23 unknown-key Unexpected `mate` of `connector`, expected `id`, `mates`, `name`, `rating`',
  ])
})
