import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { parse } from 'csv-parse/sync'
import { describe, expect, test } from 'vitest'
import { tableCsv } from '../../src/exports/csv.ts'
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
import { scratch } from '../commands/run-oddleg.ts'
import { demo, pond } from './builds.ts'

// LibreOffice opens what we write and writes every sheet anew as CSV. Where it is not installed, workbooks.test.ts and csv.test.ts
// hold the same files by read-excel-file, linkedom and csv-parse.
const isInstalled = spawnSync('soffice', ['--version']).status === 0

// Its own words for: commas, quotes, UTF-8, from line 1, nothing as shown, all sheets.
const asCsv = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1'

/** The sheets of a file as LibreOffice reads them, by their names. */
function opened(name: string, bytes: Uint8Array | string): Map<string, string[][]> {
  const folder = scratch('soffice')
  writeFileSync(join(folder, name), bytes)
  const profile = `-env:UserInstallation=${pathToFileURL(join(folder, 'profile')).href}`
  const { status, stderr } = spawnSync(
    'soffice',
    [profile, '--headless', '--convert-to', asCsv, '--outdir', join(folder, 'out'), join(folder, name)],
    { encoding: 'utf8' },
  )
  if (status !== 0) throw new Error(`soffice ended with ${status}: ${stderr}`)
  const sheets = readdirSync(join(folder, 'out')).map((file): [string, string[][]] => [
    file.replace(/^[^-]+-/, '').replace(/\.csv$/, ''),
    parse(readFileSync(join(folder, 'out', file), 'utf8'), { bom: true, relax_column_count: true }),
  ])
  return new Map(sheets)
}

/** A cell as LibreOffice writes it where it took its kind: numbers and money without their trailing noughts. */
function expected(cell: ExportCell, kind: CellKind): string {
  if (cell === null) return ''
  if (kind === 'money') return String(Number(cell))
  if (kind === 'flag') return cell === true ? 'TRUE' : 'FALSE'
  return String(cell)
}

const contentOf = ({ columns, rows }: ExportTable): string[][] => [
  columns.map(({ name }) => name),
  ...rows.map(row => row.map((cell, at) => expected(cell, columns[at]?.kind ?? 'text'))),
]

/** Numbers to nine digits, since LibreOffice writes no more than it shows; one sign for each way of breaking a line. */
function settled(rows: readonly (readonly string[])[], { columns }: ExportTable): string[][] {
  return rows.map((row, line) =>
    row.map((cell, at) => {
      const isNumber = line > 0 && (columns[at]?.kind === 'number' || columns[at]?.kind === 'money') && cell !== ''
      return isNumber ? Number(cell).toPrecision(9) : cell.replaceAll('\r\n', '\n')
    }),
  )
}

describe('LibreOffice, where it is installed,', () => {
  test.runIf(isInstalled)(
    'reads every table of the demo from the XLSX and the ODS, cell for cell',
    async () => {
      const tables = recordTables(await demo())
      for (const [name, bytes] of [
        ['record.xlsx', await workbookXlsx(tables)],
        ['record.ods', spreadsheetOds(tables, 'GBP')],
      ] as const) {
        const sheets = opened(name, bytes)
        expect([...sheets.keys()].sort()).toEqual(tables.map(table => table.name).sort())
        for (const table of tables) {
          const found = settled(sheets.get(table.name) ?? [], table)
          expect({ name, table: table.name, rows: found }).toEqual({
            name,
            table: table.name,
            rows: settled(contentOf(table), table),
          })
        }
      }
    },
    60_000,
  )

  test.runIf(isInstalled)(
    'takes no words of ours for a formula, and negative numbers for numbers',
    async () => {
      const words = ['=1+1', '+1+1', '-1+1', '@sum(1)', '\t=1+1', '=cmd|" /c calc"!A0', 'plain']
      const made = exportTable('words', words, [
        field('word', 'text', word => word),
        field('lost', 'money', () => '-45.50'),
        field('twice', 'number', word => -2 * word.length),
      ])
      const [sheet] = opened('words.csv', tableCsv(made)).values()
      expect(sheet?.slice(1)).toEqual(
        words.map(word => [word === 'plain' ? word : `'${word}`, '-45.5', String(-2 * word.length)]),
      )
    },
    60_000,
  )

  test.runIf(isInstalled)(
    'reads the amounts of a ledger with two currencies from the ODS',
    async () => {
      const ledger = recordTables(await pond()).filter(({ name }) => name === 'ledger')
      const [rows = []] = opened('ledger.ods', spreadsheetOds(ledger, 'GBP')).values()
      const at = rows[0]?.indexOf('amount') ?? -1
      expect(rows.slice(1).map(row => row[at])).toEqual(['300', '32.25', '9.95', '-20', '7.4'])
    },
    60_000,
  )
})
