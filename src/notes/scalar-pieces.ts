import type { Piece } from './front.ts'
import { type NoteSource, placeAt } from './note-source.ts'

/** How a scalar is written: `written` is its source without quotes or block header, beginning at offset `at` of the file. */
export interface WrittenScalar {
  readonly style: 'plain' | 'single' | 'double' | 'block'
  readonly written: string
  readonly at: number
  /** The text that the YAML reader made of it. */
  readonly text: string
}

// What stands between gaps of white space; in quotes each escape by itself.
const chunksOf = {
  plain: /[^ \t\r\n]+/g,
  single: /''|[^ \t\r\n']+/g,
  double: /\\(?:\r?\n[ \t]*|x.{2}|u.{4}|U.{8}|.)|[^ \t\r\n\\]+/gu,
  block: /[^ \t\r\n]+/g,
} as const

/** Finds each stretch of a scalar's text that stands in the file unaltered. */
export function scalarPieces(source: NoteSource, scalar: WrittenScalar): Piece[] {
  const { style, written, at } = scalar
  const pieces: Piece[] = []
  let before = 0
  let from = 0
  for (const chunk of written.matchAll(chunksOf[style])) {
    from = afterGap(scalar, { gap: written.slice(before, chunk.index), from })
    addPiece(pieces, { source, from, at: at + chunk.index })
    from += readLength(style, chunk[0])
    before = chunk.index + chunk[0].length
    addPiece(pieces, { source, from, at: at + before }) // An escape is longer than what it says: here the text goes on.
  }
  if (pieces.length === 0) addPiece(pieces, { source, from: 0, at })
  return pieces
}

/** Where the text goes on after white space: kept within a line, folded across lines, in a block up to the next mark. */
function afterGap({ style, text }: WrittenScalar, { gap, from }: { gap: string; from: number }): number {
  if (style === 'block') return from + (/^[ \t\r\n]*/.exec(text.slice(from))?.[0].length ?? 0)
  const breaks = gap.split('\n').length - 1
  if (breaks === 0) return from + gap.length
  return from + Math.max(1, breaks - 1)
}

function readLength(style: WrittenScalar['style'], chunk: string): number {
  if (style === 'single') return chunk === "''" ? 1 : chunk.length
  if (style !== 'double' || !chunk.startsWith('\\')) return chunk.length
  if (/^\\\r?\n/.test(chunk)) return 0
  return chunk.startsWith('\\U') && Number.parseInt(chunk.slice(2), 16) > 0xffff ? 2 : 1
}

function addPiece(pieces: Piece[], { source, from, at }: { source: NoteSource; from: number; at: number }): void {
  const { line, column } = placeAt(source, { start: at, end: at })
  const last = pieces.at(-1)
  if (last && last.line === line && last.column - last.from === column - from) return
  pieces.push({ from, line, column })
}
