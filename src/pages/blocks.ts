import type { Cell, Inline, Mark } from './cells.ts'

export interface Column {
  readonly label: string
  /**
   * `num` ranges right, `narrow` stays small, `figure` is wide enough for a leader. `main` is the one figure of a table and `wide`
   * its text: on a phone these two need no name of their column.
   */
  readonly look: 'words' | 'num' | 'figure' | 'narrow' | 'main' | 'wide'
}

export interface TableRow {
  /** An anchor of ours, or null. */
  readonly id: string | null
  /** The first cell heads the row. */
  readonly cells: readonly Cell[]
  readonly look: 'plain' | 'chosen' | 'gone'
}

export interface Table {
  readonly caption: string
  readonly isCaptionShown: boolean
  readonly note: string | null
  readonly columns: readonly Column[]
  readonly groups: readonly {
    readonly id: string | null
    readonly heading: readonly Inline[]
    readonly rows: readonly TableRow[]
  }[]
  readonly foot: readonly TableRow[]
  /** Offers a filter where there is JavaScript. */
  readonly canFilter: boolean
}

/** What used a figure, beside the block in which it stands. */
export interface RailNote {
  /** Which figure of the block, from 1; 0: none, a note of its own. */
  readonly figure: number
  readonly of: readonly Inline[]
  readonly words: readonly Inline[]
  readonly marks: readonly Mark[]
}
