import { describe, expect, test } from 'vitest'
import privateMarks from '../../../plugins/private/index.ts'
import { bare, run } from '../chain.ts'
import { nodeOf, outline } from '../nodes-of.ts'

const alone = bare().use(privateMarks).freeze()

test('the marks of a README become nodes of their own', () => {
  const { tree, messages } = run(
    alone,
    'Ask :private[Robin *Example*]{as=people}.\n\n:::private{as=place}\nBehind the mill.\n\n![The gate](gate.jpg)\n:::\n',
  )
  expect(outline(tree)).toEqual([
    'root',
    '  paragraph',
    '    text "Ask "',
    '    private people',
    '      text "Robin "',
    '      emphasis',
    '        text "Example"',
    '    text "."',
    '  privateBlock place',
    '    paragraph',
    '      text "Behind the mill."',
    '    paragraph',
    '      image',
  ])
  expect(messages).toEqual([])
})

test('the words of a container’s label are a paragraph in it', () => {
  const { tree } = run(alone, ':::private[The yard]{as=place}\nBehind the mill.\n:::')
  expect(outline(tree)).toEqual([
    'root',
    '  privateBlock place',
    '    paragraph',
    '      text "The yard"',
    '    paragraph',
    '      text "Behind the mill."',
  ])
  expect(nodeOf(tree, 'paragraph').data).toBeUndefined()
})

describe('what is private', () => {
  test.each(['cost', 'source', 'people', 'place', 'identity'])('as=%s is accepted', kind => {
    expect(nodeOf(run(alone, `:private[x]{as=${kind}}`).tree, 'private').as).toBe(kind)
  })

  const kinds = 'expected `as` to be one of cost, source, people, place, identity'
  const refused: [text: string, message: string][] = [
    [':private[x]', `1:1-1:12 directive Unexpected \`private\` without \`as\`, ${kinds}`],
    [':private[x]{as=broken}', `1:1-1:23 directive Unexpected \`as=broken\` of \`private\`, ${kinds}`],
    [':private[x]{as=COST}', `1:1-1:21 directive Unexpected \`as=COST\` of \`private\`, ${kinds}`],
    [':private{as=cost}', '1:1-1:18 directive Unexpected `:private` without a label, expected `:private[…]{as=…}`'],
    [
      '::private[x]{as=cost}',
      '1:1-1:22 directive Unexpected `::private`, expected `:private[…]{as=…}` in a line or `:::private{as=…}` around blocks',
    ],
  ]
  test.each(refused)('%s is refused, and its block withheld', (text, message) => {
    const { tree, messages } = run(alone, `open\n\n${text}`)
    expect(messages).toEqual([message.replace('1:1-1:', '3:1-3:')])
    expect(tree.children.map(({ type }) => type)).toEqual(['paragraph', 'privateBlock'])
    expect(nodeOf(tree, 'privateBlock').as).toBe('broken')
  })
})

test('an attribute that a private mark does not know is told, and the mark holds', () => {
  const { tree, messages } = run(alone, ':private[x]{as=cost of=y}')
  expect(messages).toEqual(['1:24-1:25 unknown-key Unexpected `of` of `private`, expected `as`'])
  expect(nodeOf(tree, 'private').as).toBe('cost')
})
