import { toSi } from './convert.ts'
import type { Quantity } from './quantity.ts'
import { Rational } from './rational.ts'
import { findUnit } from './units.ts'

/** From the least to the greatest that a figure may be, in SI. */
export interface Stretch {
  readonly low: number
  readonly high: number
}

const slack = 1e-12 // relative: what rounding to floats may add

/** Where a quantity may lie in SI, by the rounding in which it was written; null for money and threads. */
export function roundingStretch(quantity: Quantity): Stretch | null {
  const { number, low, high, rounding, si } = quantity
  const unit = findUnit(quantity.unit)
  const [least, greatest] = [low ?? number, high ?? number]
  if (unit === null) return null
  if (least === null || greatest === null) return si === null ? null : { low: si, high: si }
  const ends = [least - rounding, greatest + rounding].map(end => toSi(Rational.fromNumber(end), unit))
  const [one, two] = ends
  if (one === null || two === null || one === undefined || two === undefined) return null
  return one <= two ? { low: one, high: two } : { low: two, high: one }
}

/** Whether two stretches share more than an end; one without width may lie on an end. */
export function stretchesOverlap(a: Stretch, b: Stretch): boolean {
  const margin = slack * Math.max(Math.abs(a.high), Math.abs(b.high))
  const isExact = a.low === a.high || b.low === b.high
  const overlap = Math.min(a.high, b.high) - Math.max(a.low, b.low)
  return isExact ? overlap >= -margin : overlap > margin
}

/** Whether two quantities are equal as written: the roundings of their figures overlap, whatever the units. */
export function quantitiesOverlap(one: Quantity, other: Quantity): boolean {
  if (one.dimension !== other.dimension) return false
  const [a, b] = [roundingStretch(one), roundingStretch(other)]
  return a !== null && b !== null && stretchesOverlap(a, b)
}
