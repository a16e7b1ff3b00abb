import { LineCounter } from 'yaml'
import type { Place } from '../findings/place.ts'

/** A file's text and where its lines begin. Offsets are UTF-16 units from 0, the byte order mark not counted. */
export interface NoteSource {
  readonly file: string
  readonly text: string
  readonly lines: LineCounter
}

/** Part of a text, UTF-16 units from 0, the end exclusive. */
export interface Span {
  readonly start: number
  readonly end: number
}

/** Takes a text with `\n` and `\r\n` at its line ends; a lone `\r` becomes `\n`, as Markdown reads it. */
export function noteSource(file: string, text: string): NoteSource {
  const lines = new LineCounter()
  const even = text.replace(/\r(?!\n)/g, '\n')
  lines.addNewLine(0)
  for (let at = even.indexOf('\n'); at !== -1; at = even.indexOf('\n', at + 1)) lines.addNewLine(at + 1)
  return { file, text: even, lines }
}

export function placeAt({ file, lines }: NoteSource, { start, end }: Span): Place {
  const from = lines.linePos(start)
  const to = lines.linePos(end)
  return { file, line: from.line, column: from.col, endLine: to.line, endColumn: to.col }
}
