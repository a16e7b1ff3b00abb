import { describe, expect, test } from 'vitest'
import figures from '../../../plugins/figures/index.ts'
import { plain, run } from '../chain.ts'
import { nodeOf, nodesOf } from '../nodes-of.ts'

const alone = plain().use(figures).freeze()

test('a picture on its own in a README becomes a figure with its title as caption', () => {
  const { tree, messages } = run(alone, 'Words.\n\n![The shelf from below](shelf.jpg "Before painting")\n')
  expect(tree.children.map(({ type }) => type)).toEqual(['paragraph', 'figure'])
  const figure = nodeOf(tree, 'figure')
  expect(figure).toMatchObject({ caption: 'Before painting', position: { start: { line: 3 } } })
  expect(figure.children).toMatchObject([{ type: 'image', url: 'shelf.jpg', alt: 'The shelf from below' }])
  expect(messages).toEqual([])
})

describe('what is a figure', () => {
  test.each(['![a](b.png)', '> ![a](b.png)', '- ![a](b.png)', '![a][b]\n\n[b]: c.png "d"'])('%j', text => {
    expect(nodesOf(run(alone, text).tree, 'figure')).toHaveLength(1)
  })

  test.each(['a ![a](b.png)', '![a](b.png) ![c](d.png)', '[![a](b.png)](c)', '# ![a](b.png)', '![a][b]', 'a'])(
    'not %j',
    text => {
      expect(nodesOf(run(alone, text).tree, 'figure')).toEqual([])
    },
  )
})

test('a picture by reference takes address and caption from its definition', () => {
  const figure = nodeOf(run(alone, '![a][B]\n\n[b]: c.png "d"\n[b]: e.png').tree, 'figure')
  expect(figure).toMatchObject({ caption: 'd', children: [{ url: 'c.png', alt: 'a', title: 'd' }] })
})

describe('alternative text', () => {
  test.each(['![a](b.png)', 'x ![a](b.png)', '![a][b]\n\n[b]: c.png'])('%j is accepted', text => {
    expect(run(alone, text).messages).toEqual([])
  })

  const what = 'without alternative text, expected words for a reader who cannot see it'
  const refused: [text: string, message: string][] = [
    ['![](b.png)', `1:1-1:11 no-alternative Unexpected picture \`b.png\` ${what}`],
    ['x ![ ](b.png) y', `1:3-1:14 no-alternative Unexpected picture \`b.png\` ${what}`],
    ['![][b]\n\n[b]: c.png', `1:1-1:7 no-alternative Unexpected picture \`b\` ${what}`],
  ]
  test.each(refused)('%j is told', (text, message) => {
    expect(run(alone, text).messages).toEqual([message])
  })
})
