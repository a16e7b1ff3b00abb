import { isGap, isLetter, skipGap } from './characters.ts'
import { codesOf } from './codes-of.ts'
import { isCode, type NumberToken } from './number-token.ts'
import type { ReadOptions } from './quantity.ts'
import type { Rational } from './rational.ts'
import { beginsFigures, readNumber } from './read-number.ts'
import { readUnit, type UnitToken } from './read-unit.ts'
import { isUnitRefused } from './unit-guards.ts'
import { findUnit } from './units.ts'
import { wordAfter } from './words-around.ts'

/** A written tolerance; its sizes are in its own unit, or in the quantity's where it names none. */
export interface ToleranceToken {
  readonly plus: Rational
  readonly minus: Rational
  readonly unit: UnitToken | null
  readonly end: number
}

const sign = /,?\s?(?:±|\+\s?\/\s?[-−]|\+[-−]|plus or minus\b|plus-or-minus\b|give or take\b|to within\b|within ±)/iy
const upper = /\s?\/?\s?\+\s?|\s(?=0\s?\/\s?[-−]\s?[\d.])/y
const lower = /\s?[/,]?\s?[-−–]\s?|\s?\/\s?(?=0(?![\d.]))/y
const downFirst = /\s?[-−]\s?(?=[\d.]{1,8}\s?[/,]?\s?\+)/y

function match(pattern: RegExp, text: string, at: number): number | null {
  pattern.lastIndex = at
  return pattern.test(text) ? pattern.lastIndex : null
}

function readUnsigned(text: string, at: number, options: ReadOptions): NumberToken | null {
  const number = beginsFigures(text, at) ? readNumber(text, at, options.decimal) : null
  return number === null || isCode(number) || number.kind === 'gauge' || number.isMarkWrong ? null : number
}

function unitBehind(text: string, number: NumberToken, options: ReadOptions): UnitToken | null {
  const unit = readUnit(text, number.end, options)
  return unit === null || unit.ambiguous !== null || isUnitRefused(text, number, unit) ? null : unit
}

/** `± 0.5 mm`, `give or take a millimetre`, `to within 1 mm`. */
function readEven(text: string, at: number, options: ReadOptions): ToleranceToken | null {
  const end = match(sign, text, at)
  if (end === null) return null
  const start = skipGap(text, end)
  const number = /^[a-z]/i.test(text[start] ?? '')
    ? readNumber(text, start, options.decimal)
    : readUnsigned(text, start, options)
  if (number === null || isCode(number) || number.isMarkWrong || number.kind === 'gauge') return null
  const joined = number.kind === 'fraction' ? wordAfter(text, number.end) : null
  const article = joined !== null && /^(?:a|an|of)$/.test(joined.word) ? wordAfter(text, joined.end) : null
  const ofEnd = joined?.word === 'of' && article !== null && /^an?$/.test(article.word) ? article.end : joined?.end
  const after = article === null || ofEnd === undefined ? number : { ...number, end: ofEnd }
  const unit = unitBehind(text, after, options)
  if (unit === null && number.written === 'words') return null
  const size = number.value.absolute()
  return { plus: size, minus: size, unit, end: unit?.end ?? number.end }
}

interface Side {
  readonly size: Rational
  readonly unit: UnitToken | null
  readonly end: number
}

function readSide(text: string, at: number, pattern: RegExp, options: ReadOptions): Side | null {
  const start = match(pattern, text, at)
  const number = start === null ? null : readUnsigned(text, start, options)
  if (number === null) return null
  const own = number.stroke?.top ?? number
  const unit = unitBehind(text, own, options)
  return { size: own.value, unit, end: unit?.end ?? own.end }
}

/** `+0.1/-0`, `+0.1/0`, `0/-0.2`, `+0.5 −0.2 mm`, `-0/+1`. */
function readUneven(text: string, at: number, options: ReadOptions): ToleranceToken | null {
  const isDownFirst = match(downFirst, text, at) !== null
  const [first, second] = isDownFirst ? [lower, upper] : [upper, lower]
  const one = readSide(text, at, first, options)
  const two = one === null ? null : readSide(text, one.end, second, options)
  if (one === null || two === null || (one.unit !== null && one.unit.id !== two.unit?.id)) return null
  const [plus, minus] = isDownFirst ? [two.size, one.size] : [one.size, two.size]
  return { plus, minus, unit: two.unit, end: two.end }
}

function fits(tolerance: ToleranceToken | null, own: string | null): ToleranceToken | null {
  const id = tolerance?.unit?.id
  if (tolerance === null || id === undefined || own === null || id === 'percent') return tolerance
  return findUnit(id)?.dimension === findUnit(own)?.dimension ? tolerance : null
}

const firsts = codesOf('±+-−,(0pgtwPGTW')
const signFirsts = codesOf('±+-−')
const bracket = 40
/** The first two letters of the words that lead to a tolerance. */
const openings = new Set(['pl', 'gi', 'to', 'wi'].map(pair => pair.charCodeAt(0) * 128 + pair.charCodeAt(1)))

/** The tolerance of `25 mm (±0.02 mm)`, with its brackets. */
function readBracketed(text: string, at: number, own: string | null, options: ReadOptions): ToleranceToken | null {
  if (!signFirsts.has(text.charCodeAt(at))) return null
  const inside = readTolerance(text, at, own, options)
  return inside === null || text[inside.end] !== ')' ? null : { ...inside, end: inside.end + 1 }
}

/** The tolerance that stands behind a number, or behind its unit if that is given; null where there is none. */
export function readTolerance(
  text: string,
  at: number,
  own: string | null,
  options: ReadOptions,
): ToleranceToken | null {
  const start = isGap(text.charCodeAt(at)) ? at + 1 : at
  const first = text.charCodeAt(start)
  if (!firsts.has(first)) return null
  if (first === bracket) return start === at ? null : readBracketed(text, start + 1, own, options)
  if (isLetter(first) && !openings.has((first | 32) * 128 + (text.charCodeAt(start + 1) | 32))) return null
  return fits(readEven(text, at, options), own) ?? fits(readUneven(text, at, options), own)
}
