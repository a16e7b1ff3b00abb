import { identifierOf } from '../facts/identifier.ts'
import type { ReadOptions } from '../quantities/quantity.ts'
import type { DraftGround } from './draft-ground.ts'
import { changeMarks } from './list-decimal.ts'
import type { ListCell } from './list-sheet.ts'
import type { ColumnRole, NamedColumn } from './name-columns.ts'
import { readPartCell } from './read-part-cell.ts'

/** A row of a purchase list as a part: its keys in YAML, and what was not understood. */
export interface PartRow {
  /** As counted in a spreadsheet, the heading being row 1. */
  readonly row: number
  /** Null where the row names no part: all of it is kept. */
  readonly id: string | null
  /** The identifier of the record that the words would have made; another was taken, since only the builder knows. */
  readonly sameAs: string | null
  readonly keys: readonly (readonly [string, string])[]
  readonly kept: ReadonlyMap<number, string>
}

interface ListForm {
  readonly columns: readonly NamedColumn[]
  /** The number of the first row below the heading. */
  readonly first: number
  /** The decimal mark that the list itself shows; null: the build's. */
  readonly decimal: ReadOptions['decimal'] | null
}

/** Reads the rows below the heading. */
export function readPartRows(
  rows: readonly (readonly ListCell[])[],
  { columns, first, decimal }: ListForm,
  ground: DraftGround,
): PartRow[] {
  const [taken, last] = [new Set<string>(), new Map<string, number>()]
  const known = new Set(ground.record.parts.map(({ id }) => id))
  const isSwapped = decimal !== null && decimal !== ground.options.decimal
  return rows.flatMap((cells, at) => {
    if (cells.every(({ text }) => text === '')) return []
    return [readRow({ row: at + first, cells, columns, isSwapped }, { ground, taken, known, last })]
  })
}

interface RawRow {
  readonly row: number
  readonly cells: readonly ListCell[]
  readonly columns: readonly NamedColumn[]
  /** The list writes points where the build writes commas. */
  readonly isSwapped: boolean
}

interface Names {
  readonly ground: DraftGround
  readonly taken: Set<string>
  readonly known: ReadonlySet<string>
  /** The number given last to each name. */
  readonly last: Map<string, number>
}

function readRow({ row, cells, columns, isSwapped }: RawRow, names: Names): PartRow {
  const { ground, taken, known } = names
  const textOf = (role: ColumnRole): string => cells[columns.find(column => column.role === role)?.at ?? -1]?.text ?? ''
  const words = isSum(textOf('name')) ? '' : textOf('name') || textOf('number')
  const kept = new Map<number, string>()
  const keys: [string, string][] = []
  // Cells beyond the last heading have no column: they are kept under their place.
  cells.forEach(({ text }, at) => {
    if (text !== '' && columns[at] === undefined) kept.set(at, text)
  })
  for (const column of columns) {
    const cell = cells[column.at]
    if (cell === undefined || cell.text === '') continue
    const read = words === '' ? null : readPartCell(isSwapped ? swapped(cell, column) : cell, column, ground)
    if (read === null) kept.set(column.at, cell.text)
    else keys.push([column.role ?? '', read])
  }
  if (words === '') return { row, id: null, sameAs: null, keys: [], kept }
  const made = identifierOf(words) || `part-${row}`
  const id = freeName(made, names)
  taken.add(id)
  return { row, id, sameAs: known.has(made) ? made : null, keys: withAction(keys), kept }
}

/** A row that adds others up, or a charge: it is no part, and is kept. */
const isSum = (words: string): boolean =>
  /^(?:grand |sub[ -]?)?(?:totals?|sum|balance|vat|tax|postage|shipping|delivery|carriage|discount)\b[^a-z]*$/i.test(
    words,
  )

function swapped(cell: ListCell, { role }: NamedColumn): ListCell {
  const isFigure = role === 'cost' || role === 'qty' || role === 'mass'
  return isFigure && !cell.isNumber ? { ...cell, text: changeMarks(cell.text) } : cell
}

/** A list of purchases says that a thing was bought: `ordered` counts as paid, and puts nothing on the vehicle. */
function withAction(keys: [string, string][]): [string, string][] {
  return keys.some(([key]) => key === 'action') ? keys : [...keys, ['action', 'ordered']]
}

/** The name itself or with the next number that is free; what was tried is not tried again. */
function freeName(made: string, { taken, known, last }: Names): string {
  if (!taken.has(made) && !known.has(made)) return made
  for (let number = (last.get(made) ?? 1) + 1; ; number++) {
    last.set(made, number)
    const name = `${made}-${number}`
    if (!taken.has(name) && !known.has(name)) return name
  }
}
