import type { Amount } from './amount.ts'
import { isGap, isWordPart, skipGap } from './characters.ts'
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

const articleUnits = new Set(['in', 'ft', 'yd', 'm', 'mm', 'L', 'kg', 'h'])
const articleWords = /^(?:inch|foot|yard|metre|millimetre|litre|kilo|hour)$/i
const joiner = /\s(?:of\s)?an?\s/iy
const rangeAhead = /^-\d{1,4}(?:\.\d{1,4})?/

function joinerEnd(text: string, number: NumberToken): number {
  if (number.kind !== 'fraction' && !(number.kind === 'decimal' && number.written === 'words')) return number.end
  joiner.lastIndex = number.end
  return joiner.test(text) ? joiner.lastIndex - 1 : number.end
}

function isCodeAhead({ text, options }: TextReading, unit: UnitToken): boolean {
  const ahead = rangeAhead.exec(text.slice(unit.end, unit.end + 12))
  return ahead !== null && readUnit(text, unit.end + ahead[0].length, options)?.id !== unit.id
}

function isMarkClosing({ text, quotation }: TextReading, unit: UnitToken, number: NumberToken): boolean {
  return (
    /^["'”’]/.test(text.slice(unit.start, unit.start + 1)) &&
    (unit.gap !== 'none' || quotation.isClosedBy(unit.start, number.start))
  )
}

/** The unit behind a number, where it is truly one. */
function acceptUnit(reading: TextReading, number: NumberToken, end: number): UnitToken | null {
  const unit = readUnit(reading.text, end, reading.options)
  if (unit === null || isMarkClosing(reading, unit, number) || isCodeAhead(reading, unit)) return null
  if (
    /^['’]/.test(reading.text.slice(unit.start, unit.start + 1)) &&
    isWordPart(reading.text.charCodeAt(unit.end)) &&
    !/\d/.test(reading.text[unit.end] ?? '')
  )
    return null
  if (number.kind === 'gauge' && unit.id !== 'AWG') return null
  return isUnitRefused(reading.text, { ...number, end }, unit) ? null : unit
}

function withArticle(reading: TextReading, number: NumberToken, unit: UnitToken): Amount | null {
  const added = readAndFraction(reading.text, unit.end)
  const written = reading.text.slice(unit.start, unit.end)
  if (added === null && !(articleUnits.has(unit.id) && articleWords.test(written) && unit.gap === 'space')) return null
  const value = added === null ? number.value : number.value.plus(added.value)
  const amount = {
    start: number.start,
    end: added?.end ?? unit.end,
    number,
    value,
    half: added?.half ?? number.half,
    unit,
  }
  return { ...amount, tolerance: null, isUnitImplied: false }
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
  if (!/^awg/i.test(text.slice(start, start + 3))) return null
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
  const amount: Amount = { ...bare(number), value, half: added?.half ?? number.half, unit, end: added?.end ?? unit.end }
  return withTolerance(reading, joinSmallerUnit(reading, amount))
}

/** Whether an article's amount is a price or a rate for each, as in `£4 a metre` or `two mugs an hour`. */
export function isForEach(text: string, start: number, lastEnd: number): boolean {
  let at = start
  while (at > lastEnd && isGap(text.charCodeAt(at - 1))) at -= 1
  if (at === lastEnd && lastEnd > 0) return true
  const before = /(\S{1,20})\s+(\S{1,20})\s*$/.exec(text.slice(Math.max(lastEnd, start - 44), start))
  const single = before?.[2] ?? /(\S{1,20})\s*$/.exec(text.slice(Math.max(lastEnd, start - 22), start))?.[1] ?? ''
  if (
    /\d/.test(single) ||
    /^(?:once|twice|thrice|times|per|each|every|quid|pence|pounds?|euros?|dollars?|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|fifty)$/i.test(
      single,
    )
  )
    return true
  return (
    /s$/i.test(single) &&
    /\d|^(?:two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|fifty)$/i.test(before?.[1] ?? '')
  )
}
