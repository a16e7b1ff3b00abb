import type { PrivateKind } from '../../plugins/private/node.ts'
import type { Place } from '../findings/place.ts'

/** Something that an edition leaves out, for the builder's eyes only. */
export interface Taken {
  readonly place: Place
  readonly as: PrivateKind | 'broken'
  /** What stands there, in words. */
  readonly what: string
}

/** Whether one place lies within another. */
export function isWithin(inner: Place, outer: Place): boolean {
  if (inner.file !== outer.file) return false
  const begins = inner.line - outer.line || inner.column - outer.column
  const ends = outer.endLine - inner.endLine || outer.endColumn - inner.endColumn
  return begins >= 0 && ends >= 0
}
