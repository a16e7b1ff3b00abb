import { actions } from '../facts/closed-words.ts'
import { identifierOf } from '../facts/identifier.ts'
import { kinds } from '../facts/kinds.ts'
import type { ReadOptions } from '../quantities/quantity.ts'
import { readBareNumber } from '../quantities/read-bare-number.ts'
import { readMoney } from '../quantities/read-money.ts'
import { readOneQuantity } from '../quantities/read-one-quantity.ts'
import type { AsBuiltRecord } from '../record/record.ts'
import type { ColumnRole, NamedColumn } from './name-columns.ts'
import type { ListCell } from './read-csv.ts'

export interface DraftGround {
  readonly record: Pick<AsBuiltRecord, 'parts' | 'circuits' | 'systems' | 'jobs' | 'build'>
  readonly options: ReadOptions
}

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

/** Reads the rows below the heading. */
export function readPartRows(
  rows: readonly (readonly ListCell[])[],
  columns: readonly NamedColumn[],
  ground: DraftGround,
): PartRow[] {
  const [taken, last] = [new Set<string>(), new Map<string, number>()]
  const known = new Set(ground.record.parts.map(({ id }) => id))
  return rows.flatMap((cells, at) => {
    if (cells.every(({ text }) => text === '')) return []
    return [readRow({ row: at + 2, cells, columns }, { ground, taken, known, last })]
  })
}

interface RawRow {
  readonly row: number
  readonly cells: readonly ListCell[]
  readonly columns: readonly NamedColumn[]
}

interface Names {
  readonly ground: DraftGround
  readonly taken: Set<string>
  readonly known: ReadonlySet<string>
  /** The number given last to each name. */
  readonly last: Map<string, number>
}

function readRow({ row, cells, columns }: RawRow, names: Names): PartRow {
  const { ground, taken, known } = names
  const textOf = (role: ColumnRole): string => cells[columns.find(column => column.role === role)?.at ?? -1]?.text ?? ''
  const words = textOf('name') || textOf('number')
  const kept = new Map<number, string>()
  const keys: [string, string][] = []
  // Cells beyond the last heading have no column: they are kept under their place.
  cells.forEach(({ text }, at) => {
    if (text !== '' && columns[at] === undefined) kept.set(at, text)
  })
  for (const column of columns) {
    const cell = cells[column.at]
    if (cell === undefined || cell.text === '') continue
    const read = words === '' || column.role === null ? null : readCell(cell, column, ground)
    if (read === null) kept.set(column.at, cell.text)
    else keys.push([column.role ?? '', read])
  }
  if (words === '') return { row, id: null, sameAs: null, keys: [], kept }
  const made = identifierOf(words) || `part-${row}`
  const id = freeName(made, names)
  taken.add(id)
  return { row, id, sameAs: known.has(made) ? made : null, keys: withAction(keys), kept }
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

/** A cell as the value of its key in YAML; null where it is not understood. */
function readCell(cell: ListCell, column: NamedColumn, { record, options }: DraftGround): string | null {
  const { text } = cell
  switch (column.role) {
    case 'name':
    case 'number':
    case 'from':
    case 'why':
      return JSON.stringify(text)
    case 'qty':
      return /^(?:x\s*)?(\d+(?:\.\d+)?)\s*(?:x|off|pcs?|pieces?)?$/i.exec(text)?.[1] ?? null
    case 'cost':
      return readCost(cell, column.unit ?? record.build.currency, options)
    case 'mass':
      return readMass(cell, column.unit, options)
    case 'system':
      return record.systems.find(({ id, name }) => [id, name.toLowerCase()].includes(text.toLowerCase()))?.id ?? null
    case 'kind':
      return Object.hasOwn(kinds, identifierOf(text)) ? identifierOf(text) : null
    case 'action':
      return actions.find(word => word === identifierOf(text)) ?? null
    default:
      return null
  }
}

/** An amount with its currency; a bare number is in the heading's currency, else in the build's. */
function readCost(cell: ListCell, currency: string, options: ReadOptions): string | null {
  // What a spreadsheet holds as a number has a point, whatever the build writes.
  const text = cell.isNumber && options.decimal === 'comma' ? cell.text.replace('.', ',') : cell.text
  const number = readBareNumber(text, options.decimal)
  if (number !== null)
    return (number.number ?? -1) >= 0 && /^[A-Z]{3}$/.test(currency) ? JSON.stringify(`${text} ${currency}`) : null
  const money = readMoney(text, options)
  return money === null || money.amount.startsWith('-') ? null : JSON.stringify(text)
}

function readMass({ text }: ListCell, unit: string | null, options: ReadOptions): string | null {
  const written = readOneQuantity(text, options) === null && unit !== null ? `${text} ${unit}` : text
  return readOneQuantity(written, options)?.dimension === 'mass' ? JSON.stringify(written) : null
}
