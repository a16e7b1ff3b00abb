import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import writeExcelFile from 'write-excel-file/node'
import { readXlsx } from '../../src/drafts/read-xlsx.ts'
import { draftFromTable } from '../../src/drafts/table-note.ts'
import { ground, head } from './ground.ts'

// Written by write-excel-file, changed by hand where it writes no such thing, read by read-excel-file.
type Sheets = Parameters<typeof writeExcelFile>[0]
const written = async (sheets: Sheets): Promise<Uint8Array> => new Uint8Array(await writeExcelFile(sheets).toBuffer())
const draft = async (bytes: Uint8Array): Promise<string> =>
  draftFromTable(await readXlsx(bytes, 'list.xlsx'), { ...head, file: 'list.xlsx' }, ground())
const bodyOf = (text: string): string => text.split('\n---\n')[1]?.split('\n').slice(1).join('\n') ?? ''

const formula = (value: string) => ({ value, type: 'Formula' as const })

describe('a workbook', () => {
  test('with merged cells, a title and a second sheet loses nothing, and no row takes a name from the one above', async () => {
    const text = await draft(
      await written([
        {
          sheet: 'order',
          data: [
            [{ value: 'Spring order', columnSpan: 3 }, null, null],
            ['Part', 'Price', 'Qty'],
            [{ value: 'keel', rowSpan: 2 }, 12.5, 1],
            [null, 3, 2],
          ],
        },
        { sheet: 'blank', data: [[]] },
        {
          sheet: 'tools',
          data: [
            ['Tool', 'Price'],
            ['drill', 80],
          ],
        },
      ]),
    )
    expect(text.split('\n').slice(4, 9)).toEqual([
      '  keel:',
      '    name: "keel"',
      '    cost: "12.5 GBP"',
      '    qty: 1',
      '    action: ordered',
    ])
    expect(bodyOf(text)).toBe(`
## What stands above the list

| Row | A |
| --- | --- |
| 1 | Spring order |

## What was not understood

| Row | Of | Price | Qty |
| --- | --- | --- | --- |
| 4 |  | 3 | 2 |

## The sheet "tools", not read

| Row | A | B |
| --- | --- | --- |
| 1 | Tool | Price |
| 2 | drill | 80 |
`)
  })

  test('gives the value of a formula; a formula without one, and a fault, stand as they are', async () => {
    const bytes = await written([
      {
        sheet: 'order',
        data: [
          ['Part', 'Price', 'Qty'],
          ['keel', 12.5, 1],
          ['mast', formula('B2*2'), 1],
          ['boom', formula('B3'), 1],
        ],
      },
    ])
    const parts = unzipSync(bytes)
    const sheet = strFromU8(parts['xl/worksheets/sheet1.xml'] ?? new Uint8Array())
    const changed = sheet
      .replace(/<c r="B4".*?<\/c>/, '<c r="B4"><f>B3</f><v>25</v></c>')
      .replace(/<c r="C2".*?<\/c>/, '<c r="C2" t="e"><f>1/0</f><v>#DIV/0!</v></c>')
      .replace(/<c r="C3".*?<\/c>/, '<c r="C3"><f t="shared" si="0"/></c>')
    expect(changed).not.toBe(sheet)
    const text = await draft(zipSync({ ...parts, 'xl/worksheets/sheet1.xml': strToU8(changed) }))
    expect(text).toContain('  boom:\n    name: "boom"\n    cost: "25 GBP"\n')
    expect(bodyOf(text)).toBe(`
## What was not understood

| Row | Of | Price | Qty |
| --- | --- | --- | --- |
| 2 | \`keel\` |  | \\#DIV/0! |
| 3 | \`mast\` | =B2\\*2 | =(a formula shared with another cell) |
`)
  })

  // Measured: 100,000 rows of an XLSX take about 4 s and 450 MB until they are refused, on one core of a small server.
  test('of more rows than a note may have is refused with the number that fits', async () => {
    const rows = Array.from({ length: 20_000 }, (_, at) => [`part ${at}`, at / 100, 1])
    await expect(draft(await written([{ sheet: 'order', data: [['Part', 'Price', 'Qty'], ...rows] }]))).rejects.toThrow(
      /^`list\.xlsx` has 20,000 parts, which take [\d,]+ KB of front matter where a note may have 64 KB: split it into lists of about \d+ rows\.$/,
    )
  })

  test('of the OpenDocument kind is refused with one sentence', async () => {
    const ods = zipSync({ mimetype: [strToU8('application/vnd.oasis.opendocument.spreadsheet'), { level: 0 }] })
    await expect(draft(ods)).rejects.toThrow('`list.xlsx` is an OpenDocument file: save the list as XLSX or CSV.')
  })

  test('whose sheet is cut short is refused with one sentence', async () => {
    const parts = unzipSync(await written([{ sheet: 'order', data: [['Part'], ['keel']] }]))
    const broken = zipSync({ ...parts, 'xl/worksheets/sheet1.xml': strToU8('<worksheet><sheetData><row') })
    await expect(draft(broken)).rejects.toThrow(
      '`list.xlsx` is a zip but no workbook that can be read: save it as XLSX again, or as CSV.',
    )
  })
})
