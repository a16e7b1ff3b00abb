import type { Cell, Inline } from './cells.ts'
import { typeset } from './typeset.ts'

export const plain = (text: string, href: string | null = null): Inline => ({ text, href, look: 'plain' })
export const look = (kind: Inline['look'], text: string, href: string | null = null): Inline => ({
  text,
  href,
  look: kind,
})

/** A figure within a line of words, its units muted. */
export function figure(text: string): Inline[] {
  return typeset(text).map(run => look(run.unit ? 'unit' : 'plain', run.text))
}

/** A cell of words. */
export function wordsCell(words: string | readonly Inline[], sub: readonly Inline[] = []): Cell {
  return { kind: 'words', words: typeof words === 'string' ? (words === '' ? [] : [plain(words)]) : words, sub }
}

/** Joins links or words by a comma and a space. */
export function listed(entries: readonly (readonly Inline[])[], between = ', '): Inline[] {
  return entries.flatMap((entry, index) => (index === 0 ? [...entry] : [plain(between), ...entry]))
}
