import { strFromU8, unzipSync } from 'fflate'
import { DOMParser } from 'linkedom'
import readExcelFile from 'read-excel-file/node'
import { describe, expect, test } from 'vitest'
import { spreadsheetOds } from '../../src/exports/ods.ts'
import {
  type CellKind,
  type ExportCell,
  type ExportTable,
  exportTable,
  field,
} from '../../src/exports/tables/export-table.ts'
import { recordTables } from '../../src/exports/tables/record-tables.ts'
import { workbookXlsx } from '../../src/exports/xlsx.ts'
import { demo, pond } from './builds.ts'

const allTables = async (): Promise<ExportTable[]> => [...recordTables(await demo())]

/** What a reader should find in a cell of ours. */
function expected(cell: ExportCell, kind: CellKind): unknown {
  if (cell === null || cell === '') return null
  if (kind === 'date') return new Date(`${cell}T00:00:00Z`)
  return kind === 'money' || kind === 'number' ? Number(cell) : cell
}

const contentOf = (table: ExportTable): unknown[][] => [
  table.columns.map(({ name }) => name),
  ...table.rows.map(row => row.map((cell, at) => expected(cell, table.columns[at]?.kind ?? 'text'))),
]

describe('the XLSX workbook', () => {
  // Read back by read-excel-file, another library than the one that wrote it.
  test('has every table as a sheet, with numbers, dates, money and words as such', async () => {
    const tables = await allTables()
    const sheets = await readExcelFile(Buffer.from(await workbookXlsx(tables)), { trim: false })
    expect(sheets.map(({ sheet }) => sheet)).toEqual(tables.map(({ name }) => name))
    for (const [at, table] of tables.entries()) {
      const width = table.columns.length
      const rows = (sheets[at]?.data ?? []).map(row =>
        Array.from({ length: width }, (_, column) => row[column] ?? null),
      )
      expect({ name: table.name, rows }).toEqual({ name: table.name, rows: contentOf(table) })
    }
  })

  test('is the same bytes twice, has its headings frozen, widths set, and no formula', async () => {
    const tables = recordTables(await pond())
    const [one, other] = [await workbookXlsx(tables), await workbookXlsx(tables)]
    expect(Buffer.compare(one, other)).toBe(0)
    const parts = unzipSync(one)
    const sheets = Object.keys(parts).filter(name => /worksheets\/sheet\d+\.xml$/.test(name))
    expect(sheets.length).toBe(tables.length)
    const texts = sheets.map(name => strFromU8(parts[name] ?? new Uint8Array()))
    expect(texts.filter(text => !/<pane [^>]*ySplit="1"[^>]*state="frozen"/.test(text)).length).toBe(0)
    expect(texts.filter(text => !/<col [^>]*width="/.test(text)).length).toBe(0)
    expect(texts.filter(text => /<f[ >]/.test(text)).length).toBe(0)
  })
})

/** The cells of an OpenDocument spreadsheet as their types say, read by linkedom's XML parser. */
function readOds(bytes: Uint8Array): { name: string; rows: unknown[][] }[] {
  const content = strFromU8(unzipSync(bytes)['content.xml'] ?? new Uint8Array())
  const document = new DOMParser().parseFromString(content, 'text/xml')
  return [...document.querySelectorAll('table\\:table')].map(sheet => ({
    name: sheet.getAttribute('table:name') ?? '',
    rows: [...sheet.querySelectorAll('table\\:table-row')].map(row =>
      [...row.querySelectorAll('table\\:table-cell')].map(odsCell),
    ),
  }))
}

function odsCell(cell: Element): unknown {
  const value = (name: string): string => cell.getAttribute(`office:${name}`) ?? ''
  switch (value('value-type')) {
    case 'float':
    case 'currency':
      return Number(value('value'))
    case 'date':
      return new Date(`${value('date-value')}T00:00:00Z`)
    case 'boolean':
      return value('boolean-value') === 'true'
    case 'string': {
      for (const blanks of cell.querySelectorAll('text\\:s'))
        blanks.replaceWith(' '.repeat(Number(blanks.getAttribute('text:c') ?? 1)))
      for (const tab of cell.querySelectorAll('text\\:tab')) tab.replaceWith('\t')
      return [...cell.querySelectorAll('text\\:p')].map(line => line.textContent).join('\n') || null
    }
    default:
      return null
  }
}

describe('the OpenDocument spreadsheet', () => {
  test('has every table as a sheet, with numbers, dates, money and words as such', async () => {
    const tables = await allTables()
    expect(readOds(spreadsheetOds(tables, 'GBP'))).toEqual(
      tables.map(table => ({ name: table.name, rows: contentOf(table) })),
    )
  })

  test('is the same bytes twice, begins with its type unpacked, and has its headings frozen', async () => {
    const tables = recordTables(await pond())
    const [one, other] = [spreadsheetOds(tables, 'GBP'), spreadsheetOds(tables, 'GBP')]
    expect(Buffer.compare(one, other)).toBe(0)
    // OpenDocument 1.3 part 2, 2.2.4: the first 30 bytes are the zip's head, then the name, then the type itself.
    expect(strFromU8(one.slice(30, 30 + 8 + 46))).toBe('mimetypeapplication/vnd.oasis.opendocument.spreadsheet')
    expect(
      strFromU8(unzipSync(one)['settings.xml'] ?? new Uint8Array()).match(
        /VerticalSplitPosition" config:type="int">1</g,
      )?.length,
    ).toBe(tables.length)
  })

  test('money is of the currency that its row names', async () => {
    const content = strFromU8(
      unzipSync(spreadsheetOds(recordTables(await pond()), 'GBP'))['content.xml'] ?? new Uint8Array(),
    )
    expect(content).toContain('office:currency="EUR" office:value="12.50"')
    expect(content).toContain('office:currency="GBP" office:value="32.25"')
  })

  test('words with blanks, tabs, lines and signs of XML come back as they were', () => {
    const cells = ['<a & "b">', ' two  blanks ', 'a\tb', 'one\ntwo', 'x\u0001y', '=1+1']
    const made = exportTable('words', cells, [field('word', 'text', cell => cell)])
    expect(readOds(spreadsheetOds([made], 'GBP'))[0]?.rows.slice(1)).toEqual([
      ['<a & "b">'],
      [' two  blanks '],
      ['a\tb'],
      ['one\ntwo'],
      ['x\ufffdy'],
      ['=1+1'],
    ])
  })
})
