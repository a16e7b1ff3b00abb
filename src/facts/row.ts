import type { TableCell } from 'mdast'
import type { Around } from './around.ts'
import type { WordsRead } from './read-words.ts'

/** A row of a table with its cells by the names of their columns. */
export interface Row {
  readonly cellOf: (column: string) => TableCell | null
  readonly wordsOf: (column: string) => WordsRead | null
  readonly around: Around
}
