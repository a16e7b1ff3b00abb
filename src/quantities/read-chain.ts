import type { Amount } from './amount.ts'
import { isGap } from './characters.ts'
import { codesOf } from './codes-of.ts'
import { isForEach } from './for-each.ts'
import { type CodeToken, isCode } from './number-token.ts'
import { readAmount, readPrefixedGauge, type TextReading } from './read-amount.ts'
import { readMoneyAmount } from './read-money-amount.ts'
import { beginsFigures } from './read-number.ts'

export type Join = 'to' | 'or' | 'and' | 'by' | 'times' | 'comma' | 'dots' | 'dash' | 'slash'

/** Amounts that follow one another, and what stands between each and the next. */
export interface Chain {
  readonly amounts: readonly Amount[]
  readonly joins: readonly Join[]
}

const longestChain = 12
const stop = 46
const shapes: readonly (readonly [string, RegExp, Join])[] = [
  ['tuTUd', /\s(?:(?:up |down )?to|through)\s/iy, 'to'],
  ['oO,', /,?\sor\s/iy, 'or'],
  ['aA,&', /,?\sand\s|\s?&\s?/iy, 'and'],
  ['bB', /\sby\s/iy, 'by'],
  ['xX×✕*', /\s?[xX×✕*]\s?/y, 'times'],
  [',', /,\s/y, 'comma'],
  ['.…', /\s?(?:\.\.\.?|…)\s?/y, 'dots'],
  ['-–—', /\s?[–—]\s?|-| - /y, 'dash'],
  ['/', / ?\/ ?/y, 'slash'],
]

/** The first two letters of the words that join. */
const wordJoins = new Set(
  ['to', 'th', 'up', 'do', 'or', 'an', 'by'].map(pair => pair.charCodeAt(0) * 128 + pair.charCodeAt(1)),
)
const isWord = (code: number): boolean => (code | 32) >= 97 && (code | 32) <= 122 && (code | 32) !== 120

/** The joins that may begin with a character, by its code. */
const byFirst = new Map<number, (readonly [RegExp, Join])[]>()
for (const [firsts, shape, join] of shapes) {
  for (const code of codesOf(firsts)) byFirst.set(code, [...(byFirst.get(code) ?? []), [shape, join]])
}

function mayJoin(code: number, next: number): boolean {
  if (code === stop) return next === stop
  return !isWord(code) || wordJoins.has((code | 32) * 128 + (next | 32))
}

function readJoin(text: string, at: number): { join: Join; end: number } | null {
  const start = isGap(text.charCodeAt(at)) ? at + 1 : at
  const code = text.charCodeAt(start)
  const found = mayJoin(code, text.charCodeAt(start + 1)) ? byFirst.get(code) : undefined
  if (found === undefined) return null
  for (const [shape, join] of found) {
    shape.lastIndex = at
    if (shape.test(text)) return { join, end: shape.lastIndex }
  }
  return null
}

/** The amount that begins at a place, money and `AWG 12` among them; figures that are a code come back as such. */
export function readAnyAmount(reading: TextReading, at: number): Amount | CodeToken | null {
  const isPlain = beginsFigures(reading.text, at)
  const before = isPlain ? null : (readMoneyAmount(reading, at) ?? readPrefixedGauge(reading, at))
  return before ?? readAmount(reading, at)
}

/** Follows the amounts from a first one on, as far as they are joined and no further than a sentence needs. */
export function readChain(reading: TextReading, first: Amount): Chain {
  const amounts = [first]
  const joins: Join[] = []
  let end = first.end
  while (amounts.length < longestChain) {
    const next = readJoin(reading.text, end)
    const amount = next === null ? null : readAnyAmount(reading, next.end)
    if (next === null || amount === null || isCode(amount)) break
    if (amount.number.kind === 'article' && (next.join !== 'and' || isForEach(reading.text, amount.start, end))) break
    amounts.push(amount)
    joins.push(next.join)
    end = amount.end
  }
  return { amounts, joins }
}
