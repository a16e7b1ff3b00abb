import type { Quantity } from '../quantities/quantity.ts'
import { findUnit } from '../quantities/units.ts'

/** From `low` to `high` in SI units; infinite at the open side of a bound. */
export interface Interval {
  readonly low: number
  readonly high: number
}

/**
 * What a figure allows: its written ±, else for about the build's share, else half of the last digit as written;
 * a range is its ends, a bound is open on one side. Null where there is no figure to compare, as in a thread or a gauge.
 */
export function toleranceOf(quantity: Quantity, approximateShare: number): Interval | null {
  if (quantity.siLow !== null && quantity.siHigh !== null) return { low: quantity.siLow, high: quantity.siHigh }
  if (quantity.si === null) return null
  if (quantity.bound === 'min') return { low: quantity.si, high: Number.POSITIVE_INFINITY }
  if (quantity.bound === 'max') return { low: Number.NEGATIVE_INFINITY, high: quantity.si }
  return around(quantity, quantity.si, sizesOf(quantity, approximateShare))
}

/** How much of the SI unit one of this unit is, for a difference; null where that changes along the scale, as in mpg and gauges. */
export function siPerUnit(id: string): number | null {
  const unit = findUnit(id)
  if (unit === null || unit.scale === 'reciprocal' || unit.scale === 'gauge') return null
  return unit.factor.toNumber() * (unit.scale === 'angle' ? Math.PI : 1)
}

interface Sizes {
  readonly minus: number
  readonly plus: number
}

function around({ unit, number }: Quantity, si: number, { minus, plus }: Sizes): Interval {
  const step = siPerUnit(unit)
  if (step !== null) return { low: si - minus * step, high: si + plus * step }
  if (findUnit(unit)?.scale !== 'reciprocal' || number === null || number <= minus) return { low: si, high: si }
  const product = si * number
  return { low: product / (number + plus), high: product / (number - minus) }
}

function sizesOf(quantity: Quantity, share: number): Sizes {
  if (quantity.plus !== null || quantity.minus !== null) return { minus: quantity.minus ?? 0, plus: quantity.plus ?? 0 }
  const size = quantity.approximate ? share * Math.abs(quantity.number ?? 0) : quantity.rounding
  return { minus: size, plus: size }
}
