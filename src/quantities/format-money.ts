import { minorDigits, signOfCurrency } from './currencies.ts'
import type { Money } from './money.ts'
import { Rational } from './rational.ts'

const minus = '−'

/** A printed number with its currency's sign before it, or its code behind it. */
export function formatMoneyNumber(number: string, currency: string): string {
  const sign = signOfCurrency(currency)
  if (sign === null) return `${number} ${currency}`
  return number.startsWith(minus) ? `${minus}${sign}${number.slice(1)}` : `${sign}${number}`
}

function centsOf(amount: Rational, digits: number): string {
  const coins = amount.times(Rational.of(10n ** BigInt(digits))).roundHalfUp()
  const text = `${coins < 0n ? -coins : coins}`.padStart(digits + 1, '0')
  const whole = text.slice(0, text.length - digits).replace(/\B(?=(\d{3})+$)/g, ',')
  const sign = coins < 0n ? minus : ''
  return digits === 0 ? `${sign}${whole}` : `${sign}${whole}.${text.slice(-digits)}`
}

/** Money as printed: rounded half up to the currency's smallest coin, thousands set apart by commas. */
export function formatMoney({ amount, currency }: Money): string {
  const exact = Rational.parse(amount) ?? Rational.zero
  return formatMoneyNumber(centsOf(exact, minorDigits(currency) ?? 2), currency)
}
