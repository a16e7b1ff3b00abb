import { minorDigits } from '../../quantities/currencies.ts'
import { Rational } from '../../quantities/rational.ts'

const usualDigits = 2 // ISO 4217 gives most currencies two minor digits; taken where the table lacks the code

/** The exact sum of amounts of one currency, printed to its smallest coin: `184.00`. */
export function addAmounts(amounts: readonly string[], currency: string): string {
  const sum = amounts.reduce((total, amount) => total.plus(exact(amount)), Rational.zero)
  return printAmount(sum, currency)
}

/** The first less the second. */
export function subtractAmounts(amount: string, other: string, currency: string): string {
  return printAmount(exact(amount).minus(exact(other)), currency)
}

export const isNothing = (amount: string): boolean => exact(amount).isZero()

function exact(amount: string): Rational {
  const read = Rational.parse(amount)
  if (read === null) throw new Error(`Unexpected amount \`${amount}\`, expected an exact decimal`)
  return read
}

function printAmount(sum: Rational, currency: string): string {
  const digits = minorDigits(currency) ?? usualDigits
  const coins = sum.times(Rational.of(10n ** BigInt(digits))).roundHalfUp()
  const text = String(coins < 0n ? -coins : coins).padStart(digits + 1, '0')
  const whole = text.slice(0, text.length - digits)
  return `${coins < 0n ? '-' : ''}${whole}${digits === 0 ? '' : `.${text.slice(-digits)}`}`
}
