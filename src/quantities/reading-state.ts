import type { Reading, ReadingDoubt, ReadOptions } from './quantity.ts'
import { Quotation } from './quotation.ts'

/** What has been read of a text so far. */
export interface ReadingState {
  readonly text: string
  readonly options: ReadOptions
  readonly quotation: Quotation
  readonly readings: Reading[]
  readonly doubts: ReadingDoubt[]
  /** The end of the last quantity: words before it belong to no later one. */
  lastEnd: number
  groups: number
}

/** A text of which nothing has been read yet. */
export function startReading(text: string, options: ReadOptions): ReadingState {
  return { text, options, quotation: new Quotation(text), readings: [], doubts: [], lastEnd: 0, groups: 0 }
}
