import { isDigit, isGap } from './characters.ts'
import type { CodeToken, MaybeNumber, NumberToken } from './number-token.ts'
import { Rational } from './rational.ts'

const glyphs: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2], '⅓': [1, 3], '⅔': [2, 3], '¼': [1, 4], '¾': [3, 4], '⅕': [1, 5], '⅖': [2, 5], '⅗': [3, 5], '⅘': [4, 5],
  '⅙': [1, 6], '⅚': [5, 6], '⅐': [1, 7], '⅛': [1, 8], '⅜': [3, 8], '⅝': [5, 8], '⅞': [7, 8], '⅑': [1, 9], '⅒': [1, 10],
} // biome-ignore format: a table reads better in rows

const longestPart = 3
const letterA = 97
const usualBottoms = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16, 32, 64, 128])

interface Part {
  readonly value: Rational
  readonly half: Rational
}

function part(top: number, bottom: number): Part {
  return { value: Rational.of(top, bottom), half: Rational.of(1, 2 * bottom) }
}

/** The value of a fraction sign such as `⅝`; null for any other character. */
export function glyphFraction(text: string, at: number): (Part & { end: number }) | null {
  if (!(text.charCodeAt(at) > 127)) return null
  const glyph = glyphs[text[at] ?? '']
  return glyph === undefined ? null : { ...part(...glyph), end: at + 1 }
}

const isStroke = (code: number): boolean => code === 47 || code === 0x2044

function digitsEnd(text: string, start: number): number {
  let end = start
  while (end < start + longestPart && isDigit(text.charCodeAt(end))) end += 1
  return end
}

/** A fraction below one, `3/8` or `⅜`, that may stand behind a whole number. */
export function properFraction(text: string, at: number): (Part & { end: number }) | null {
  const glyph = glyphFraction(text, at)
  if (glyph !== null) return glyph
  const stroke = digitsEnd(text, at)
  if (stroke === at || !isStroke(text.charCodeAt(stroke))) return null
  const end = digitsEnd(text, stroke + 1)
  if (end === stroke + 1 || isDigit(text.charCodeAt(end)) || isStroke(text.charCodeAt(end))) return null
  const [top, bottom] = [Number(text.slice(at, stroke)), Number(text.slice(stroke + 1, end))]
  if (top === 0 || top >= bottom || !usualBottoms.has(bottom)) return null
  const { value, half } = part(top, bottom)
  return { value, half, end }
}

function partStart(text: string, end: number): number | null {
  const code = text.charCodeAt(end)
  if (code === 45 || (isGap(code) && code !== 10)) {
    const next = text.charCodeAt(end + 1)
    if (next === letterA) return text.startsWith(' and ', end) ? end + 5 : null
    return isDigit(next) || next > 127 ? end + 1 : null
  }
  return glyphFraction(text, end) === null ? null : end
}

const code = (end: number): CodeToken => ({ code: true, end })

function withStroke(text: string, number: NumberToken): MaybeNumber {
  const start = number.end + 1
  let end = start
  while (end < start + 12 && isDigit(text.charCodeAt(end))) end += 1
  const digits = text.slice(start, end)
  if (/[/⁄]/.test(text[end] ?? '') && isDigit(text.charCodeAt(end + 1))) return code(end)
  const bottom: NumberToken = { ...number, start, end, value: Rational.of(BigInt(digits)), stroke: null }
  if (/^0+$/.test(digits)) {
    const isGauge = digits === '0' && /^[1-9]$/.test(text.slice(number.start, number.end))
    return isGauge ? { ...number, end, kind: 'gauge' } : code(end)
  }
  const value = number.value.over(bottom.value)
  return {
    ...number,
    end,
    value,
    half: Rational.of(1n, 2n * BigInt(digits)),
    kind: 'fraction',
    stroke: { top: number, bottom },
  }
}

/** Adds to a whole number what makes it `7 3/8`, `7-3/8`, `7⅜`, `3/8` or `2/0`. */
export function readFractionPart(text: string, number: NumberToken): MaybeNumber {
  const next = text[number.end]
  if ((next === '/' || next === '⁄') && isDigit(text.charCodeAt(number.end + 1))) return withStroke(text, number)
  if (number.end - number.start > 4) return number
  const start = partStart(text, number.end)
  const fraction = start === null ? null : properFraction(text, start)
  if (fraction === null) return number
  return { ...number, end: fraction.end, value: number.value.plus(fraction.value), half: fraction.half, kind: 'mixed' }
}
