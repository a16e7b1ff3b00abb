import { acceptUnit } from './accept-unit.ts'
import type { Amount } from './amount.ts'
import { isGap } from './characters.ts'
import { codesOf } from './codes-of.ts'
import { isForEach } from './for-each.ts'
import { type CodeToken, isCode } from './number-token.ts'
import { readAmount, readPrefixedGauge } from './read-amount.ts'
import { readMoneyAmount } from './read-money-amount.ts'
import { beginsFigures } from './read-number.ts'
import type { TextReading } from './text-reading.ts'

export type Join = 'to' | 'or' | 'and' | 'by' | 'times' | 'comma' | 'dots' | 'dash' | 'slash'

/** Amounts that follow one another, and what stands between each and the next. */
export interface Chain {
  readonly amounts: readonly Amount[]
  readonly joins: readonly Join[]
}

const longestChain = 12
const [space, stop] = [32, 46]
const sizeWord = /\s(?:wide|long|deep|high|tall|thick)(?=\s)/iy
const sizeFirsts = codesOf('wldhtWLDHT')
const shapes: readonly (readonly [string, RegExp, Join])[] = [
  ['tuTUd', /\s(?:(?:up |down )?to|through)\s/iy, 'to'],
  ['-', /-to-|-\sto\s/iy, 'to'],
  ['-', /-\sor\s/iy, 'or'],
  ['-', /-,?\sand\s/iy, 'and'],
  ['-', /-,\s/y, 'comma'],
  ['oO,', /,?\sor\s/iy, 'or'],
  ['aA,&', /,?\sand\s|\s?&\s?/iy, 'and'],
  ['bB', /\sby\s/iy, 'by'],
  ['xX×✕*', /\s?[xX×✕*]\s?/y, 'times'],
  [',', /,\s/y, 'comma'],
  ['.…', /\s?(?:\.\.\.?|…)\s?/y, 'dots'],
  ['-–—', /\s?[–—]\s?|-| - /y, 'dash'],
  ['~', /~(?=\d)| ~ (?=\d)/y, 'dash'], // a range, as East Asian hands write it
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
  for (const first of firsts) {
    const code = first.charCodeAt(0)
    byFirst.set(code, [...(byFirst.get(code) ?? []), [shape, join]])
  }
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

/** Whether the full stop of `12 in. by 8 in` stands at a place. */
const isShortened = (text: string, at: number): boolean =>
  text.charCodeAt(at) === stop && /^\. (?:by|x|×|to|or|and) [\d½¼¾]/.test(text.slice(at, at + 7))

/** Where the *wide* of `40mm wide x 30mm deep` or `400 long x 300 wide mm` ends; the place itself where none stands. */
function behindSize(text: string, end: number): number {
  if (text.charCodeAt(end) !== space || !sizeFirsts.has(text.charCodeAt(end + 1))) return end
  sizeWord.lastIndex = end
  return sizeWord.test(text) ? sizeWord.lastIndex : end
}

function joinBehindSize(text: string, end: number): ReturnType<typeof readJoin> {
  const at = behindSize(text, end)
  const next = at === end ? null : readJoin(text, at)
  return next?.join === 'times' || next?.join === 'by' ? next : null
}

/** `300 wide mm`, behind the sizes of another side. */
function withSizedUnit(reading: TextReading, amount: Amount): Amount {
  const at = amount.unit === null ? behindSize(reading.text, amount.end) : amount.end
  const unit = at === amount.end ? null : acceptUnit(reading, amount.number, at)
  return unit === null ? amount : { ...amount, unit, end: unit.end }
}

/** Follows the amounts from a first one on, as far as they are joined and no further than a sentence needs. */
export function readChain(reading: TextReading, first: Amount): Chain {
  const amounts = [first]
  const joins: Join[] = []
  let end = first.end
  while (amounts.length < longestChain) {
    const next =
      readJoin(reading.text, isShortened(reading.text, end) ? end + 1 : end) ?? joinBehindSize(reading.text, end)
    const read = next === null ? null : readAnyAmount(reading, next.end)
    if (next === null || read === null || isCode(read)) break
    const amount = next.join === 'times' ? withSizedUnit(reading, read) : read
    if (amount.number.kind === 'article' && (next.join !== 'and' || isForEach(reading.text, amount.start, end))) break
    amounts.push(amount)
    joins.push(next.join)
    end = amount.end
  }
  return { amounts, joins }
}
