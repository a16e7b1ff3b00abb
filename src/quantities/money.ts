import { minorDigits } from './currencies.ts'
import { Rational } from './rational.ts'

/** An exact sum of money; the amount is a rational as text, `92/5`. */
export interface Money {
  readonly amount: string
  /** ISO 4217 code. */
  readonly currency: string
}

const usualDigits = 2 // of a currency that the table has not; most of ISO 4217 has two

function exact({ amount }: Money): Rational {
  const value = Rational.parse(amount)
  if (value === null)
    throw new Error(`Unexpected amount \`${amount}\`, expected an exact number such as \`184\` or \`92/5\``)
  return value
}

const toMoney = (amount: Rational, currency: string): Money => ({ amount: amount.toString(), currency })

/** So many times an amount; the count is exact, as text. */
export function timesMoney(money: Money, count: string): Money {
  return toMoney(exact(money).times(exact({ amount: count, currency: money.currency })), money.currency)
}

/** An amount in another currency, at a rate that says what one unit of its own is worth there, unrounded. */
export function convertMoney(money: Money, rate: string, currency: string): Money {
  return toMoney(exact(timesMoney(money, rate)), currency)
}

/** An amount rounded half up, away from zero, to the currency's smallest coin (ISO 4217). */
export function roundMoney(money: Money): Money {
  const coin = Rational.of(1n, 10n ** BigInt(minorDigits(money.currency) ?? usualDigits))
  return toMoney(Rational.of(exact(money).over(coin).roundHalfUp()).times(coin), money.currency)
}
