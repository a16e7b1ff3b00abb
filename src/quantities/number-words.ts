import { type Cardinal, nextStart, readCardinal, wordAt } from './cardinal.ts'
import { properFraction } from './fraction-part.ts'
import type { NumberToken } from './number-token.ts'
import { numberWordAt } from './number-vocabulary.ts'
import { Rational } from './rational.ts'

const [letterA, letterP] = [97, 112]
interface Part {
  readonly value: Rational
  readonly half: Rational
  readonly end: number
}

const half = Rational.of(1, 2)
/** `thirty-seconds`, `sixty fourth`: the bottoms of two words, by the value of the first. */
const doubled: ReadonlyMap<number, readonly [RegExp, number]> = new Map([
  [30, [/thirty.seconds?(?![a-z])/iy, 32]],
  [60, [/sixty.fourths?(?![a-z])/iy, 64]],
])

function bottomAt(text: string, start: number): { bottom: number; end: number } | null {
  const { bottom, small, length } = numberWordAt(text, start)
  if (bottom > 0) return { bottom, end: start + length }
  const two = small < 30 ? undefined : doubled.get(small)
  if (two === undefined) return null
  two[0].lastIndex = start
  return two[0].test(text) ? { bottom: two[1], end: two[0].lastIndex } : null
}

function readPoint(text: string, whole: number, end: number): Part | null {
  const point = nextStart(text, end)
  if ((text.charCodeAt(point) | 32) !== letterP || wordAt(text, point) !== 'point') return null
  let [digits, at] = ['', point + 5]
  while (digits.length < 12) {
    const next = nextStart(text, at)
    const { small, length } = numberWordAt(text, next)
    if (small < 0 || small > 9) break
    digits += `${small}`
    at = next + length
  }
  if (digits === '') return null
  const bottom = 10n ** BigInt(digits.length)
  return {
    value: Rational.of(BigInt(whole) * bottom + BigInt(digits), bottom),
    half: Rational.of(1n, 2n * bottom),
    end: at,
  }
}

function fraction(top: number, bottom: number, end: number): Part {
  return { value: Rational.of(top, bottom), half: Rational.of(1, 2 * bottom), end }
}

const ofOne = /^ of an? (?:in|mm|mil|lit)/ // *another eighth of an inch*

/** `a half`, `three quarters`, `one eighth`, `half` at a place. */
function readFractionWords(text: string, start: number): Part | null {
  const word = wordAt(text, start)
  const isBare =
    word === 'half' || word === 'quarter' || ofOne.test(text.slice(start + word.length, start + word.length + 12))
  const bare = isBare ? bottomAt(text, start) : null
  if (bare !== null) return fraction(1, bare.bottom, bare.end)
  const isArticle = word === 'a' || word === 'an'
  return withBottom(text, isArticle ? { value: 1, end: start + word.length } : readCardinal(text, start))
}

function withBottom(text: string, top: Cardinal | null): Part | null {
  if (top === null || top.value === 0) return null
  const at = nextStart(text, top.end)
  const below = at === top.end ? null : bottomAt(text, at)
  return below === null ? null : fraction(top.value, below.bottom, below.end)
}

/** What makes a fraction of the whole figures before it: the *thousandths* of *3 thousandths of an inch*. */
export function readBottomWord(text: string, top: NumberToken): NumberToken | null {
  if (top.value.isZero()) return null
  const at = nextStart(text, top.end)
  const below = at === top.end ? null : bottomAt(text, at)
  if (below === null || text[below.end - 1] !== 's') return null
  const bottom = Rational.of(below.bottom)
  return { ...top, value: top.value.over(bottom), half: half.over(bottom), end: below.end, kind: 'fraction' }
}

/** What ` and a half` or ` and three eighths` adds to the number or unit before it; null where nothing of the kind follows. */
export function readAndFraction(text: string, end: number): Part | null {
  const at = nextStart(text, end)
  if (at === end || (text.charCodeAt(at) | 32) !== letterA || wordAt(text, at) !== 'and') return null
  const start = nextStart(text, at + 3)
  const part = readFractionWords(text, start) ?? properFraction(text, start)
  return part !== null && part.value.compare(Rational.one) < 0 ? part : null
}

function token(start: number, { value, half, end }: Part, kind: NumberToken['kind']): NumberToken {
  return {
    start,
    end,
    value,
    half,
    written: 'words',
    kind,
    stroke: null,
    isMarkWrong: false,
    isSpaced: false,
    isLoose: false,
  }
}

/** Reads the number that is spelled out from a place on; *a* and *an* alone count as one, of kind `article`. */
export function readNumberWords(text: string, start: number): NumberToken | null {
  const whole = readCardinal(text, start)
  const fractionPart = whole === null ? readFractionWords(text, start) : withBottom(text, whole)
  if (fractionPart !== null) return token(start, fractionPart, 'fraction')
  if (whole !== null) return readWhole(text, start, whole)
  const word = wordAt(text, start)
  if (word === 'point') {
    const decimals = readPoint(text, 0, start)
    return decimals === null ? null : token(start, decimals, 'decimal')
  }
  if (word === 'a' || word === 'an') {
    const { power } = numberWordAt(text, start + word.length + 1)
    const cardinal = power === 0 ? null : readCardinal(`one ${text.slice(start + word.length + 1, start + 80)}`, 0)
    if (cardinal === null) return token(start, { value: Rational.one, half, end: start + word.length }, 'article')
    return token(
      start,
      { value: Rational.of(cardinal.value), half, end: start + word.length - 3 + cardinal.end },
      'whole',
    )
  }
  return null
}

function readWhole(text: string, start: number, whole: Cardinal): NumberToken {
  const decimals = readPoint(text, whole.value, whole.end)
  if (decimals !== null) return token(start, decimals, 'decimal')
  const added = readAndFraction(text, whole.end)
  if (added === null) return token(start, { value: Rational.of(whole.value), half, end: whole.end }, 'whole')
  return token(start, { ...added, value: Rational.of(whole.value).plus(added.value) }, 'mixed')
}
