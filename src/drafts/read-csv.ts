import { CsvError, parse } from 'csv-parse/sync'
import { DraftTrouble } from './draft-trouble.ts'

/** One cell of a purchase list: its words, trimmed, and whether a spreadsheet held it as a number. */
export interface ListCell {
  readonly text: string
  readonly isNumber: boolean
}

/** Rows of a CSV (RFC 4180, or with semicolons or tabs between), the heading first. */
export function readCsv(text: string, file: string): ListCell[][] {
  if (text.trim() === '')
    throw new DraftTrouble(`\`${file}\` is empty, expected a row of column names and a row for each part.`)
  try {
    const rows: string[][] = parse(text.replace(/^\s*\n/, ''), {
      delimiter: delimiterOf(text),
      relax_column_count: true,
      bom: true,
    })
    return rows.map(row => row.map(cell => ({ text: unmarked(cell), isNumber: false })))
  } catch (cause) {
    if (!(cause instanceof CsvError)) throw cause
    throw new DraftTrouble(`\`${file}\` ${faultOf(cause)}`, { cause })
  }
}

/** What stands most often in the heading, outside quotes. */
function delimiterOf(text: string): string {
  const heading = text.slice(0, text.indexOf('\n') === -1 ? text.length : text.indexOf('\n')).replace(/"[^"]*"/g, '')
  const counts = [',', ';', '\t'].map(sign => ({ sign, count: heading.split(sign).length }))
  return counts.reduce((most, next) => (next.count > most.count ? next : most)).sign
}

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
