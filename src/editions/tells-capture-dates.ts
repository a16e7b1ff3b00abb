import type { Edition } from '../record/record.ts'
import { withheldBy } from './withheld.ts'

/**
 * Whether an edition may tell on which day a picture was taken, which the camera wrote and nobody marked. A day helps to
 * find out who was where: an edition that withholds people, place or identity does not tell it.
 */
export function tellsCaptureDates(editions: readonly Edition[], edition: string): boolean {
  const kinds = withheldBy(editions, edition)?.kinds
  return kinds !== undefined && !(['people', 'place', 'identity'] as const).some(kind => kinds.has(kind))
}
