import type { Table, TableCell, TableRow } from 'mdast'
import type { TableReading } from '../../plugins/tables/node.ts'
import type { Around } from './around.ts'
import { wordsOf } from './body-words.ts'
import type { WordsRead } from './read-words.ts'
import type { Row } from './row.ts'
import type { Sheet } from './sheet.ts'
import { measuredAt, stateFigureOf } from './state-measure.ts'
import { statePartRow } from './state-part-row.ts'
import { statePinRow } from './state-pin-row.ts'

/** The rows of a table whose header says what it holds. */
export function stateTable(sheet: Sheet, node: Table, around: Around): void {
  const reading = node.data?.reading
  if (reading === undefined) return
  for (const row of node.children.slice(1)) stateRow(sheet, reading.holds, rowOf(sheet, row, { reading, around }))
}

function stateRow(sheet: Sheet, holds: TableReading['holds'], row: Row): void {
  if (holds === 'measurements') stateMeasurementRow(sheet, row)
  else if (holds === 'pins') statePinRow(sheet, row)
  else statePartRow(sheet, row)
}

function rowOf(sheet: Sheet, row: TableRow, { reading, around }: { reading: TableReading; around: Around }): Row {
  const columns: Readonly<Record<string, number | undefined>> = reading.columns
  const cellOf = (column: string): TableCell | null => {
    const index = columns[column]
    return index === undefined ? null : (row.children[index] ?? null)
  }
  const words = (column: string): WordsRead | null =>
    wordsOf(cellOf(column)?.children ?? [], { file: sheet.file, privacy: around.privacy })
  return { cellOf, wordsOf: words, around }
}

/** `| fuel-tank/length | 860 mm | steel tape |`; an empty value waits to be filled in. */
function stateMeasurementRow(sheet: Sheet, { cellOf, wordsOf: words, around }: Row): void {
  const path = words('measurement')
  if (path === null || words('value') === null) return
  const measured = measuredAt(sheet, { path: path.words.text, place: path.place, kinds: around.kinds })
  if (measured === null) return
  const how = { with: words('with')?.words ?? null, note: words('note')?.words ?? null, supersedes: false }
  stateFigureOf(sheet, cellOf('value')?.children ?? [], { ...measured, ...how })
}
