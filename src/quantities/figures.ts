import { isDigit, isGap, isWordPart } from './characters.ts'
import { glyphFraction, readFractionPart } from './fraction-part.ts'
import type { CodeToken, MaybeNumber, NumberToken } from './number-token.ts'
import type { ReadOptions } from './quantity.ts'
import { Rational } from './rational.ts'

const longestRun = 40
const longestExact = 15 // digits that a float holds whatever they are
const tens = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9]
const halves = tens.map(ten => Rational.of(1, 2 * ten))

/** The end of a run of digits, at most one past the longest that is read. */
function digitsEnd(text: string, start: number): number {
  let end = start
  while (end <= start + longestRun && isDigit(text.charCodeAt(end))) end += 1
  return end
}

interface Whole {
  readonly digits: string
  readonly end: number
  readonly isSpaced: boolean
  readonly isGrouped: boolean
}

const isGroupMark = (mark: string, decimal: ReadOptions['decimal']): boolean =>
  mark === (decimal === 'point' ? ',' : '.') ||
  mark === "'" ||
  mark === '’' ||
  (mark !== '\n' && mark !== '\r' && mark !== '\t' && isGap(mark.charCodeAt(0)))

function readWhole(text: string, start: number, decimal: ReadOptions['decimal']): Whole {
  let end = digitsEnd(text, start)
  let digits = text.slice(start, end)
  const mark = text[end] ?? ''
  const mayGroup = digits.length > 0 && digits.length < 4 && digits[0] !== '0' && isGroupMark(mark, decimal)
  while (mayGroup && digits.length < longestRun && text[end] === mark && digitsEnd(text, end + 1) === end + 4) {
    digits += text.slice(end + 1, end + 4)
    end += 4
  }
  const isGrouped = mayGroup && end > start + 4
  return { digits, end, isGrouped, isSpaced: isGrouped && mark === ' ' }
}

/** Skips a run of letters, digits and what joins them, such as `6204-2RS` or `2026-03-07`. */
export function skipCode(text: string, start: number): CodeToken {
  let end = start
  for (;;) {
    const code = text.charCodeAt(end)
    const joins = code === 45 || code === 46 || code === 47 || code === 58 || code === 44 || code === 0x2212
    if (!isWordPart(code) && !(joins && isWordPart(text.charCodeAt(end + 1)))) break
    end += 1
  }
  return { code: true, end: Math.max(end, start + 1) }
}

/** The number that digits behind those of another make. */
function wholeNumber(digits: string, before: number): number {
  let value = before
  for (let at = 0; at < digits.length; at += 1) value = value * 10 + digits.charCodeAt(at) - 48
  return value
}

function exactValue(digits: string, decimals: string): Rational {
  const bottom = tens[decimals.length]
  if (digits.length + decimals.length <= longestExact && bottom !== undefined)
    return Rational.of(wholeNumber(decimals, wholeNumber(digits, 0)), bottom)
  return Rational.of(BigInt(`0${digits}${decimals}`), 10n ** BigInt(decimals.length))
}

function plain(start: number, whole: Whole, decimals: string, end: number): NumberToken {
  return {
    start,
    end,
    value: exactValue(whole.digits, decimals),
    half: halves[decimals.length] ?? Rational.of(1n, 2n * 10n ** BigInt(decimals.length)),
    written: 'figures',
    kind: decimals === '' ? 'whole' : 'decimal',
    stroke: null,
    isMarkWrong: false,
    isSpaced: whole.isSpaced,
    isLoose: false,
  }
}

function isBroken(text: string, end: number): boolean {
  const code = text.charCodeAt(end)
  const after = text.charCodeAt(end + 1)
  if (isDigit(code)) return true
  if ((code === 46 || code === 44 || code === 58) && isDigit(after)) return true
  return (
    (code === 101 || code === 69) &&
    (isDigit(after) || (/[-+−]/.test(text[end + 1] ?? '') && isDigit(text.charCodeAt(end + 2))))
  )
}

const noughts = /^0{2,4}$/

/** `000 AWG`, `AWG 00`: a gauge above nought. */
function isNoughts(text: string, start: number, end: number): boolean {
  if (!noughts.test(text.slice(start, end))) return false
  return /^[ -]?awg/i.test(text.slice(end, end + 4)) || /awg ?$/i.test(text.slice(Math.max(0, start - 4), start))
}

const isHexadecimal = (text: string, start: number): boolean =>
  text.charCodeAt(start) === 48 && (text.charCodeAt(start + 1) | 32) === 120 && isWordPart(text.charCodeAt(start + 2))

function skipGlyphs(text: string, start: number): CodeToken {
  let end = start
  while (glyphFraction(text, end) !== null) end += 1
  return { code: true, end }
}

/** Reads the number in figures, with its fraction, that begins at a digit, a decimal mark or a fraction sign. */
export function readFigures(text: string, start: number, decimal: ReadOptions['decimal']): MaybeNumber {
  const glyph = glyphFraction(text, start)
  if (glyph !== null && glyphFraction(text, glyph.end) !== null) return skipGlyphs(text, start)
  if (glyph !== null)
    return {
      ...plain(start, { digits: '', end: start, isSpaced: false, isGrouped: false }, '', start + 1),
      ...glyph,
      kind: 'fraction',
    }
  if (isHexadecimal(text, start)) return skipCode(text, start)
  const whole = readWhole(text, start, decimal)
  if (whole.end - start > longestRun) return skipCode(text, start)
  const mark = text[whole.end]
  const hasDecimals = (mark === '.' || mark === ',') && isDigit(text.charCodeAt(whole.end + 1))
  const end = hasDecimals ? digitsEnd(text, whole.end + 1) : whole.end
  const isPadded = !hasDecimals && whole.digits.length > 1 && whole.digits[0] === '0'
  if (isPadded && isNoughts(text, start, end)) return { ...plain(start, whole, '', end), kind: 'gauge' }
  if (end - whole.end > longestRun || isPadded || isBroken(text, end)) return skipCode(text, start)
  const number = plain(start, whole, text.slice(whole.end + 1, end), end)
  if (!hasDecimals) return whole.isGrouped ? number : readFractionPart(text, number)
  return mark === (decimal === 'point' ? '.' : ',') ? number : { ...number, isMarkWrong: true }
}
