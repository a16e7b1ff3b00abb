import { escapeCell } from './escape-cell.ts'
import type { ListCell } from './list-sheet.ts'
import type { NamedColumn } from './name-columns.ts'
import type { PartRow } from './part-rows.ts'

const rowsOfTable = 100 // then the next begins, since a note's reader takes only so many marks without an empty line

type Cells = readonly string[]

/** Every cell that was not understood, under its own column name, beside the row and the part that it belongs to. */
export function keptCells(parts: readonly PartRow[], columns: readonly NamedColumn[]): string[] {
  const rows = parts.filter(({ kept }) => kept.size > 0)
  const places = [...new Set(rows.flatMap(({ kept }) => [...kept.keys()]))].sort((one, other) => one - other)
  const headings = ['Row', 'Of', ...places.map(at => headingOf(columns[at], at))]
  const cells = rows.map(({ row, id, kept }) => [
    String(row),
    id === null ? '' : `\`${id}\``,
    ...places.map(at => escapeCell(kept.get(at) ?? '')),
  ])
  return section('What was not understood', headings, cells)
}

/** Rows that were not read at all, under the letters of their columns. */
export function keptRows(title: string, rows: readonly (readonly ListCell[])[]): string[] {
  const width = Math.max(0, ...rows.map(row => row.findLastIndex(({ text }) => text !== '') + 1))
  const letters = Array.from({ length: width }, (_, at) => columnLetters(at))
  const cells = rows.flatMap((row, at) =>
    row.every(({ text }) => text === '')
      ? []
      : [[String(at + 1), ...letters.map((_, column) => escapeCell(row[column]?.text ?? ''))]],
  )
  return section(title, ['Row', ...letters], cells)
}

function section(title: string, headings: Cells, rows: readonly Cells[]): string[] {
  if (rows.length === 0) return []
  const line = (cells: Cells): string => `| ${cells.join(' | ')} |`
  const tables = Array.from({ length: Math.ceil(rows.length / rowsOfTable) }, (_, at) => [
    '',
    line(headings),
    line(headings.map(() => '---')),
    ...rows.slice(at * rowsOfTable, (at + 1) * rowsOfTable).map(line),
  ])
  return ['', `## ${title}`, ...tables.flat()]
}

/** Names by which a table would be read as measurements, pins or parts. */
const readNames = ['measurement', 'value', 'pin', 'part', 'cost']

function headingOf(column: NamedColumn | undefined, at: number): string {
  const words = column?.heading.trim() || `Column ${at + 1}`
  return escapeCell(readNames.includes(words.toLowerCase()) ? `${words} (as given)` : words)
}

/** 0 is `A`, 26 is `AA`, as spreadsheets name columns. */
function columnLetters(at: number): string {
  const last = String.fromCharCode(65 + (at % 26)) // 65: A
  return at < 26 ? last : `${columnLetters(Math.floor(at / 26) - 1)}${last}`
}
