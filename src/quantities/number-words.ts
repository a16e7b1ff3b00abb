import { isGap } from './characters.ts'
import type { NumberToken } from './number-token.ts'
import { Rational } from './rational.ts'

const ones =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  )
const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ')
const small = new Map<string, number>([
  ...ones.map((word, value): [string, number] => [word, value]),
  ...tens.map((word, at): [string, number] => [word, 20 + 10 * at]),
  ['nought', 0],
  ['fourty', 40],
])
const powers = new Map([
  ['hundred', 100n],
  ['thousand', 1000n],
  ['million', 1000000n],
])
const bottoms = new Map<string, number>([
  ['half', 2], ['halves', 2], ['third', 3], ['quarter', 4], ['fifth', 5], ['sixth', 6], ['eighth', 8], ['tenth', 10], ['twelfth', 12],
  ['sixteenth', 16], ['thirty-second', 32], ['sixty-fourth', 64], ['hundredth', 100], ['thousandth', 1000],
]) // biome-ignore format: a table reads better in rows

interface Part {
  readonly value: Rational
  readonly half: Rational
  readonly end: number
}

const longestWord = 12
const isSmallLetter = (code: number): boolean => (code | 32) >= 97 && (code | 32) <= 122

function wordAt(text: string, start: number): string {
  let end = start
  while (end <= start + longestWord && isSmallLetter(text.charCodeAt(end))) end += 1
  return text.slice(start, end).toLowerCase()
}

function nextStart(text: string, end: number): number {
  return isGap(text.charCodeAt(end)) || text[end] === '-' ? end + 1 : end
}

function bottomAt(text: string, start: number): { bottom: number; end: number } | null {
  const first = wordAt(text, start)
  const second = first === 'thirty' || first === 'sixty' ? wordAt(text, start + first.length + 1) : ''
  const name = second === '' ? first : `${first}-${second}`
  const bottom = bottoms.get(name) ?? bottoms.get(name.replace(/s$/, ''))
  return bottom === undefined ? null : { bottom, end: start + name.length }
}

function mayFollow(last: bigint, value: number): boolean {
  if (last >= 100n) return value > 0
  return last >= 20n && last % 10n === 0n && value > 0 && value < 10
}

/** Twenty-two, one hundred and twenty, two thousand: the words of a whole number. */
function readCardinal(text: string, start: number): { value: bigint; end: number } | null {
  const first = small.get(wordAt(text, start))
  if (first === undefined) return null
  let [total, current, last] = [0n, BigInt(first), BigInt(first)]
  let end = start + wordAt(text, start).length
  for (let steps = 0; steps < 12; steps += 1) {
    let at = nextStart(text, end)
    if (last >= 100n && wordAt(text, at) === 'and') at = nextStart(text, at + 3)
    const word = at === end ? '' : wordAt(text, at)
    const [value, power] = [small.get(word), powers.get(word)]
    if (value !== undefined && mayFollow(last, value)) [current, last] = [current + BigInt(value), BigInt(value)]
    else if (power !== undefined && current > 0n && current < power) {
      current *= power
      if (power > 100n) [total, current] = [total + current, 0n]
      last = power
    } else break
    end = at + word.length
  }
  return { value: total + current, end }
}

function readPoint(text: string, whole: bigint, end: number): Part | null {
  if (wordAt(text, nextStart(text, end)) !== 'point') return null
  let [digits, at] = ['', nextStart(text, end) + 5]
  for (let word = wordAt(text, nextStart(text, at)); digits.length < 12; word = wordAt(text, nextStart(text, at))) {
    const value = small.get(word)
    if (value === undefined || value > 9) break
    digits += `${value}`
    at = nextStart(text, at) + word.length
  }
  if (digits === '') return null
  const bottom = 10n ** BigInt(digits.length)
  return { value: Rational.of(whole * bottom + BigInt(digits), bottom), half: Rational.of(1n, 2n * bottom), end: at }
}

function fraction(top: bigint, bottom: number, end: number): Part {
  return { value: Rational.of(top, bottom), half: Rational.of(1, 2 * bottom), end }
}

/** `a half`, `three quarters`, `one eighth`, `half` at a place. */
function readFractionWords(text: string, start: number): Part | null {
  const word = wordAt(text, start)
  const bare = word === 'half' || word === 'quarter' ? bottomAt(text, start) : null
  if (bare !== null) return fraction(1n, bare.bottom, bare.end)
  const isArticle = word === 'a' || word === 'an'
  const top = isArticle ? { value: 1n, end: start + word.length } : readCardinal(text, start)
  if (top === null || top.value === 0n) return null
  const at = nextStart(text, top.end)
  const below = at === top.end ? null : bottomAt(text, at)
  return below === null ? null : fraction(top.value, below.bottom, below.end)
}

/** What ` and a half` or ` and three eighths` adds to the number or unit before it; null where nothing of the kind follows. */
export function readAndFraction(text: string, end: number): Part | null {
  const at = nextStart(text, end)
  if (at === end || wordAt(text, at) !== 'and') return null
  const part = readFractionWords(text, nextStart(text, at + 3))
  return part !== null && part.value.compare(Rational.one) < 0 ? part : null
}

function token(start: number, part: Part, kind: NumberToken['kind']): NumberToken {
  return { start, ...part, written: 'words', kind, stroke: null, isMarkWrong: false, isSpaced: false, isLoose: false }
}

/** Reads the number that is spelled out from a place on; *a* and *an* alone count as one, of kind `article`. */
export function readNumberWords(text: string, start: number): NumberToken | null {
  const fractionPart = readFractionWords(text, start)
  if (fractionPart !== null) return token(start, fractionPart, 'fraction')
  const word = wordAt(text, start)
  if (word === 'point') {
    const decimals = readPoint(text, 0n, start)
    return decimals === null ? null : token(start, decimals, 'decimal')
  }
  const half = Rational.of(1, 2)
  if (word === 'a' || word === 'an') {
    const power = powers.get(wordAt(text, start + word.length + 1))
    const cardinal =
      power === undefined ? null : readCardinal(`one ${text.slice(start + word.length + 1, start + 80)}`, 0)
    if (cardinal === null) return token(start, { value: Rational.one, half, end: start + word.length }, 'article')
    return token(
      start,
      { value: Rational.of(cardinal.value), half, end: start + word.length - 3 + cardinal.end },
      'whole',
    )
  }
  const whole = readCardinal(text, start)
  if (whole === null) return null
  const decimals = readPoint(text, whole.value, whole.end)
  if (decimals !== null) return token(start, decimals, 'decimal')
  const added = readAndFraction(text, whole.end)
  if (added === null) return token(start, { value: Rational.of(whole.value), half, end: whole.end }, 'whole')
  return token(start, { ...added, value: Rational.of(whole.value).plus(added.value) }, 'mixed')
}

/** Words in lower case that may begin a number that is spelled out. */
export const numberBeginnings: readonly string[] = ['a', 'an', 'half', 'quarter', 'minus', 'point', ...small.keys()]
