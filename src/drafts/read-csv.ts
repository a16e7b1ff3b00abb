import { CsvError, parse } from 'csv-parse/sync'
import { DraftTrouble } from './draft-trouble.ts'
import type { ListSheet } from './list-sheet.ts'
import { nameColumns } from './name-columns.ts'

/** Rows of a CSV (RFC 4180, or with semicolons, tabs or bars between). */
export function readCsv(text: string, file: string): ListSheet[] {
  if (text.trim() === '')
    throw new DraftTrouble(`\`${file}\` is empty, expected a row of column names and a row for each part.`)
  try {
    const named = /^\ufeff?sep=(.)\n/i.exec(text) // a line by which a spreadsheet names what stands between cells
    const list = named === null ? text : `\n${text.slice(named[0].length)}`
    const rows: string[][] = parse(list, {
      delimiter: named?.[1] ?? delimiterOf(list),
      relax_column_count: true,
      bom: true,
    })
    return [{ name: null, rows: rows.map(row => row.map(cell => ({ text: unmarked(cell), isNumber: false }))) }]
  } catch (cause) {
    if (!(cause instanceof CsvError)) throw cause
    throw new DraftTrouble(`\`${file}\` ${faultOf(cause)}`, { cause })
  }
}

/** What cuts one of the first rows into the most column names that are known; where none does, what stands there most often. */
function delimiterOf(text: string): string {
  const lines = text.slice(0, mostSearched).split('\n').slice(0, mostLines)
  const ranks = [',', ';', '\t', '|'].map(sign => ({
    sign,
    named: Math.max(...lines.map(line => namesIn(line.replaceAll('"', '').split(sign)))),
    count: Math.max(...lines.map(line => line.replace(/"[^"]*"/g, '').split(sign).length)),
  }))
  return ranks.reduce((best, next) =>
    next.named > best.named || (next.named === best.named && next.count > best.count) ? next : best,
  ).sign
}

const namesIn = (cells: readonly string[]): number => nameColumns(cells).filter(({ role }) => role !== null).length

const mostLines = 20 // among which a heading is looked for
const mostSearched = 8000 // characters

/** The apostrophe by which a formula was made text is no part of the words. */
const unmarked = (cell: string): string => cell.replace(/^'(?=[=+\-@])/, '').trim()

function faultOf({ code, lines }: CsvError): string {
  const line = typeof lines === 'number' ? ` on line ${lines}` : ''
  switch (code) {
    case 'CSV_QUOTE_NOT_CLOSED':
      return `has a quote that is opened and never closed: every quote within a quoted cell must be doubled.`
    case 'CSV_INVALID_CLOSING_QUOTE':
    case 'INVALID_OPENING_QUOTE':
      return `has a quote${line} in the middle of a cell: put the whole cell in quotes and double those within it.`
    default:
      return `cannot be read as a table${line} (${code}).`
  }
}
