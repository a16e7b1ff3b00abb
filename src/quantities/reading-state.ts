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
  /** Whether the text holds a letter pair that the series of an inch thread begins with. */
  readonly mayHaveSeries: boolean
}

/** A text of which nothing has been read yet. */
export function startReading(text: string, options: ReadOptions): ReadingState {
  const mayHaveSeries = text.includes('UN') || text.includes('BSP') || text.includes('NPT')
  const quotation = new Quotation(text)
  return { text, options, quotation, readings: [], doubts: [], lastEnd: 0, groups: 0, mayHaveSeries }
}
