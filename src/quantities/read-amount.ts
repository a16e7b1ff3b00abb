import type { Amount } from './amount.ts'
import { isDigit, isWordPart, skipGap } from './characters.ts'
import { codesOf } from './codes-of.ts'
import { joinSmallerUnit } from './joined-units.ts'
import { type CodeToken, isCode, type NumberToken } from './number-token.ts'
import { readAndFraction } from './number-words.ts'
import type { ReadOptions } from './quantity.ts'
import type { Quotation } from './quotation.ts'
import { readNumber } from './read-number.ts'
import { readTolerance } from './read-tolerance.ts'
import { readUnit, type UnitToken } from './read-unit.ts'
import { isUnitRefused } from './unit-guards.ts'

export interface TextReading {
  readonly text: string
  readonly options: ReadOptions
  readonly quotation: Quotation
}

const quotationMarks = codesOf('"\'”’')
const articleUnits = new Set(['in', 'ft', 'yd', 'm', 'mm', 'L', 'kg', 'h'])
const articleWords = /^(?:inch|foot|yard|metre|millimetre|litre|kilo|hour)$/i
const joiner = /\s(?:of\s)?an?\s/iy
const [hyphen, letterA] = [45, 97]
const rangeAhead = /^-\d{1,4}(?:\.\d{1,4})?/

function joinerEnd(text: string, number: NumberToken): number {
  if (number.kind !== 'fraction' && !(number.kind === 'decimal' && number.written === 'words')) return number.end
  joiner.lastIndex = number.end
  return joiner.test(text) ? joiner.lastIndex - 1 : number.end
}

function isCodeAhead({ text, options }: TextReading, unit: UnitToken): boolean {
  if (text.charCodeAt(unit.end) !== hyphen) return false
  const ahead = rangeAhead.exec(text.slice(unit.end, unit.end + 12))
  return ahead !== null && readUnit(text, unit.end + ahead[0].length, options)?.id !== unit.id
}

function isMarkClosing({ text, quotation }: TextReading, unit: UnitToken, number: NumberToken): boolean {
  return (
    quotationMarks.has(text.charCodeAt(unit.start)) &&
    (unit.gap !== 'none' || quotation.isClosedBy(unit.start, number.start))
  )
}

function isMarkOfWord(text: string, unit: UnitToken): boolean {
  const mark = text[unit.start]
  return (mark === "'" || mark === '’') && isWordPart(text.charCodeAt(unit.end)) && !isDigit(text.charCodeAt(unit.end))
}

/** The unit behind a number, where it is truly one. */
function acceptUnit(reading: TextReading, number: NumberToken, end: number): UnitToken | null {
  const unit = readUnit(reading.text, end, reading.options)
  if (unit === null || isMarkClosing(reading, unit, number) || isCodeAhead(reading, unit)) return null
  if (isMarkOfWord(reading.text, unit)) return null
  if (number.kind === 'gauge' && unit.id !== 'AWG') return null
  return isUnitRefused(reading.text, end === number.end ? number : { ...number, end }, unit) ? null : unit
}

function withArticle(reading: TextReading, number: NumberToken, unit: UnitToken): Amount | null {
  const added = readAndFraction(reading.text, unit.end)
  const written = reading.text.slice(unit.start, unit.end)
  if (added === null && !(articleUnits.has(unit.id) && articleWords.test(written) && unit.gap === 'space')) return null
  const value = added === null ? number.value : number.value.plus(added.value)
  const half = added?.half ?? number.half
  return {
    start: number.start,
    end: added?.end ?? unit.end,
    number,
    value,
    half,
    unit,
    tolerance: null,
    isUnitImplied: false,
  }
}

function bare(number: NumberToken): Amount {
  const { start, end, value, half } = number
  return { start, end, number, value, half, unit: null, tolerance: null, isUnitImplied: false }
}

/** `12 ± 0.5 mm`: the tolerance stands before the unit that both share. */
function withEarlyTolerance(reading: TextReading, amount: Amount): Amount {
  const tolerance = readTolerance(reading.text, amount.end, amount.unit?.id ?? null, reading.options)
  if (tolerance === null || tolerance.unit === null) return amount
  return { ...amount, end: tolerance.end, unit: tolerance.unit, tolerance: { ...tolerance, unit: null } }
}

function withTolerance(reading: TextReading, amount: Amount): Amount {
  const tolerance = readTolerance(reading.text, amount.end, amount.unit?.id ?? null, reading.options)
  return tolerance === null ? amount : { ...amount, tolerance, end: tolerance.end }
}

/** `AWG 12`, `AWG 2/0`: the gauge's name before its number. */
export function readPrefixedGauge(reading: TextReading, start: number): Amount | null {
  const { text, options } = reading
  if ((text.charCodeAt(start) | 32) !== letterA || !/^awg/i.test(text.slice(start, start + 3))) return null
  const at = skipGap(text, start + 3)
  const number = readNumber(text, at, options.decimal)
  if (number === null || isCode(number) || (number.kind !== 'whole' && number.kind !== 'gauge')) return null
  if (number.written !== 'figures' || isWordPart(text.charCodeAt(number.end)) || number.value.toNumber() > 50)
    return null
  const unit: UnitToken = { id: 'AWG', ambiguous: null, start, end: start + 3, gap: 'space' }
  return { ...bare(number), start, unit }
}

/** Reads one number with its unit and tolerance from a place on; figures that are a code come back as such. */
export function readAmount(reading: TextReading, start: number): Amount | CodeToken | null {
  const number = readNumber(reading.text, start, reading.options.decimal)
  if (number === null || isCode(number)) return number
  const end = joinerEnd(reading.text, number)
  const unit = acceptUnit(reading, number, end)
  if (unit === null && number.kind === 'article') return null
  if (unit === null) {
    const early = withEarlyTolerance(reading, bare(number))
    const glued = isWordPart(reading.text.charCodeAt(number.end)) && !/[xX×]/.test(reading.text[number.end] ?? '')
    return glued && early.unit === null ? { code: true, end: number.end } : early
  }
  if (number.kind === 'article') {
    const amount = withArticle(reading, number, unit)
    return amount === null ? null : joinSmallerUnit(reading, amount)
  }
  const added = number.written === 'words' && number.kind === 'whole' ? readAndFraction(reading.text, unit.end) : null
  const value = added === null ? number.value : number.value.plus(added.value)
  const half = added?.half ?? number.half
  const last = added?.end ?? unit.end
  const amount: Amount = {
    start: number.start,
    end: last,
    number,
    value,
    half,
    unit,
    tolerance: null,
    isUnitImplied: false,
  }
  return withTolerance(reading, joinSmallerUnit(reading, amount))
}
