import type { Place } from '../findings/place.ts'
import { type Front, type FrontScalar, placeWithin } from '../notes/front.ts'

/** The place of a scalar's text without its quotes and blanks; the whole place of anything else. */
export function placeOfText(front: Front): Place {
  if (front.kind !== 'scalar' || front.text.trim() === '') return front.place
  const start = front.text.length - front.text.trimStart().length
  return placeWithin(front.pieces, front.place.file, { start, end: front.text.trimEnd().length })
}

/** A part of a scalar's text, blanks trimmed, as a scalar of its own with the places that it had. */
export function sliceScalar(scalar: FrontScalar, from: number, to = scalar.text.length): FrontScalar {
  const written = scalar.text.slice(from, to)
  const start = from + written.length - written.trimStart().length
  const text = written.trim()
  const place = placeWithin(scalar.pieces, scalar.place.file, { start, end: start + text.length })
  const later = scalar.pieces.filter(piece => piece.from > start && piece.from < start + text.length)
  const pieces = [
    { from: 0, line: place.line, column: place.column },
    ...later.map(piece => ({ ...piece, from: piece.from - start })),
  ]
  return { kind: 'scalar', place, text, quoted: scalar.quoted, pieces }
}
