import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decodeDraft } from '../../src/drafts/decode-draft.ts'
import { readCsv } from '../../src/drafts/read-csv.ts'
import { tableCsv } from '../../src/exports/csv.ts'
import { exportTable, field } from '../../src/exports/tables/export-table.ts'
import { recordTables } from '../../src/exports/tables/record-tables.ts'
import { demo, pond } from './builds.ts'

// csv-parse, a reader of CSV, against the writer; the form by RFC 4180.
const readBack = (text: string): string[][] => parse(text, { bom: true, record_delimiter: '\r\n' })
const words = (...cells: readonly string[]): string =>
  tableCsv(exportTable('words', cells, [field('word', 'text', cell => cell)]))

describe('CSV', () => {
  test.each([
    ['=1+1', "'=1+1"],
    ['+44 12', "'+44 12"],
    ['-140 mm', "'-140 mm"],
    ['@keel', "'@keel"],
    ['\tx', "'\tx"],
    ['\r=x', "'\r=x"],
    ['＝1', "'＝1"],
    ['a=1', 'a=1'],
    ["'quoted", "'quoted"],
    ['860 mm − 2', '860 mm − 2'],
  ])('words %j stand as %j, so that no spreadsheet takes them for a formula', (written, expected) => {
    expect(readBack(words(written))).toEqual([['word'], [expected]])
  })

  test('numbers, dates and money of ours keep their sign', () => {
    const made = exportTable(
      'n',
      [-140.5],
      [
        field('n', 'number', n => n),
        field('m', 'money', () => '-45.00'),
        field('d', 'date', () => '2026-03-07'),
        field('none', 'text', () => null),
      ],
    )
    expect(tableCsv(made)).toBe('\ufeffn,m,d,none\r\n-140.5,-45.00,2026-03-07,\r\n')
  })

  test('commas, quotes and new lines come back as they were', () => {
    expect(readBack(words('a, "b"', 'two\r\nlines', '£ µ Ω ² 🛶', ''))).toEqual([
      ['word'],
      ['a, "b"'],
      ['two\r\nlines'],
      ['£ µ Ω ² 🛶'],
      [''],
    ])
  })

  // RFC 4180, section 2, rules 1 to 7, in its own letters.
  test.each<[string, string, string[][]]>([
    [
      '1, a line for each record',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '2, the last without a break',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '3, a header',
      'field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['field_name', 'field_name', 'field_name'],
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '5, quoted or not',
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '6, a break in quotes',
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['7, a quote in quotes', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('rule %s: the example is read by `draft` and written by us so that it reads the same', (_, text, rows) => {
    const cells = readCsv(decodeDraft(new TextEncoder().encode(text), 'a.csv').text, 'a.csv')[0]?.rows ?? []
    const plain = rows.map(row => row.map(cell => cell.replaceAll('\r\n', '\n')))
    expect(cells.map(row => row.map(cell => cell.text)).filter(row => row.join('') !== '')).toEqual(plain)
    const [heading = [], ...body] = rows
    const written = tableCsv({ name: 'a', columns: heading.map(name => ({ name, kind: 'text' })), rows: body })
    expect(readBack(written)).toEqual(rows)
    expect(written.endsWith('\r\n')).toBe(true)
  })

  test('any words come back as they were, but for the apostrophe', () => {
    const isFormula = /^[=+\-@\t\r\n＝＋－＠]/
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'binary' }), { minLength: 1 }), cells => {
        const expected = cells.map(cell => [isFormula.test(cell) ? `'${cell}` : cell])
        expect(readBack(words('first', ...cells)).slice(2)).toEqual(expected)
      }),
      { seed: 7 },
    )
  })

  test('every table of the demo and of a full note reads back row for row, the same width everywhere', async () => {
    for (const table of [...recordTables(await demo()), ...recordTables(await pond())]) {
      const [heading, ...rows] = readBack(tableCsv(table))
      expect({ name: table.name, heading, rows: rows.length }).toEqual({
        name: table.name,
        heading: table.columns.map(({ name }) => name),
        rows: table.rows.length,
      })
      expect(new Set(table.columns.map(({ name }) => name)).size).toBe(table.columns.length)
    }
  })

  test('a part whose words begin like formulas is text in its table', async () => {
    const table = recordTables(await pond()).find(({ name }) => name === 'parts')
    const [heading = [], ...rows] = readBack(table === undefined ? '' : tableCsv(table))
    const keel = rows.find(([id]) => id === 'keel') ?? []
    const cell = (name: string): string | undefined => keel[heading.indexOf(name)]
    expect([
      cell('name'),
      cell('from'),
      cell('cost of one'),
      cell('currency'),
      cell('value fitted'),
      cell('mass of one kg'),
      cell('fitted date'),
    ]).toEqual(["'@keel, oak", "'-the barn", '12.50', 'EUR', '32.25', '4.2', '2026-03-07'])
  })
})
