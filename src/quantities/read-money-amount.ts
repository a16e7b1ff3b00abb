import type { Amount } from './amount.ts'
import { isGap, isWordPart } from './characters.ts'
import { currencyOfSign } from './currencies.ts'
import { isCode, type NumberToken } from './number-token.ts'
import { Rational } from './rational.ts'
import { beginsFigures, readNumber } from './read-number.ts'
import type { TextReading } from './text-reading.ts'

const scales: Readonly<Record<string, bigint>> = {
  k: 1000n,
  grand: 1000n,
  thousand: 1000n,
  m: 1000000n,
  mil: 1000000n,
  million: 1000000n,
  bn: 1000000000n,
  billion: 1000000000n,
}
const scale = /(k|m|bn)(?![\p{L}\p{N}_])|\s?(thousand|million|billion|grand)(?![\p{L}\p{N}_])/iuy
const dollars = /(US|A|AU|C|CA|NZ|HK|S) ?\$$/
const dollarCodes: Readonly<Record<string, string>> = {
  US: 'USD',
  A: 'AUD',
  AU: 'AUD',
  C: 'CAD',
  CA: 'CAD',
  NZ: 'NZD',
  HK: 'HKD',
  S: 'SGD',
}

function scaled(text: string, number: NumberToken): { factor: bigint; end: number } {
  scale.lastIndex = number.end
  const match = scale.exec(text)
  const factor = scales[(match?.[1] ?? match?.[2] ?? '').toLowerCase()]
  return factor === undefined ? { factor: 1n, end: number.end } : { factor, end: scale.lastIndex }
}

function signAt(text: string, at: number): { currency: string; start: number } | null {
  const currency = currencyOfSign(text[at] ?? '')
  if (currency === null) return null
  const before = text[at] === '$' ? dollars.exec(text.slice(Math.max(0, at - 4), at + 1)) : null
  const start = before === null ? at : at + 1 - before[0].length
  const isOwnWord = before !== null && !isWordPart(text.charCodeAt(start - 1))
  return isOwnWord ? { currency: dollarCodes[before[1] ?? ''] ?? currency, start } : { currency, start: at }
}

function money(text: string, number: NumberToken, from: { currency: string; start: number }): Amount {
  const { factor, end } = scaled(text, number)
  const isNegative = /[-−]/.test(text[from.start - 1] ?? '') && !isWordPart(text.charCodeAt(from.start - 2))
  const value = number.value.times(Rational.of(isNegative ? -factor : factor))
  const unit = { id: `money:${from.currency}`, ambiguous: null, start: from.start, end, gap: 'none' } as const
  const start = isNegative ? from.start - 1 : from.start
  return {
    start,
    end,
    number,
    value,
    half: number.half.times(Rational.of(factor)),
    unit,
    tolerance: null,
    isUnitImplied: false,
  }
}

/** Reads money whose sign or code stands before the figures: `£85`, `US$9`, `£2m`, `GBP 85`. */
export function readMoneyAmount({ text, options }: TextReading, at: number): Amount | null {
  const first = text.charCodeAt(at)
  // Codes begin with a capital; a small letter begins neither a code nor a sign.
  if (first >= 97 && first <= 122) return null
  const code = /^(?:GBP|EUR|USD|CHF|SEK|NOK|DKK|AUD|NZD|CAD|JPY)$/.exec(text.slice(at, at + 3))
  const sign = code === null ? signAt(text, at) : { currency: code[0], start: at }
  if (sign === null) return null
  const behind = at + (code === null ? 1 : 3)
  const start = isGap(text.charCodeAt(behind)) ? behind + 1 : behind
  if (!beginsFigures(text, /[-−]/.test(text[start] ?? '') ? start + 1 : start)) return null
  const number = readNumber(text, start, options.decimal)
  if (
    number === null ||
    isCode(number) ||
    (number.kind !== 'whole' && number.kind !== 'decimal' && number.stroke === null)
  )
    return null
  return money(text, number, sign)
}
