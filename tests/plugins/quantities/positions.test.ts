import fc from 'fast-check'
import type { Position } from 'unist'
import { describe, expect, test } from 'vitest'
import { run, whole } from '../chain.ts'
import { nodesOf } from '../nodes-of.ts'

/** Offsets count from behind a byte order mark, as those of every node do; a mark is no part of the text. */
const contentOf = (text: string): string => text.replace(/^\uFEFF/u, '')

/** What a stretch of the file says once the marks of its lines, references and escapes are read. */
function said(text: string, position: Position | undefined): string {
  const slice = contentOf(text).slice(position?.start.offset, position?.end.offset)
  return slice
    .replace(/[ \t]*(?:\r\n|\r|\n)[ \t>]*/gu, '\n')
    .replaceAll('&nbsp;', '\u00A0')
    .replaceAll('&#160;', '\u00A0')
    .replace(/\\([!-/:-@[-`{-~])/gu, '$1')
}

/** Line and column by counting line ends, not by the code under test. */
function pointOf(text: string, offset: number): { line: number; column: number } {
  const lines = contentOf(text)
    .slice(0, offset)
    .split(/\r\n|\r|\n/u)
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 }
}

describe('the place of a figure is exact', () => {
  const cases: [what: string, text: string, starts: [value: string, line: number, column: number][]][] = [
    [
      'CRLF',
      'one\r\ntwo 5 mm\r\n\r\nthree 6 mm',
      [
        ['5 mm', 2, 5],
        ['6 mm', 4, 7],
      ],
    ],
    ['a lone CR', 'one\rtwo 5 mm', [['5 mm', 2, 5]]],
    ['a byte order mark', '\uFEFFtwo 5 mm', [['5 mm', 1, 5]]],
    ['a tab', 'a\tb\t5 mm', [['5 mm', 1, 5]]],
    ['astral characters', '𝔸🛠 5 mm', [['5 mm', 1, 6]]],
    ['a reference before', '&amp;&#x1F6E0;&NotEqualTilde; 5 mm', [['5 mm', 1, 31]]],
    ['an escape before', '\\*\\\\\\& 5 mm', [['5 mm', 1, 8]]],
    ['what looks like a reference', '&amp;amp; &unknown; & 5 mm', [['5 mm', 1, 23]]],
    ['a backslash that escapes nothing', 'a\\b 5 mm', [['5 mm', 1, 5]]],
    ['a quote', '> one\n> two 5 mm', [['5 mm', 2, 7]]],
    ['a lazy line', '> one\ntwo 5 mm', [['5 mm', 2, 5]]],
    [
      'a lazy line in a nested quote',
      '> > one\n> two 5 mm\nthree 6 mm',
      [
        ['5 mm', 2, 7],
        ['6 mm', 3, 7],
      ],
    ],
    ['a lazy line that begins like a quote', '> one\n     > two 5 mm', [['5 mm', 2, 12]]],
    ['a line in a quote that begins with an escaped mark', '> one\n> \\> two 5 mm', [['5 mm', 2, 10]]],
    ['a quote in a list in a quote', '> - one\n>   > two\n>   > three 5 mm', [['5 mm', 3, 13]]],
    [
      'a list',
      '1. one\n   two 5 mm\n\n   three 6 mm',
      [
        ['5 mm', 2, 8],
        ['6 mm', 4, 10],
      ],
    ],
    ['a tab before a line', '- one\n\ttwo 5 mm', [['5 mm', 2, 6]]],
    ['blanks at a line’s end', 'one \n  two 5 mm', [['5 mm', 2, 7]]],
    [
      'a hard break',
      'one  \ntwo 5 mm\\\nthree 6 mm',
      [
        ['5 mm', 2, 5],
        ['6 mm', 3, 7],
      ],
    ],
    [
      'a cell with an escaped bar',
      '| a | b |\n|-|-|\n| c\\|d 5 mm | 6 mm |',
      [
        ['5 mm', 3, 8],
        ['6 mm', 3, 15],
      ],
    ],
    [
      'a footnote',
      'a[^1]\n\n[^1]: one\n    two 5 mm\n\n    three 6 mm',
      [
        ['5 mm', 4, 9],
        ['6 mm', 6, 11],
      ],
    ],
    ['a figure over a soft break', 'it is 5\nmm wide', [['5\nmm', 1, 7]]],
    ['a figure over a soft break in a quote', '> it is 5\n> mm wide', [['5\nmm', 1, 9]]],
    ['a figure over a soft break with CRLF', '> it is 5\r\n> mm wide', [['5\r\nmm', 1, 9]]],
    ['a figure with a reference in it', 'it is 5&nbsp;mm wide', [['5\u00A0mm', 1, 7]]],
    ['words that are no directive', '12:30 red:black[x]{a="&amp;"} 5 mm', [['5 mm', 1, 31]]],
    ['an address found after parsing', '&#119;ww.example.org then 5 mm', [['5 mm', 1, 27]]],
    [
      'a measure in a quote',
      '> one\n> :measure[5\n> mm]{of="a/b"} and 6 mm',
      [
        ['5\nmm', 2, 12],
        ['6 mm', 3, 21],
      ],
    ],
  ]
  test.each(cases)('%s', (_, text, starts) => {
    const figures = nodesOf(run(whole, text).tree, 'quantity')
    expect(figures.map(({ value, position }) => [value, position?.start.line, position?.start.column])).toEqual(starts)
    for (const { value, position } of figures) expect(said(text, position)).toBe(value.replaceAll('\r\n', '\n'))
  })
})

const blank = fc.constantFrom(' ', '\t', '  ')
const word = fc.constantFrom(
  'the',
  'b\\*c',
  '&amp;',
  '\\\\',
  '𝔸',
  '🛠',
  '&#x1F6E0;',
  'result:pass',
  '12:30',
  'é',
  '\\|',
  '*soft*',
  '**hard**',
  '`code`',
  '&',
  'a\\b',
  'ﬁ',
  '[x](y.md)',
)
const figure = fc
  .integer({ min: 100, max: 999 })
  .chain(size => fc.constantFrom(`${size} mm`, `${size}&nbsp;mm`, `${size}\u00A0mm`))
const line = fc
  .array(fc.oneof({ weight: 3, arbitrary: word }, { weight: 2, arbitrary: figure }), { minLength: 1, maxLength: 6 })
  .chain(words => blank.map(between => `so ${words.join(between === '  ' ? ' ' : between)}.`))
const containers: ((lines: string[]) => string[])[] = [
  lines => lines,
  lines => lines.map(each => `> ${each}`),
  lines => lines.map((each, index) => (index === 0 ? `> ${each}` : each)),
  lines => lines.map((each, index) => (index === 0 ? `- ${each}` : `  ${each}`)),
  lines => lines.map((each, index) => (index === 0 ? `> 1. > ${each}` : `>    > ${each}`)),
  lines => lines.map((each, index) => (index === 0 ? `[^n]: ${each}` : `    ${each}`)),
  lines => ['| a |', '|---|', ...lines.map(each => `| ${each} |`)],
  lines => [`# ${lines.join(' ')}`],
  lines => lines.map((each, index) => (index === 0 ? `- [ ] ${each}` : each)),
  lines => [':::private{as=place}', ...lines, ':::'],
]
const note = fc
  .tuple(
    fc.array(fc.tuple(fc.array(line, { minLength: 1, maxLength: 4 }), fc.constantFrom(...containers)), {
      minLength: 1,
      maxLength: 4,
    }),
    fc.constantFrom('\n', '\r\n', '\r'),
    fc.boolean(),
  )
  .map(
    ([blocks, ending, marked]) =>
      (marked ? '\uFEFF' : '') + blocks.map(([lines, wrap]) => [...wrap(lines), ''].join(ending)).join(ending),
  )

test('in any note the file says at the place of a figure what the figure says', () => {
  fc.assert(
    fc.property(note, text => {
      const figures = nodesOf(run(whole, text).tree, 'quantity')
      const written = contentOf(text).match(/\d{3}(?: |&nbsp;|\u00A0)mm/gu) ?? []
      expect(figures.map(({ value }) => value.replace('\u00A0', ' '))).toEqual(
        written.map(each => each.replace(/&nbsp;|\u00A0/u, ' ')),
      )
      for (const { value, position } of figures) {
        expect(said(text, position)).toBe(value)
        expect(position?.start).toMatchObject(pointOf(text, position?.start.offset ?? -1))
        expect(position?.end).toMatchObject(pointOf(text, position?.end.offset ?? -1))
      }
    }),
    { numRuns: 400, seed: 1 },
  )
})

test('the words around figures keep their places too', () => {
  fc.assert(
    fc.property(note, text => {
      for (const { value, position } of nodesOf(run(whole, text).tree, 'text')) {
        const slice = contentOf(text).slice(position?.start.offset, position?.end.offset)
        if (!/[&\\\r\n]/u.test(slice)) expect(slice).toBe(value)
      }
    }),
    { numRuns: 200, seed: 2 },
  )
})
