import { zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import writeExcelFile from 'write-excel-file/node'
import { decodeDraft } from '../../src/drafts/decode-draft.ts'
import { nameColumns } from '../../src/drafts/name-columns.ts'
import { readCsv } from '../../src/drafts/read-csv.ts'
import { readXlsx } from '../../src/drafts/read-xlsx.ts'
import { draftFromTable } from '../../src/drafts/table-note.ts'
import { foldTexts } from '../record/read-texts.ts'
import { build, ground, head, note } from './ground.ts'

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text)
const draft = (text: string): string =>
  draftFromTable(
    readCsv(decodeDraft(bytes(text), 'parts.csv').text, 'parts.csv'),
    { ...head, file: 'parts.csv' },
    ground(),
  )

const list = `Item,Part No,Qty,Unit price,Total,Supplier,System,Weight (kg),Status,Notes,Unit price
"Stainless tank, big",ST-1,1,"£1,184.00",£184.00,sheet-metal man,drive,11.5,received,"has a | in it, and *stars*",9

radiator,,x,free,,,Hull,,shiny,,
,,,,,,,,,"Order 4471, 12/03",
Clip 38 mm,C-38,4 off,0.45 EUR,,,,20 g,fitted,,,beyond
`

describe('a draft from a purchase list', () => {
  test('turns rows into parts and keeps all that it does not understand', () => {
    expect(draft(list)).toBe(`---
title: "A draft"
date: 2026-03-14
parts:
  stainless-tank-big:
    name: "Stainless tank, big"
    number: "ST-1"
    qty: 1
    cost: "£1,184.00"
    from: "sheet-metal man"
    system: drive
    mass: "11.5 kg"
    action: received
  # The record has a part \`radiator\` already. If this is that one, give it that name.
  radiator-2:
    name: "radiator"
    system: hull
    action: ordered
  clip-38-mm:
    name: "Clip 38 mm"
    number: "C-38"
    qty: 4
    cost: "0.45 EUR"
    mass: "20 g"
    action: fitted
---
3 parts from the list \`parts.csv\`. A part whose state the list does not say is written as ordered: that counts as paid and puts nothing on the vehicle.

## What was not understood

| Row | Of | Qty | Unit price | Total | Status | Notes | Unit price | Column 12 |
| --- | --- | --- | --- | --- | --- | --- | --- | --- |
| 2 | \`stainless-tank-big\` |  |  | £184.00 |  | has a \\| in it, and \\*stars\\* | 9 |  |
| 4 | \`radiator-2\` | x | free |  | shiny |  |  |  |
| 5 |  |  |  |  |  | Order 4471, 12/03 |  |  |
| 6 | \`clip-38-mm\` |  |  |  |  |  |  | beyond |
`)
  })

  test('is a note without a mistake, and its money is counted', () => {
    const { record, findings } = foldTexts({
      build,
      sessions: { '2026-03-07-first.md': note, '2026-03-14-draft.md': draft(list) },
    })
    expect(findings).toEqual([])
    expect(record.parts.map(({ id, state }) => `${id} ${state}`)).toEqual([
      'clip-38-mm fitted',
      'fuel-tank fitted',
      'radiator fitted',
      'radiator-2 ordered',
      'rear-beam trial-fitted',
      'stainless-tank-big received',
    ])
    expect(record.ledger.total).toBe('1185.55') // 1184 + 4 × 0.45 × 0.86
  })

  test('the kept table is never read as parts or measurements, whatever its columns are called', () => {
    const text = draft('Item,Measurement,Value,Pin,Part,Cost,Price\nkeel,a/length,3 mm,1,left,many,2\n')
    expect(text).toContain(
      '| Row | Of | Measurement (as given) | Value (as given) | Pin (as given) | Part (as given) | Cost (as given) | Price |',
    )
    const { record, findings } = foldTexts({ build, sessions: { '2026-03-14-draft.md': text } })
    expect({ findings, measured: record.measurements, parts: record.parts.map(({ id }) => id) }).toEqual({
      findings: [],
      measured: [],
      parts: ['keel'],
    })
  })

  test.each([
    ['semicolons', 'Part;Price (EUR)\nkeel;12.50\n', '    cost: "12.50 EUR"'],
    ['tabs', 'Part\tEach £\nkeel\t12.50\n', '    cost: "12.50 GBP"'],
    ['a byte order mark', '\ufeffPart,Qty\nkeel,2\n', '    qty: 2'],
    ['old line ends', 'Part,Qty\rkeel,2\r', '    qty: 2'],
    ['a defused formula', "Part,Supplier\nkeel,'=shop\n", '    from: "=shop"'],
  ])('reads a list with %s', (_, text, line) => {
    expect(draft(text).split('\n')).toContain(line)
  })

  test('two rows of one name are two parts', () => {
    expect(
      draft('Part\nkeel\nKeel\n')
        .split('\n')
        .filter(line => /^ {2}\S/.test(line)),
    ).toEqual(['  keel:', '  keel-2:'])
  })

  test.each([
    ['Part No.', 'number'],
    ['DESCRIPTION', 'name'],
    ['Quantity', 'qty'],
    ['Unit Cost (GBP)', 'cost'],
    ['Maker’s number', 'number'],
    ['Total', null],
    ['Order date', null],
    ['', null],
  ] as const)('a column %j is %j', (heading, role) => {
    expect(nameColumns([heading])[0]?.role).toBe(role)
  })

  test.each([
    ['an empty file', '', '`parts.csv` is empty, expected a row of column names and a row for each part.'],
    ['blanks only', ' \n\n', '`parts.csv` is empty, expected a row of column names and a row for each part.'],
    ['a heading alone', 'Part,Qty\n', '`parts.csv` has no row that names a part below its column names.'],
    [
      'no column of parts',
      'Colour,Qty\nred,1\n',
      '`parts.csv` has no column of parts, expected one named Part, Item, Name or Description; its first row is: Colour, Qty.',
    ],
    [
      'a quote that never closes',
      'Part,Qty\n"keel,1\nmast,2\n',
      '`parts.csv` has a quote that is opened and never closed: every quote within a quoted cell must be doubled.',
    ],
    [
      'a quote in the middle',
      'Part,Qty\n"3" pipe",1\n',
      '`parts.csv` has a quote on line 2 in the middle of a cell: put the whole cell in quotes and double those within it.',
    ],
    [
      'ten thousand rows',
      `Part,Price\n${'keel of ash,£12.50\n'.repeat(10_000)}`,
      '`parts.csv` has 10,000 parts, which take 820 KB of front matter where a note may have 64 KB: split it into lists of about 742 rows.',
    ],
  ])('refuses %s with one sentence', (_, text, message) => {
    expect(() => draft(text)).toThrow(message)
  })

  test.each([
    [
      'another code',
      new Uint8Array([80, 97, 114, 116, 10, 107, 0x81, 101, 108]),
      '`parts.csv` has bytes on line 2 that are neither UTF-8 nor Windows-1252: save it as UTF-8, so that no letter is lost.',
    ],
    [
      'a picture',
      new Uint8Array([137, 80, 78, 71, 0, 0]),
      '`parts.csv` is no text: it holds bytes that text has not. Save it as CSV in UTF-8.',
    ],
  ])('refuses %s with one sentence', (_, given, message) => {
    expect(() => decodeDraft(given, 'parts.csv')).toThrow(message)
  })
})

describe('a draft from a workbook', () => {
  // Written by write-excel-file, read by read-excel-file.
  test('reads numbers, dates and words of the first sheet that has a column of parts', async () => {
    const data = [
      ['Part', 'Price', 'Bought'],
      ['keel', 12.5, { value: new Date('2026-03-01T00:00:00Z'), type: Date, format: 'yyyy-mm-dd' }],
    ]
    const written = await writeExcelFile([
      { data: [[]], sheet: 'empty' },
      { data, sheet: 'list' },
    ]).toBuffer()
    const text = draftFromTable(
      await readXlsx(new Uint8Array(written), 'parts.xlsx'),
      { ...head, file: 'parts.xlsx' },
      ground(),
    )
    expect(text.split('\n').slice(3, 14)).toEqual([
      'parts:',
      '  keel:',
      '    name: "keel"',
      '    cost: "12.5 GBP"',
      '    action: ordered',
      '---',
      'One part from the list `parts.xlsx`. A part whose state the list does not say is written as ordered: that counts as paid and puts nothing on the vehicle.',
      '',
      '## What was not understood',
      '',
      '| Row | Of | Bought |',
    ])
    expect(text).toContain('| 2 | `keel` | 2026-03-01 |')
  })

  const bomb = zipSync({ 'xl/worksheets/sheet1.xml': [new Uint8Array(70 * 1024 * 1024), { level: 9 }] })

  /** The same with a size in its directory that is not true. */
  function lying(): Uint8Array {
    const copy = bomb.slice()
    const view = new DataView(copy.buffer)
    for (let at = 0; at < copy.length - 4; at++)
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 1000, true) // APPNOTE.TXT 4.3.12: the size unpacked
    return copy
  }

  test.each([
    ['no zip', bytes('Part,Qty\n'), '`parts.xlsx` is no XLSX workbook: it cannot be unpacked.'],
    ['an empty file', new Uint8Array(), '`parts.xlsx` is no XLSX workbook: it cannot be unpacked.'],
    [
      'a zip of something else',
      zipSync({ 'a.txt': bytes('x') }),
      '`parts.xlsx` is a zip but no workbook that can be read: save it as XLSX again, or as CSV.',
    ],
    [
      'a zip that swells',
      bomb,
      '`parts.xlsx` would unpack to more than 64 MB, expected a list of parts: nothing of it was read.',
    ],
    [
      'a zip that swells and says that it does not',
      lying(),
      '`parts.xlsx` is a zip but no workbook that can be read: save it as XLSX again, or as CSV.',
    ],
    ['a zip cut short', bomb.slice(0, 2000), '`parts.xlsx` is no XLSX workbook: it cannot be unpacked.'],
  ])('refuses %s with one sentence', async (_, given, message) => {
    await expect(readXlsx(given, 'parts.xlsx')).rejects.toThrow(message)
  })
})
