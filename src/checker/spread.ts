import type { Quantity } from '../quantities/quantity.ts'
import { standardUncertainty } from '../quantities/uncertainty.ts'

/** What a figure can be, in SI: its best value, the ends, its standard uncertainty. */
export interface Spread {
  readonly value: number
  readonly low: number
  readonly high: number
  readonly deviation: number
  /** A ±, a range or an *about* was written. */
  readonly isSpread: boolean
}

/** Reads the spread off what was written. A bound is its end and nothing else: it is never averaged. */
export function spreadOf(quantity: Quantity, approximateShare: number): Spread {
  const end = quantity.si ?? quantity.siLow ?? quantity.siHigh ?? Number.NaN
  const known = quantity.bound === null ? standardUncertainty(quantity, approximateShare) : null
  if (known === null) return { value: end, low: end, high: end, deviation: 0, isSpread: false }
  const isRange = quantity.low !== null && quantity.high !== null
  const isSpread = quantity.plus !== null || quantity.minus !== null || quantity.approximate || isRange
  return { value: known.value, low: known.low, high: known.high, deviation: known.standard, isSpread }
}
