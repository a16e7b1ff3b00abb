import type { ListSheet } from './list-sheet.ts'
import { type NamedColumn, nameColumns } from './name-columns.ts'

const searched = 20 // rows from the top: a title, an address and a date may stand above the column names

/** The row of column names in a sheet, and what each column is about. */
export interface Heading {
  /** From 0. */
  readonly at: number
  readonly columns: readonly NamedColumn[]
}

/** The first of the rows that name the most columns, a column of parts among them; null where none does. */
export function findHeading({ rows }: ListSheet): Heading | null {
  const found = rows.slice(0, searched).map((row, at) => ({ at, columns: nameColumns(row.map(({ text }) => text)) }))
  const named = found.filter(({ columns }) => columns.some(({ role }) => role === 'name' || role === 'number'))
  return named.reduce<Heading | null>(
    (best, next) => (best === null || rolesOf(next) > rolesOf(best) ? next : best),
    null,
  )
}

const rolesOf = ({ columns }: Heading): number => columns.filter(({ role }) => role !== null).length
