import { acceptUnit } from './accept-unit.ts'
import type { Amount } from './amount.ts'
import { isWordPart, skipGap } from './characters.ts'
import { withEarlyTolerance } from './early-tolerance.ts'
import { joinSmallerUnit } from './joined-units.ts'
import { type CodeToken, isCode, type NumberToken } from './number-token.ts'
import { readAndFraction } from './number-words.ts'
import { Rational } from './rational.ts'
import { readNumber } from './read-number.ts'
import { readTolerance } from './read-tolerance.ts'
import type { UnitToken } from './read-unit.ts'
import { isSaying } from './sayings.ts'
import { readScaleWord } from './scale-word.ts'
import type { TextReading } from './text-reading.ts'

const articleUnits = new Set(['in', 'ft', 'yd', 'm', 'mm', 'L', 'kg', 'h'])
const articleWords = /^(?:inch|foot|yard|metre|millimetre|litre|kilo|hour)$/i
const articleRates = /^(?:inch|foot|metre|millimetre|litre|kilo) (?:an?|per) /i // *a litre an hour*
const joiner = /\s(?:of\s)?an?\s/y // A capital would be the ampere of `10/20 A`.
const [plus, letterA, letterP] = [43, 97, 112]
const openEnd = /^\+ ?\p{L}/u

/** `20+ mm` */
function withOpenEnd(text: string, number: NumberToken): NumberToken {
  const isOpen = number.written === 'figures' && openEnd.test(text.slice(number.end, number.end + 3))
  return isOpen ? { ...number, end: number.end + 1, isOpen } : number
}

function joinerEnd(text: string, number: NumberToken): number {
  if (number.kind !== 'fraction' && !(number.kind !== 'whole' && number.written === 'words')) return number.end
  joiner.lastIndex = number.end
  return joiner.test(text) ? joiner.lastIndex - 1 : number.end
}

function withArticle(reading: TextReading, number: NumberToken, unit: UnitToken): Amount | null {
  const added = readAndFraction(reading.text, unit.end)
  const written = reading.text.slice(unit.start, unit.end)
  if (added === null && isSaying(reading.text, number.start, unit.end)) return null
  const isUnit = (articleUnits.has(unit.id) && articleWords.test(written)) || articleRates.test(written)
  if (added === null && !(isUnit && unit.gap === 'space')) return null
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

/** *Two litre-and-a-half jugs*: so many of a size that is told behind. */
const isOfSeveral = (text: string, number: NumberToken, unit: UnitToken): boolean =>
  number.written === 'words' && text.startsWith('-and-', unit.end) && number.value.compare(Rational.one) > 0

/** `61k` before its unit is sixty-one thousand; pence are hundredths of a pound. */
function timesOf(text: string, unit: UnitToken, factor: number): Rational | null {
  const isPence =
    (text.charCodeAt(unit.start) | 32) === letterP && unit.id === 'money:GBP' && unit.end <= unit.start + 5
  return factor === 1 && !isPence ? null : Rational.of(factor, isPence ? 100 : 1)
}

function bare(number: NumberToken): Amount {
  const { start, end, value, half } = number
  return { start, end, number, value, half, unit: null, tolerance: null, isUnitImplied: false }
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
  const read = readNumber(reading.text, start, reading.options.decimal)
  if (read === null || isCode(read)) return read
  const number = reading.text.charCodeAt(read.end) === plus ? withOpenEnd(reading.text, read) : read
  const scale = number.written === 'figures' ? readScaleWord(reading.text, number.end) : null
  const unit = acceptUnit(reading, number, scale?.end ?? joinerEnd(reading.text, number))
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
  if (isOfSeveral(reading.text, number, unit)) return { code: true, end: unit.end }
  const added = number.written === 'words' && number.kind === 'whole' ? readAndFraction(reading.text, unit.end) : null
  const value = added === null ? number.value : number.value.plus(added.value)
  const half = added?.half ?? number.half
  const times = timesOf(reading.text, unit, scale?.factor ?? 1)
  const amount: Amount = {
    start: number.start,
    end: added?.end ?? unit.end,
    number,
    value: times === null ? value : value.times(times),
    half: times === null ? half : half.times(times),
    unit,
    tolerance: null,
    isUnitImplied: false,
  }
  return withTolerance(reading, joinSmallerUnit(reading, amount))
}
