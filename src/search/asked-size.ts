import { toSi } from '../quantities/convert.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { Rational } from '../quantities/rational.ts'
import { findUnit } from '../quantities/units.ts'
import { figureStretch } from './figure-stretch.ts'

/** Which sizes answer a quantity, in SI. */
export interface AskedSize {
  readonly group: string
  /** `equal`: the roundings overlap. `within`: what was written lies between the ends, which count unless `isStrict`. */
  readonly test: 'equal' | 'within'
  readonly low: number
  readonly high: number
  readonly isStrict: boolean
  /** What was asked for: the nearest goes first. Null: all are as good. */
  readonly middle: number | null
  /** Of a thread, in millimetres; 0: any. */
  readonly pitch: number
}

interface Asking {
  readonly approximate: number
  /** Said by a word before the quantity that is no part of it, such as *under*. */
  readonly bound: 'min' | 'max' | null
}

/** What a quantity asks for: its equals, or with *about*, a bound, a range or a tolerance what lies within. */
export function askedSize(quantity: Quantity, asking: Asking): AskedSize | null {
  const stretch = figureStretch(quantity)
  if (stretch === null) return null
  const { group, pitch } = stretch
  const bound = quantity.bound ?? asking.bound
  const within = { group, test: 'within', isStrict: false, middle: null, pitch } as const
  if (bound !== null) {
    const isStrict = asking.bound !== null || /^(?:[<>](?!=)|more than|less than)/i.test(quantity.text)
    return bound === 'min'
      ? { ...within, low: stretch.from, high: Number.POSITIVE_INFINITY, isStrict }
      : { ...within, low: Number.NEGATIVE_INFINITY, high: stretch.to, isStrict }
  }
  const ends = writtenEnds(quantity, asking.approximate)
  if (ends !== null) return { ...within, ...ends, middle: quantity.number === null ? null : stretch.from }
  return { ...within, test: 'equal', low: stretch.low, high: stretch.high, middle: stretch.from }
}

/** The ends that were written or that *about* makes; null where equals are asked for. */
function writtenEnds(quantity: Quantity, approximate: number): { low: number; high: number } | null {
  const { number, low, high, plus, minus } = quantity
  const share = quantity.approximate ? approximate : 0
  if (low !== null && high !== null) return siEnds(quantity, low - Math.abs(low) * share, high + Math.abs(high) * share)
  if (number === null) return null
  if (share > 0) return siEnds(quantity, number - Math.abs(number) * share, number + Math.abs(number) * share)
  return plus === null || minus === null ? null : siEnds(quantity, number - minus, number + plus)
}

function siEnds({ unit }: Quantity, one: number, other: number): { low: number; high: number } | null {
  const found = findUnit(unit)
  if (found === null) return null
  const ends = [one, other].map(end => (found.scale === 'none' ? end : toSi(Rational.fromNumber(end), found)))
  const [a, b] = ends
  if (a === null || b === null || a === undefined || b === undefined) return null
  return { low: Math.min(a, b), high: Math.max(a, b) }
}
