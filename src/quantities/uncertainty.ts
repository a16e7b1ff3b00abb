import { toSi } from './convert.ts'
import type { Quantity } from './quantity.ts'
import { Rational } from './rational.ts'
import { findUnit } from './units.ts'

/** What is known of a value in SI: the middle, its standard uncertainty, and the ends between which it lies. */
export interface Spread {
  readonly value: number
  readonly standard: number
  readonly low: number
  readonly high: number
  /** A bound is one-sided: it holds the value itself and is never averaged. */
  readonly bound: 'min' | 'max' | null
}

const usualApproximateShare = 0.05 // of the value, where build.md sets no `approximate:` of its own

interface Ends {
  readonly low: number
  readonly high: number
  readonly isEven: boolean
}

function endsInUnit(quantity: Quantity, share: number): Ends | null {
  const { number, low, high, plus, minus, rounding, approximate } = quantity
  const middle = number ?? (low !== null && high !== null ? (low + high) / 2 : null)
  if (middle === null) return null
  const loose = approximate ? Math.abs(middle) * share : 0
  if (number === null && low !== null && high !== null) return { low: low - loose, high: high + loose, isEven: true }
  const [up, down] = [plus ?? rounding, minus ?? rounding].map(size => Math.max(size, loose))
  return up === undefined || down === undefined ? null : { low: middle - down, high: middle + up, isEven: up === down }
}

const fromFloat = (value: number): Rational => Rational.fromNumber(value)

function siEnd(value: number, quantity: Quantity): number | null {
  const unit = findUnit(quantity.unit)
  if (unit === null || !Number.isFinite(value)) return null
  if (quantity.difference !== true) return toSi(fromFloat(value), unit)
  return fromFloat(value).times(unit.factor).toNumber()
}

/** A gauge such as 2/0 has no number to vary: its area is by definition. */
function exactSpread({ si, bound }: Quantity): Spread | null {
  return si === null ? null : { value: si, standard: 0, low: si, high: si, bound }
}

/** The spread of a quantity: `±` and the last digit are half-widths of a rectangular distribution, u = a/√3 (JCGM 100:2008, 4.3.7);
 * uneven ends move the value to their middle (4.3.8); *about* is worth a share of the value. Null for money and threads. */
export function standardUncertainty(
  quantity: Quantity,
  approximateShare: number = usualApproximateShare,
): Spread | null {
  const ends = endsInUnit(quantity, approximateShare)
  if (ends === null) return exactSpread(quantity)
  const [one, two] = [siEnd(ends.low, quantity), siEnd(ends.high, quantity)]
  if (one === null || two === null) return null
  const [low, high] = one <= two ? [one, two] : [two, one]
  const value = ends.isEven && quantity.si !== null ? quantity.si : (low + high) / 2
  const standard = (high - low) / Math.sqrt(12)
  return Number.isFinite(value) && Number.isFinite(standard)
    ? { value, standard, low, high, bound: quantity.bound }
    : null
}
