import type { Amount } from './amount.ts'
import { isDigit, isGap } from './characters.ts'
import { isCode, type NumberToken } from './number-token.ts'
import type { ReadOptions } from './quantity.ts'
import type { Quotation } from './quotation.ts'
import { Rational } from './rational.ts'
import { readNumber } from './read-number.ts'
import { readUnit, type UnitToken } from './read-unit.ts'
import { isUnitRefused } from './unit-guards.ts'

interface Smaller {
  readonly id: string
  readonly count: number
}

/** Units that are written one behind the other: 6 ft 2 in, 1 h 20 min, 10 st 4 lb. */
const smaller: Readonly<Record<string, Smaller>> = {
  ft: { id: 'in', count: 12 },
  h: { id: 'min', count: 60 },
  min: { id: 's', count: 60 },
  st: { id: 'lb', count: 14 },
  lb: { id: 'oz', count: 16 },
}

const endsHere =
  /^(?:\s*$|\s?[.,;:)!?](?!\d)| (?:and|or|but|on|at|from|in the|to the|off the|under the|over the|above the|with|for|high|long|tall|wide|deep)\b)/

function isUnitLeftOut(text: string, end: number, id: string): boolean {
  return (id === 'ft' || id === 'h') && endsHere.test(text.slice(end, end + 10))
}

const spelledOut = /^, (?=\d{1,2}(?:\.\d+)? (?:inch|minute|second)|[a-z]{3,6} (?:inch|minute|second))/i

/** Where the smaller figure may begin: `6 ft 2 in`, `6'-2"`, `6' - 2"`, *6 ft and 2 in*, *6 feet, 2 inches*. */
function startOfSmaller(text: string, end: number): number {
  if (text[end] === '-' && isDigit(text.charCodeAt(end + 1))) return end + 1
  if (/^ [-–] \d{1,2}(?:[ -]?\d\/\d{1,2}|[¼½¾⅛⅜⅝⅞])?["”″]/.test(text.slice(end, end + 12))) return end + 3
  if (text[end] === ',' && /(?:feet|foot|hours?|minutes?)$/i.test(text.slice(end - 7, end)))
    return end + (spelledOut.exec(text.slice(end, end + 20))?.[0].length ?? 0)
  if (/^\s(?:and)\s/i.test(text.slice(end, end + 5))) return end + 5
  return isGap(text.charCodeAt(end)) ? end + 1 : end
}

interface Reading {
  readonly text: string
  readonly options: ReadOptions
  readonly quotation: Quotation
}

function writtenSmaller({ text, options, quotation }: Reading, first: Amount, number: NumberToken): UnitToken | null {
  const unit = readUnit(text, number.end, options)
  const isMinutes = unit?.id === 'm' && first.unit?.id === 'h' && unit.end === unit.start + 1
  if (unit !== null && isMinutes) return { ...unit, id: 'min' }
  if (unit === null || unit.id !== smaller[first.unit?.id ?? '']?.id || isUnitRefused(text, number, unit)) return null
  const isMark = /^["”]/.test(text.slice(unit.start, unit.start + 1))
  return isMark && quotation.isClosedBy(unit.start, first.start) ? null : unit
}

/** The unit behind the second number, or the one that is understood in `2h30`, `6 ft 2` and *six foot two in the cab*. */
function unitOfSmaller(reading: Reading, first: Amount, number: NumberToken): UnitToken | null {
  const written = writtenSmaller(reading, first, number)
  if (written !== null || first.unit === null) return written
  const { id } = first.unit
  const isTight = id === 'h' && number.kind === 'whole' && number.end === first.end + 2 && number.start <= first.end + 1

  const isApart = isGap(reading.text.charCodeAt(number.start - 1)) && isUnitLeftOut(reading.text, number.end, id)
  return isTight || isApart ? { ...first.unit, id: smaller[id]?.id ?? '', end: number.end } : null
}

/** Adds the inches to feet, the minutes to hours; gives the amount back as it was where none follow. */
export function joinSmallerUnit(reading: Reading, first: Amount): Amount {
  const { text, options } = reading
  const wanted = first.unit === null ? undefined : smaller[first.unit.id]
  if (wanted === undefined || (first.number.kind !== 'whole' && first.number.kind !== 'article')) return first
  const isPadded = wanted.id === 'min' && text[first.end] === '0' // `1h05`
  const start = isPadded ? first.end + 1 : startOfSmaller(text, first.end)
  const number = readNumber(text, start, options.decimal)
  const isPlain =
    number !== null && !isCode(number) && number.kind !== 'article' && number.kind !== 'gauge' && !number.isMarkWrong
  if (!isPlain || number.value.compare(Rational.of(wanted.count)) >= 0 || number.value.compare(Rational.zero) < 0)
    return first
  const unit = unitOfSmaller(reading, first, number)
  if (unit === null) return first
  const value = first.value.times(Rational.of(wanted.count)).plus(number.value)
  return { ...first, end: unit.end, value, half: number.half, unit }
}
