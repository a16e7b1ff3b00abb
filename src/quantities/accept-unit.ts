import { isDigit, isWordPart } from './characters.ts'
import { codesOf } from './codes-of.ts'
import { isInOrInches } from './inch-or-preposition.ts'
import type { NumberToken } from './number-token.ts'
import { readUnit, type UnitToken } from './read-unit.ts'
import type { TextReading } from './text-reading.ts'
import { isUnitRefused } from './unit-guards.ts'
import { findUnit } from './units.ts'

const quotationMarks = codesOf('"\'”’')
const lengthMarks = codesOf('"\'”’″′')
const [hyphen, tag] = [45, 60]
const rangeAhead = /^-\d{1,4}(?:\.\d{1,4})?/

function isCodeAhead({ text, options }: TextReading, unit: UnitToken): boolean {
  if (text.charCodeAt(unit.end) !== hyphen || unit.id === 'ft') return false
  const ahead = rangeAhead.exec(text.slice(unit.end, unit.end + 12))
  return ahead !== null && readUnit(text, unit.end + ahead[0].length, options)?.id !== unit.id
}

function isMarkClosing({ text, quotation }: TextReading, unit: UnitToken, number: NumberToken): boolean {
  return (
    quotationMarks.has(text.charCodeAt(unit.start)) &&
    (unit.gap !== 'none' || quotation.isClosedBy(unit.start, number.start))
  )
}

const minutesBefore = /[°º]\s?(?:\d{1,2}['’′]\s?)?$/

/** The mark of a possessive, or of the minutes and seconds of `51° 30' 12"`. */
function isNoLengthMark(text: string, unit: UnitToken, number: NumberToken): boolean {
  const mark = text[unit.start]
  if (minutesBefore.test(text.slice(Math.max(0, number.start - 6), number.start))) return true
  return (mark === "'" || mark === '’') && isWordPart(text.charCodeAt(unit.end)) && !isDigit(text.charCodeAt(unit.end))
}

const isOtherMark = (reading: TextReading, unit: UnitToken, number: NumberToken): boolean =>
  isMarkClosing(reading, unit, number) || isNoLengthMark(reading.text, unit, number)

const raised = /^<sup>([23])<\/sup>/i

/** The power of `2.5 mm<sup>2</sup>`; null where no unit has it. */
function withRaised(text: string, unit: UnitToken): UnitToken | null {
  const match = text.charCodeAt(unit.end) === tag ? raised.exec(text.slice(unit.end, unit.end + 12)) : null
  if (match === null) return unit
  const id = `${unit.id}${match[1]}`
  return findUnit(id) === null ? null : { ...unit, id, end: unit.end + match[0].length }
}

const isWordIn = (text: string, { start, end }: UnitToken): boolean => end === start + 2 && text.startsWith('in', start)

/** The unit behind a number that ends at a place, where it is truly one. */
export function acceptUnit(reading: TextReading, number: NumberToken, end: number): UnitToken | null {
  const plain = readUnit(reading.text, end, reading.options)
  const unit = plain === null ? null : withRaised(reading.text, plain)
  if (unit === null || isCodeAhead(reading, unit)) return null
  if (lengthMarks.has(reading.text.charCodeAt(unit.start)) && isOtherMark(reading, unit, number)) return null
  if (number.kind === 'gauge' && unit.id !== 'AWG') return null
  if (isUnitRefused(reading.text, end === number.end ? number : { ...number, end }, unit)) return null
  const isAsked = unit.id === 'in' && number.kind === 'whole' && unit.gap === 'space' && isWordIn(reading.text, unit)
  return isAsked && isInOrInches(reading.text, number.start, unit.end) ? { ...unit, ambiguous: 'in-place' } : unit
}
