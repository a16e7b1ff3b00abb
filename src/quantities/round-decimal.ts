import { Rational } from './rational.ts'

const ten = 10n
const power = (places: number): Rational =>
  places >= 0 ? Rational.of(ten ** BigInt(places)) : Rational.of(1n, ten ** BigInt(-places))

function roundHalfEven(value: Rational): bigint {
  const size = value.absolute()
  const [down, rest] = [size.top / size.bottom, (size.top % size.bottom) * 2n]
  const isUp = rest > size.bottom || (rest === size.bottom && down % 2n === 1n)
  const rounded = isUp ? down + 1n : down
  return value.top < 0n ? -rounded : rounded
}

/** The exact value of the shortest decimal that a float prints as, so that 0.1 is one tenth. */
export function rationalOfDecimal(value: number): Rational {
  const [mantissa = '0', exponent = '0'] = value.toString().split('e')
  return (Rational.parse(mantissa) ?? Rational.zero).times(power(Number(exponent)))
}

/** A decimal with so many places behind the mark, fewer than none for tens and hundreds; a half goes to the even digit (NIST SP 811, B.7.1). */
export function roundDecimal(value: Rational, places: number): string {
  const rounded = roundHalfEven(value.times(power(places)))
  if (places <= 0) return `${rounded * ten ** BigInt(-places)}`
  const digits = `${rounded < 0n ? -rounded : rounded}`.padStart(places + 1, '0')
  return `${rounded < 0n ? '-' : ''}${digits.slice(0, -places)}.${digits.slice(-places)}`
}

/** Places behind the mark at which a size shows so many significant digits; null for zero. */
export function placesFor(size: Rational, digits: number): number | null {
  if (size.isZero()) return null
  const guess = digits - 1 - Math.floor(Math.log10(size.absolute().toNumber()))
  // 0.0996 to two digits is 0.10: rounding may carry into a further digit.
  const shown = roundDecimal(size.absolute(), guess)
    .replace(/^0\.0*|\./g, '')
    .replace(/^0+/, '')
  return shown.length > digits && guess > 0 ? guess - 1 : guess
}
