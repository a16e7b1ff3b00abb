import type { Point, Position } from 'unist'
import type { VFile } from 'vfile'
import { countUpTo } from './count-up-to.ts'

/** The text of a file as a tree's offsets count it: without its byte order mark. */
export interface Source {
  readonly text: string
  /** Offsets at which lines begin. */
  readonly lineStarts: readonly number[]
}

export function sourceOf(file: VFile): Source {
  const text = String(file).replace(/^\uFEFF/u, '')
  const lineStarts = [0]
  for (const ending of text.matchAll(/\r\n|\r|\n/gu)) lineStarts.push(ending.index + ending[0].length)
  return { text, lineStarts }
}

/** Line and UTF-16 column from 1 of an offset. */
function pointAt(source: Source, offset: number): Point {
  const line = Math.max(1, countUpTo(source.lineStarts, offset))
  return { line, column: offset - (source.lineStarts[line - 1] ?? 0) + 1, offset }
}

export interface Span {
  readonly start: number
  readonly end: number
}

export function positionAt(source: Source, span: Span): Position {
  return { start: pointAt(source, span.start), end: pointAt(source, span.end) }
}

/** Where a node stands in its file, or null where the parser did not say. */
export function spanOf(node: { position?: Position | undefined }): Span | null {
  const start = node.position?.start.offset
  const end = node.position?.end.offset
  return start === undefined || end === undefined ? null : { start, end }
}
