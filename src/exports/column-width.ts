import type { ExportTable } from './tables/export-table.ts'

const narrowest = 8 // characters
const widest = 48 // characters: longer words run on or are wrapped by the reader

/** Room for the longest cell of a column, in characters, within what reads well. */
export function columnWidth({ columns, rows }: ExportTable, at: number): number {
  const lengths = rows.map(row => String(row[at] ?? '').length)
  const longest = lengths.reduce((most, length) => Math.max(most, length), columns[at]?.name.length ?? 0)
  return Math.min(widest, Math.max(narrowest, longest + 2))
}
