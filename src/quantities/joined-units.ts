import type { Amount } from './amount.ts'
import { isGap } from './characters.ts'
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

const endsHere = /^(?:\s*$|\s?[.,;:)!?](?!\d)| (?:and|or|but|on|at|from|in the|with|for|high|long|tall|wide|deep)\b)/

function isUnitLeftOut(text: string, end: number, id: string): boolean {
  return (id === 'ft' || id === 'h') && endsHere.test(text.slice(end, end + 10))
}

function startOfSmaller(text: string, end: number): number {
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
  if (unit === null || unit.id !== smaller[first.unit?.id ?? '']?.id || isUnitRefused(text, number, unit)) return null
  const isMark = /^["”]/.test(text.slice(unit.start, unit.start + 1))
  return isMark && quotation.isClosedBy(unit.start, first.start) ? null : unit
}

/** The unit behind the second number, or the one that is understood in `6 ft 2` and *six foot two in the cab*. */
function unitOfSmaller(reading: Reading, first: Amount, number: NumberToken): UnitToken | null {
  const written = writtenSmaller(reading, first, number)
  if (written !== null || first.unit === null) return written
  const { id } = first.unit
  return isUnitLeftOut(reading.text, number.end, id)
    ? { ...first.unit, id: smaller[id]?.id ?? '', end: number.end }
    : null
}

/** Adds the inches to feet, the minutes to hours; gives the amount back as it was where none follow. */
export function joinSmallerUnit(reading: Reading, first: Amount): Amount {
  const { text, options } = reading
  const wanted = first.unit === null ? undefined : smaller[first.unit.id]
  if (wanted === undefined || (first.number.kind !== 'whole' && first.number.kind !== 'article')) return first
  const start = startOfSmaller(text, first.end)
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
