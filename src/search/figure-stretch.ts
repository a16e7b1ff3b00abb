import { roundingStretch } from '../quantities/quantities-overlap.ts'
import type { Quantity } from '../quantities/quantity.ts'

/** A figure among those with which it can be equal. */
export interface FigureStretch {
  /** `length`, `money:GBP`, `thread`. */
  readonly group: string
  /** With its rounding, in SI. */
  readonly low: number
  readonly high: number
  /** As written, in SI; equal but for a range. */
  readonly from: number
  readonly to: number
  /** Millimetres; 0 where none was written or it is no thread. */
  readonly pitch: number
}

/** Where a figure lies in SI, with its rounding and without; null where it has no size. */
export function figureStretch(quantity: Quantity): FigureStretch | null {
  const { thread, dimension, unit, number } = quantity
  if (thread !== null) return exactly('thread', thread.diameter, thread.pitch ?? 0)
  if (dimension === 'money') return moneyStretch(unit, { low: quantity.low ?? number, high: quantity.high ?? number })
  const stretch = roundingStretch(quantity)
  if (stretch === null) return null
  const middle = (stretch.low + stretch.high) / 2
  // A difference in temperature is compared by what was written: 20 °C, whatever it began at.
  const si = quantity.difference === true ? null : quantity.si
  const isRange = si === null && quantity.siLow !== null && quantity.siHigh !== null && quantity.difference !== true
  const [from, to] = isRange ? [quantity.siLow ?? middle, quantity.siHigh ?? middle] : [si ?? middle, si ?? middle]
  return { group: dimension, low: stretch.low, high: stretch.high, from, to, pitch: 0 }
}

function exactly(group: string, at: number, pitch: number): FigureStretch {
  return { group, low: at, high: at, from: at, to: at, pitch }
}

function moneyStretch(group: string, { low, high }: { low: number | null; high: number | null }): FigureStretch | null {
  if (low === null || high === null) return null
  return { ...exactly(group, low, 0), high, to: high }
}
