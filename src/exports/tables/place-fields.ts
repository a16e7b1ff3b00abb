import type { Place } from '../../findings/place.ts'
import type { AsBuiltRecord } from '../../record/record.ts'
import { figureUrl } from '../addresses.ts'
import { type Field, field } from './export-table.ts'

/** Where a row was written. */
export function placeFields<R>(placeOf: (row: R) => Place): Field<R>[] {
  return [
    field('file', 'text', row => placeOf(row).file),
    field('line', 'number', row => placeOf(row).line),
    field('column', 'number', row => placeOf(row).column),
  ]
}

interface Origin {
  readonly session: string | null
  readonly figure: string | null
}

/** The page within the published record that shows it. */
export function pageField<R>(originOf: (row: R) => Origin): Field<R> {
  return field('page', 'text', row => figureUrl(originOf(row).session, originOf(row).figure))
}

/** A session and its day; empty where build.md says it. */
export function sessionFields<R>(
  record: AsBuiltRecord,
  sessionOf: (row: R) => string | null | undefined,
  prefix = '',
): Field<R>[] {
  const dates = new Map(record.sessions.map(({ id, date }) => [id, date]))
  const dateOf = (row: R): string | null => dates.get(sessionOf(row) ?? '') || null
  return [field(`${prefix}session`, 'text', row => sessionOf(row) ?? null), field(`${prefix}date`, 'date', dateOf)]
}
