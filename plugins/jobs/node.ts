import type { Position } from 'unist'

/** A task list item. */
export interface JobReading {
  /** From `:job{#id}`, or made from the words. */
  readonly id: string
  readonly explicit: boolean
  /** The words without the directive. */
  readonly text: string
  readonly done: boolean
  readonly before: string | null
  /** Where the words begin and end; where the value of `before=` stands. */
  readonly position: Position | null
  readonly beforePosition: Position | null
}

declare module 'mdast' {
  interface ListItemData {
    job?: JobReading
  }
}
