import { stringify } from 'csv-stringify/sync'
import type { CellKind, ExportCell, ExportTable } from './tables/export-table.ts'

const byteOrderMark = '\ufeff' // U+FEFF: without it spreadsheets on some systems read UTF-8 as another code and spoil µ, Ω, £

/** A table as CSV by RFC 4180: CRLF, quotes doubled, a heading row; UTF-8 with a byte order mark. */
export function tableCsv({ columns, rows }: ExportTable): string {
  const heading = columns.map(({ name }) => name)
  const body = rows.map(row => row.map((cell, at) => cellText(cell, columns[at]?.kind ?? 'text')))
  return byteOrderMark + stringify([heading, ...body], { record_delimiter: '\r\n' })
}

function cellText(cell: ExportCell, kind: CellKind): string {
  if (cell === null) return ''
  return kind === 'text' ? defused(String(cell)) : String(cell)
}

/** Words that a spreadsheet would take for a formula get an apostrophe in front; numbers, dates and money of ours stay as they are. */
function defused(text: string): string {
  return /^[=+\-@\t\r\n＝＋－＠]/.test(text) ? `'${text}` : text
}
