import { describe, expect, test } from 'vitest'
import directives from '../../../plugins/directives/index.ts'
import figures from '../../../plugins/figures/index.ts'
import markedPlaces from '../../../plugins/marked-places/index.ts'
import { bare, run, whole } from '../chain.ts'
import { nodesOf } from '../nodes-of.ts'
import { wordsOf } from '../words-of.ts'

const alone = bare().use(directives).use(figures).use(markedPlaces).freeze()

const marksOf = (text: string) =>
  nodesOf(run(alone, text).tree, 'markedPlace').map(({ number, at, picture }) => [number, at, picture])

test('marks below a picture in a README lie on it, at their places', () => {
  const text = '![shelf](shelf.jpg)\n\nThe strap :mark[2]{at="40%,25%"} and :mark[1]{at="0%,100%"}.\n'
  const { tree, messages } = run(alone, text)
  expect(marksOf(text)).toEqual([
    [2, { left: 40, top: 25 }, 1],
    [1, { left: 0, top: 100 }, 1],
  ])
  expect(nodesOf(tree, 'image').map(({ data }) => data)).toEqual([{ picture: 1 }])
  expect(messages).toEqual([])
})

describe('which picture a mark lies on', () => {
  const m = ':mark[1]{at="1%,1%"}'
  const cases: [what: string, text: string, url: string][] = [
    ['that of its own line', `![a](above.jpg)\n\n![b](own.jpg) and ${m}`, 'own.jpg'],
    ['that of its own line, written behind it', `![a](above.jpg)\n\n${m} ![b](own.jpg)`, 'own.jpg'],
    ['the last one above', `![a](first.jpg)\n\n![b](last.jpg)\n\nx\n\n- ${m}\n\n![c](below.jpg)`, 'last.jpg'],
    ['the next below, where none is above', `${m}\n\n![a](below.jpg)\n\n![b](far.jpg)`, 'below.jpg'],
    ['one below under its heading, not one above under another', `![a](x.jpg)\n\n# H\n\n${m}\n\n![b](y.jpg)`, 'y.jpg'],
    ['one named by reference', `${m}\n\n![a][b]\n\n[b]: ref.jpg`, 'ref.jpg'],
  ]
  test.each(cases)('%s', (_, text, url) => {
    const { tree, messages } = run(alone, text)
    const [mark] = nodesOf(tree, 'markedPlace')
    const image = nodesOf(tree, 'image').find(({ data }) => data?.picture === mark?.picture)
    expect([image?.url, messages]).toEqual([url, []])
  })
})

describe('how a place is written', () => {
  const at = (written: string): string => `![a](b.jpg)\n\n:mark[7]{at="${written}"}`
  test.each([
    ['40%,25%', 40, 25],
    ['40 %, 25 %', 40, 25],
    ['40% 25%', 40, 25],
    ['40.5%;0%', 40.5, 0],
    ['40,5%,100%', 40.5, 100],
  ])('`%s` is read', (written, left, top) => {
    expect(marksOf(at(written))).toEqual([[7, { left, top }, 1]])
    expect(run(alone, at(written)).messages).toEqual([])
  })

  const expected = 'expected per cent from the left and from the top such as `at="40%,25%"`'
  test.each([
    ['40,25', `3:14-3:19 marked-place Unexpected \`at="40,25"\`, ${expected}`, '40%,25%'],
    ['', `3:14-3:14 marked-place Unexpected \`at=""\`, ${expected}`, undefined],
    ['left, top', `3:14-3:23 marked-place Unexpected \`at="left, top"\`, ${expected}`, undefined],
    ['40%', `3:14-3:17 marked-place Unexpected \`at="40%"\`, ${expected}`, undefined],
    [
      '140%,25%',
      '3:14-3:22 marked-place Unexpected `140 %` from the left, expected 0 % to 100 %: a point lies on its picture',
      undefined,
    ],
    [
      '40%,-1%',
      '3:14-3:21 marked-place Unexpected `-1 %` from the top, expected 0 % to 100 %: a point lies on its picture',
      undefined,
    ],
  ])('`%s` is told once, and its number stays', (written, message, mend) => {
    const { messages, file } = run(alone, at(written))
    expect([messages, file.messages[0]?.note]).toEqual([[message], mend])
    expect(marksOf(at(written))).toEqual([[7, null, 1]])
  })
})

describe('what names no point is told', () => {
  const number = 'expected a number from 1 to 99 such as `:mark[2]{at="40%,25%"}`'
  const cases: [text: string, message: string][] = [
    [
      'x :mark[2]{at="1%,2%"}',
      '1:3-1:23 marked-place Unexpected `:mark[2]` with no picture beside it, expected one above or below it under the same heading',
    ],
    [
      '![a](b.jpg)\n\n# H\n\n:mark[2]{at="1%,2%"}',
      '5:1-5:21 marked-place Unexpected `:mark[2]` with no picture beside it, expected one above or below it under the same heading',
    ],
    [
      '![a](b.jpg) :mark[2]',
      '1:13-1:21 marked-place Unexpected `:mark[2]` without its place, expected `:mark[2]{at="40%,25%"}`: per cent of the picture from the left and from the top',
    ],
    [
      '![a](b.jpg) :mark[2]{at="1%,2%"} :mark[2]{at="3%,4%"}',
      '1:34-1:54 marked-place Unexpected second place for mark 2 on `b.jpg`, expected another number: the first at line 1 stands',
    ],
    ['![a](b.jpg) :mark[the neck]{at="1%,2%"}', `1:13-1:40 marked-place Unexpected \`:mark[the neck]\`, ${number}`],
    ['![a](b.jpg) :mark[0]{at="1%,2%"}', `1:13-1:33 marked-place Unexpected \`:mark[0]\`, ${number}`],
    ['![a](b.jpg) :mark[100]{at="1%,2%"}', `1:13-1:35 marked-place Unexpected \`:mark[100]\`, ${number}`],
    ['![a](b.jpg) :mark{at="1%,2%"}', `1:13-1:30 marked-place Unexpected \`:mark[]\`, ${number}`],
    ['![a](b.jpg) :mark[2]{at="1%,2%" of=x}', '1:36-1:37 unknown-key Unexpected `of` of `mark`, expected `at`'],
  ]
  test.each(cases)('%j', (text, message) => {
    expect(run(alone, text).messages).toEqual([message])
  })

  test('a later mark without a place names the point again, and a number may stand on two pictures', () => {
    const text = '![a](b.jpg) :mark[2]{at="1%,2%"}\n\nAgain :mark[2].\n\n![c](d.jpg) :mark[2]{at="3%,4%"}'
    expect(run(alone, text).messages).toEqual([])
    expect(marksOf(text)).toEqual([
      [2, { left: 1, top: 2 }, 1],
      [2, null, 1],
      [2, { left: 3, top: 4 }, 2],
    ])
  })
})

test('the words of a label that is no number stay', () => {
  expect(wordsOf(run(alone, 'the :mark[**filler** neck]{at="1%,2%"} leaks').tree)).toBe('thefillerneckleaks')
})

test('no figure reaches across a mark, and its number is none', () => {
  const { tree, messages } = run(whole, '![a](b.jpg)\n\nStrap :mark[2]{at="1%,2%"} 40 mm wide')
  expect(nodesOf(tree, 'quantity').map(({ value }) => value)).toEqual(['40 mm'])
  expect(messages).toEqual([])
})
