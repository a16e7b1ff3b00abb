import type { Amount } from './amount.ts'
import type { NumberToken } from './number-token.ts'
import { Rational } from './rational.ts'
import type { UnitToken } from './read-unit.ts'
import { type Segment, singleSegment } from './segment.ts'

const fractional = /^(?:in|ft|yd|mi|lb|oz|h|pt|gal|hp|mil|pound|ton|cwt|pt_\w+|gal_\w+|AWG)$/
const inchBottoms = /^(?:2|3|4|5|6|8|10|12|16|32|64|100|128|1000)$/
const otherBottoms = /^(?:2|3|4|8|10|16|32)$/

/** Whether `60/55` before a unit is two figures, and not the fraction that `3/8` is. */
function isPair(top: Rational, bottom: Rational, unit: UnitToken): boolean {
  if (unit.id.startsWith('money:')) return true
  const isProper = top.compare(bottom) < 0 && !top.isZero()
  const isLowest = Rational.of(top.top, bottom.top).bottom === bottom.top
  if (fractional.test(unit.id))
    return !(inchBottoms.test(`${bottom}`) && (isProper || (isLowest && /^(?:2|4|8|16|32|64)$/.test(`${bottom}`))))
  if (isProper && /^(?:100|1000)$/.test(`${bottom}`)) return false
  return !(isProper && isLowest && otherBottoms.test(`${bottom}`))
}

const half = Rational.of(1, 2)

function member(amount: Amount, number: NumberToken, end: number): Amount {
  const start = number.start === amount.number.start ? amount.start : number.start
  return { ...amount, start, end, number, value: number.value, half, tolerance: null }
}

/** One segment for an amount with a unit, two for `60/55W`, none for a number that has no unit. */
export function splitStroke(amount: Amount, unit: UnitToken | null): Segment[] {
  if (unit === null) return []
  const stroke = amount.number.kind === 'fraction' ? amount.number.stroke : null
  if (stroke === null || !isPair(stroke.top.value, stroke.bottom.value, unit)) return [singleSegment(amount, unit)]
  const whole = { start: amount.start, end: amount.end }
  const first = member(amount, stroke.top, stroke.top.end)
  const second = member(amount, stroke.bottom, amount.end)
  return [first, second].map(one => ({ ...singleSegment(one, unit), whole }))
}
