import type { ReadOptions } from './quantity.ts'
import type { Quotation } from './quotation.ts'

/** A text, how it is read, and which of its quotation marks stand open. */
export interface TextReading {
  readonly text: string
  readonly options: ReadOptions
  readonly quotation: Quotation
}
