import { describe, expect, test } from 'vitest'
import { decodeDraft } from '../../src/drafts/decode-draft.ts'
import { draftKind } from '../../src/drafts/draft-kind.ts'
import { readCsv } from '../../src/drafts/read-csv.ts'
import { draftFromTable } from '../../src/drafts/table-note.ts'
import { draftFromText } from '../../src/drafts/text-note.ts'
import { foldTexts } from '../record/read-texts.ts'
import { build, ground, head, note } from './ground.ts'

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text)
const latin = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, 'latin1'))
const utf16 = (text: string): Buffer => Buffer.from(`\ufeff${text}`, 'utf16le')

function draft(bytes: Uint8Array, decimal: 'point' | 'comma' = 'point'): string {
  const { text, remark } = decodeDraft(bytes, 'list.csv')
  const of = ground()
  return draftFromTable(
    readCsv(text, 'list.csv'),
    { ...head, file: 'list.csv', remark },
    { ...of, options: { ...of.options, decimal } },
  )
}

/** The parts of the front matter, the words about the list, and the tables below, without the titles that every draft has. */
function said(text: string): { parts: string[]; words: string; kept: string[] } {
  const [front = '', body = ''] = text.split('\n---\n')
  const [words = '', ...kept] = body.split('\n').filter(line => line !== '' && !/^\| ---/.test(line))
  return {
    parts: front.split('\n').slice(4),
    words: words.replace(
      / A part whose state the list does not say is written as ordered: that counts as paid and puts nothing on the vehicle\./,
      '',
    ),
    kept,
  }
}

const keel = (...lines: readonly string[]): string[] => [
  '  keel:',
  '    name: "keel"',
  ...lines.map(line => `    ${line}`),
  '    action: ordered',
]
const one = 'One part from the list `list.csv`.'

describe('a list in another form', () => {
  test.each<[string, Uint8Array, string[], string, string[]]>([
    ['UTF-16', utf16('Part\tPrice\r\nkeel\t£12\r\n'), keel('cost: "£12"'), one, []],
    ['UTF-16, the other end first', utf16('Part\tPrice\r\nkeel\t£12\r\n').swap16(), keel('cost: "£12"'), one, []],
    [
      'Windows-1252',
      latin('Part,Supplier,Price\nkeel,Ren\xe9\x92s,\x8012\n'),
      keel('from: "René’s"', 'cost: "€12"'),
      `${one} The file is not UTF-8, so it was read as Windows-1252: look whether its accents and its signs of money are right.`,
      [],
    ],
    ['bars between', utf8('Part|Price\nkeel|£12\n'), keel('cost: "£12"'), one, []],
    ['its own word for what stands between', utf8('sep=;\r\nPart;Qty\r\nkeel;4\r\n'), keel('qty: 4'), one, []],
    [
      'a new line in quotes',
      utf8('Part,Qty,Remark\n"keel","4","to be sawn\nand planed"\n'),
      keel('qty: 4'),
      one,
      ['## What was not understood', '| Row | Of | Remark |', '| 2 | `keel` | to be sawn and planed |'],
    ],
    [
      'rows of all lengths',
      utf8('Part,Price,Qty\nkeel\n,,,beyond\n'),
      keel(),
      one,
      ['## What was not understood', '| Row | Of | Column 4 |', '| 3 |  | beyond |'],
    ],
    [
      'two columns of one name',
      utf8('Part,Price,Price,Part\nkeel,£1,£2,hull\n'),
      keel('cost: "£1"'),
      one,
      ['## What was not understood', '| Row | Of | Price | Part (as given) |', '| 2 | `keel` | £2 | hull |'],
    ],
    [
      'a title above its column names',
      utf8('Spring order,,\n,,"From the\nbarn"\nPart,Price,Qty\nkeel,£12,1\n'),
      keel('cost: "£12"', 'qty: 1'),
      one,
      [
        '## What stands above the list',
        '| Row | A | B | C |',
        '| 1 | Spring order |  |  |',
        '| 2 |  |  | From the barn |',
      ],
    ],
    [
      'a sum and a charge below',
      utf8('Part,Price\nkeel,£12\nPostage,£4\nTotal,£16\nTotal seal kit,\n'),
      [...keel('cost: "£12"'), '  total-seal-kit:', '    name: "Total seal kit"', '    action: ordered'],
      '2 parts from the list `list.csv`.',
      [
        '## What was not understood',
        '| Row | Of | Part (as given) | Price |',
        '| 3 |  | Postage | £4 |',
        '| 4 |  | Total | £16 |',
      ],
    ],
    [
      'figures that are none',
      utf8('Part,Price,Qty\nkeel,-5,0\n'),
      keel(),
      one,
      ['## What was not understood', '| Row | Of | Price | Qty |', '| 2 | `keel` | -5 | 0 |'],
    ],
  ])('with %s is read', (_, bytes, parts, words, kept) => {
    expect(said(draft(bytes))).toEqual({ parts, words, kept })
  })

  const changed = (mark: string): string =>
    `${one} The list writes its decimals with a ${mark}; they were put as build.md has them.`

  test.each<[string, 'point' | 'comma', string, string[], string, string[]]>([
    [
      'commas for a build of points',
      'point',
      'Part;Price;Qty\nkeel;1.234,50;1,5\n',
      keel('cost: "1,234.50 GBP"', 'qty: 1.5'),
      changed('comma'),
      [],
    ],
    [
      'commas for a build of commas',
      'comma',
      'Part;Price;Qty\nkeel;12,50 €;1,5\n',
      keel('cost: "12,50 €"', 'qty: 1,5'),
      one,
      [],
    ],
    [
      'points for a build of commas',
      'comma',
      'Part,Price\nkeel,12.50\n',
      keel('cost: "12,50 GBP"'),
      changed('point'),
      [],
    ],
    ['a comma that may set thousands apart', 'point', 'Part;Price\nkeel;1,250\n', keel('cost: "1,250 GBP"'), one, []],
    [
      'both',
      'point',
      'Part;Price\nkeel;12,50\nmast;12.50\n',
      [...keel(), '  mast:', '    name: "mast"', '    cost: "12.50 GBP"', '    action: ordered'],
      '2 parts from the list `list.csv`.',
      ['## What was not understood', '| Row | Of | Price |', '| 2 | `keel` | 12,50 |'],
    ],
  ])('decimals with %s', (_, decimal, text, parts, words, kept) => {
    expect(said(draft(utf8(text), decimal))).toEqual({ parts, words, kept })
  })

  test('whatever its cells hold makes a note without a mistake', () => {
    const text = draft(
      utf8(
        'Spring | order,,\nPart,Cost,Pin,Remark\nkeel,£12,31b,"**b** :private[x]{as=people} <b> a_b ::: `c` ~~d~~"\n',
      ),
    )
    const { findings, record } = foldTexts({
      build,
      sessions: { '2026-03-07-first.md': note, '2026-03-14-draft.md': text },
    })
    expect({ findings, total: record.ledger.total }).toEqual({ findings: [], total: '12.00' })
  })

  test('words in an old code become a note that says so', () => {
    const { text, remark } = decodeDraft(latin('The caf\xe9 was shut.'), 'talk.txt')
    expect(draftFromText(text, { ...head, remark }, ground())).toBe(
      '---\ntitle: "A draft"\ndate: 2026-03-14\n## The file is not UTF-8, so it was read as Windows-1252: look whether its accents and its signs of money are right.\n---\n\nThe café was shut.\n',
    )
  })

  test('whose remarks are full of commas is still cut at its semicolons', () => {
    expect(said(draft(utf8('Part;Remark\nkeel;oak, elm, ash, teak\n'))).kept.at(-1)).toBe(
      '| 2 | `keel` | oak, elm, ash, teak |',
    )
  })

  test('that takes more than a note may have is refused', () => {
    const rows = Array.from({ length: 700 }, (_, at) => `part ${at};${'words that nobody understood, '.repeat(20)}`)
    expect(() => draft(utf8(`Part;Remark\n${rows.join('\n')}\n`))).toThrow(
      /^What was not understood of `list\.csv` takes \d+ KB where a note may have 256 KB: take out the sheets and columns that are not needed, or split it\.$/,
    )
  })
})

describe('what a file is', () => {
  const old = new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1])
  const locked = Buffer.concat([old, Buffer.alloc(64), Buffer.from('EncryptedPackage', 'utf16le')])

  test.each([
    ['a zip', new Uint8Array([0x50, 0x4b, 3, 4]), '.bin', 'workbook'],
    ['words that are called a workbook', utf8('Part'), '.xlsx', 'workbook'],
    ['commas', utf8('Part,Qty'), '.csv', 'list'],
    ['tabs', utf8('Part\tQty'), '.tsv', 'list'],
    ['words', utf8('Fitted it.'), '.txt', 'words'],
  ])('%s is read as such', (_, bytes, ending, kind) => {
    expect(draftKind(bytes, 'given', ending)).toBe(kind)
  })

  test.each([
    ['an old workbook', old, '`given` is a workbook of the old kind (XLS): save it as XLSX or CSV.'],
    [
      'a locked workbook',
      locked,
      '`given` is locked with a password: take the password off and save it as XLSX or CSV.',
    ],
    ['a PDF', utf8('%PDF-1.7'), '`given` is a PDF: save the list as CSV or XLSX, or copy its words into a text file.'],
    [
      'a huge file',
      new Uint8Array(64 * 1024 * 1024 + 1),
      '`given` is larger than 64 MB, expected the list or the words of one session.',
    ],
  ])('%s is refused with one sentence', (_, bytes, message) => {
    expect(() => draftKind(bytes, 'given', '.xlsx')).toThrow(message)
  })
})
