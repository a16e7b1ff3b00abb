import type { Place } from '../findings/place.ts'

/** Front matter as it was written: every key and scalar with its place, in the order of the file. Plain JSON. */
export type Front = FrontMap | FrontList | FrontScalar | FrontNothing

export interface FrontMap {
  readonly kind: 'map'
  readonly place: Place
  readonly entries: readonly FrontEntry[]
}

export interface FrontEntry {
  readonly key: string
  readonly keyPlace: Place
  readonly value: Front
}

interface FrontList {
  readonly kind: 'list'
  readonly place: Place
  readonly items: readonly Front[]
}

/** A scalar: its text as a reader sees it (quotes, folds and escapes undone), and where each piece of that text stands. */
export interface FrontScalar {
  readonly kind: 'scalar'
  readonly place: Place
  /** From the source text: `4.30` and `01` keep their digits. */
  readonly text: string
  readonly quoted: boolean
  readonly pieces: readonly Piece[]
}

/** `key: ~`, `key: null` and `key:` take a value back. */
export interface FrontNothing {
  readonly kind: 'nothing'
  readonly place: Place
}

/** From UTF-16 unit `from` of a text on, the text stands in the file unaltered, starting at this line and column. */
export interface Piece {
  readonly from: number
  readonly line: number
  readonly column: number
}

/** The place of `text.slice(start, end)` of a text that came from these pieces; both ends within one line of the file, or across. */
export function placeWithin(pieces: readonly Piece[], file: string, span: { start: number; end: number }): Place {
  const first = locate(pieces, span.start)
  const last = locate(pieces, Math.max(span.start, span.end - 1))
  const next = pieces.find(({ from, line }) => from === span.end && line === last.line) // Behind an escape, which is longer than what it says.
  return {
    file,
    ...first,
    endLine: last.line,
    endColumn: next?.column ?? last.column + (span.end > span.start ? 1 : 0),
  }
}

function locate(pieces: readonly Piece[], at: number): { line: number; column: number } {
  let found = pieces[0] ?? { from: 0, line: 1, column: 1 }
  for (const piece of pieces) if (piece.from <= at) found = piece
  return { line: found.line, column: found.column + (at - found.from) }
}
