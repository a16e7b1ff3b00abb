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

const [letterA, letterS] = [65, 83]

/** Whether a text holds the `BS` or `BA` of a British thread. */
function holdsBritish(text: string): boolean {
  for (let at = text.indexOf('B'); at >= 0; at = text.indexOf('B', at + 1)) {
    const next = text.charCodeAt(at + 1)
    if (next === letterS || next === letterA) return true
  }
  return false
}

/** A text of which nothing has been read yet. */
export function startReading(text: string, options: ReadOptions): ReadingState {
  const mayHaveSeries = text.includes('UN') || holdsBritish(text) || text.includes('NPT') || text.includes('Whit')
  const quotation = new Quotation(text)
  return { text, options, quotation, readings: [], doubts: [], lastEnd: 0, groups: 0, mayHaveSeries }
}
