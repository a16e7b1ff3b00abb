import type { Place } from '../findings/place.ts'
import { type NoteSource, placeAt, type Span } from './note-source.ts'

/** YAML within a file. Offsets of spans are those of the YAML; `text` has blanks where a fault was left out. */
export interface YamlText {
  readonly source: NoteSource
  /** Where the YAML begins in the file. */
  readonly base: number
  readonly original: string
  readonly text: string
}

export function placeInFile({ source, base }: YamlText, { start, end }: Span): Place {
  return placeAt(source, { start: base + start, end: base + end })
}

/** Whether a key stands without a value only because what stood below it was left out. */
export function isLeftOut({ text, original }: YamlText, at: number): boolean {
  const blanks = /(?:\s|#[^\n]*)*/y
  blanks.lastIndex = at
  const end = at + (blanks.exec(text)?.[0].length ?? 0)
  return text.slice(at, end) !== original.slice(at, end)
}
