import type { Amount } from '../facts/fact.ts'
import type { BuildHead } from '../facts/stated-note.ts'
import { type Finding, finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import { minorDigits } from '../quantities/currencies.ts'
import { convertMoney, roundMoney, timesMoney } from '../quantities/money.ts'
import { Rational } from '../quantities/rational.ts'

/** A price as written, times a quantity. */
interface PricedLine {
  readonly amount: Amount
  readonly qty: string
  readonly place: Place
}

export interface Purse {
  readonly currency: string
  /** Times the quantity, at the build's rate, rounded half up to the smallest coin and counted in it; null without a rate. */
  readonly count: (line: PricedLine) => bigint | null
  /** Coins as an amount of the build's currency: `184.00`. */
  readonly print: (coins: bigint) => string
  /** Prices in a currency that has no rate, each place once. */
  readonly findings: readonly Finding[]
}

/** Counts in the smallest coin of the build's currency, so that every sum is exact. */
export function makePurse({ currency, rates }: Pick<BuildHead, 'currency' | 'rates'>): Purse {
  const findings: Finding[] = []
  const rateOf = (from: string): string | null => {
    if (from === currency) return '1'
    return Object.hasOwn(rates, from) ? (rates[from] ?? null) : null
  }
  return {
    currency,
    findings,
    print: coins => printCoins(coins, currency),
    count: line => {
      const rate = rateOf(line.amount.currency)
      if (rate !== null) return inCoins(line, rate, currency)
      const isTold = findings.some(
        ({ line: at, column, file }) =>
          at === line.place.line && column === line.place.column && file === line.place.file,
      )
      if (!isTold) findings.push(noRate(line, currency))
      return null
    },
  }
}

function noRate({ amount, place }: PricedLine, currency: string): Finding {
  const paid = amount.currency
  return finding('no-rate', place, {
    message: `Unexpected currency \`${paid}\` in \`${amount.amount} ${paid}\`, expected a rate for it in build.md; the amount is not in any sum`,
    mend: `rates: { ${paid}: 1.00 }, with what one ${paid} is in ${currency}`,
  })
}

function inCoins({ amount, qty }: PricedLine, rate: string, currency: string): bigint {
  const rounded = roundMoney(convertMoney(timesMoney(amount, qty), rate, currency))
  const coinsInOne = Rational.of(10n ** BigInt(digitsOf(currency)))
  return (Rational.parse(rounded.amount) ?? Rational.zero).times(coinsInOne).roundHalfUp()
}

function printCoins(coins: bigint, currency: string): string {
  const digits = digitsOf(currency)
  const text = String(coins < 0n ? -coins : coins).padStart(digits + 1, '0')
  const whole = text.slice(0, text.length - digits)
  return `${coins < 0n ? '-' : ''}${whole}${digits === 0 ? '' : `.${text.slice(-digits)}`}`
}

const usualDigits = 2 // ISO 4217 gives most currencies two minor digits; taken where the table lacks the code
const digitsOf = (currency: string): number => minorDigits(currency) ?? usualDigits
