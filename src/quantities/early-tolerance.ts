import { acceptUnit } from './accept-unit.ts'
import type { Amount } from './amount.ts'
import { Rational } from './rational.ts'
import { readTolerance } from './read-tolerance.ts'
import type { TextReading } from './text-reading.ts'

const concise = /\((\d{1,2})\)/y
const two = Rational.of(2)

/** `12.34(3) mm`: the figures in brackets are an uncertainty in the last digits (JCGM 100:2008 7.2.2), here a half-width as `±` is. */
function withConcise(reading: TextReading, amount: Amount): Amount | null {
  concise.lastIndex = amount.end
  const digits = amount.number.kind === 'decimal' ? concise.exec(reading.text)?.[1] : undefined
  if (digits === undefined) return null
  const end = concise.lastIndex
  const unit = acceptUnit(reading, amount.number, end)
  if (unit === null) return null
  const size = amount.half.times(two).times(Rational.of(Number(digits)))
  return { ...amount, end: unit.end, unit, tolerance: { plus: size, minus: size, unit: null, end } }
}

const times = /^\s?[x×]\s?\d/

/** `12 ± 0.5 mm`, `(12 ± 0.5) mm`, the first of `300 ± 1 × 200 ± 1 mm`: the tolerance stands before the unit that both share. */
export function withEarlyTolerance(reading: TextReading, amount: Amount): Amount {
  const { text } = reading
  if (text[amount.end] === '(') return withConcise(reading, amount) ?? amount
  const tolerance = readTolerance(text, amount.end, null, reading.options)
  if (tolerance === null) return amount
  const { unit, end } = tolerance
  if (unit !== null) return { ...amount, end, unit, tolerance: { ...tolerance, unit: null } }
  if (text[end] === ')' && text[amount.start - 1] === '(') {
    const behind = acceptUnit(reading, amount.number, end + 1)
    return behind === null ? amount : { ...amount, start: amount.start - 1, end: behind.end, unit: behind, tolerance }
  }
  return times.test(text.slice(end, end + 4)) ? { ...amount, end, tolerance } : amount
}
