import type { Quantity, ReadOptions } from './quantity.ts'
import { readQuantities } from './read-quantities.ts'

/** The one quantity that a whole text is, as in a front-matter value; null where it is anything else or in doubt. */
export function readOneQuantity(text: string, options: ReadOptions): Quantity | null {
  const { readings, doubts } = readQuantities(text, options)
  const [only] = readings
  if (only === undefined || readings.length !== 1 || doubts.length > 0) return null
  const isWhole = /^\s*(?:from\s)?$/i.test(text.slice(0, only.start)) && /^\.?\s*$/.test(text.slice(only.end))
  return isWhole ? only.quantity : null
}
