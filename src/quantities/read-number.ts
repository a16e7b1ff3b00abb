import { nextStart } from './cardinal.ts'
import { isDigit, isLetter, isWordPart } from './characters.ts'
import { readFigures } from './figures.ts'
import { glyphFraction } from './fraction-part.ts'
import { isCode, type MaybeNumber, type NumberToken } from './number-token.ts'
import { mayDivide } from './number-vocabulary.ts'
import { readAndFraction, readBottomWord, readNumberWords } from './number-words.ts'
import type { ReadOptions } from './quantity.ts'

const [letterA, letterI, letterM, letterN, letterO] = [97, 105, 109, 110, 111]
const signWord = /(?:minus|negative)\s/iy

/** Whether figures begin at a place: a digit, `.5` or `½`. */
export function beginsFigures(text: string, at: number): boolean {
  const code = text.charCodeAt(at)
  if (isDigit(code)) return true
  if (code === 46) return isDigit(text.charCodeAt(at + 1))
  return code > 127 && glyphFraction(text, at) !== null
}

function looseEnd(text: string, end: number): number | null {
  const first = text.charCodeAt(end)
  const isApart = first === 32 || first === 45
  const letter = text.charCodeAt(isApart ? end + 1 : end) | 32
  const mayBegin = letter === letterI ? first !== 32 : isApart && letter === letterO
  if (!mayBegin) return null
  const rest = text.slice(end, end + 4).toLowerCase()
  const length = rest === '-odd' || rest === ' odd' || rest === '-ish' ? 4 : rest.startsWith('ish') ? 3 : 0
  return length > 0 && !isWordPart(text.charCodeAt(end + length)) ? end + length : null
}

/** `6 and a half`, `3 thousandths`: words that make a fraction of whole figures. */
function readFractionWord(text: string, number: NumberToken): NumberToken | null {
  const first = text.charCodeAt(nextStart(text, number.end)) | 32
  if (first !== letterA) return mayDivide(first) ? readBottomWord(text, number) : null
  const added = readAndFraction(text, number.end)
  return added === null ? null : { ...number, ...added, value: number.value.plus(added.value), kind: 'mixed' }
}

function withEnding(text: string, number: NumberToken): NumberToken {
  const added = number.written === 'figures' && number.kind === 'whole' ? readFractionWord(text, number) : null
  if (added !== null) return added
  const loose = number.kind === 'article' ? null : looseEnd(text, number.end)
  return loose === null ? number : { ...number, end: loose, isLoose: true }
}

function negated(number: MaybeNumber, start: number): MaybeNumber {
  return isCode(number) ? number : { ...number, start, value: number.value.negated(), stroke: null }
}

/** `minus 5`, *negative five*. */
function readMinus(text: string, at: number, decimal: ReadOptions['decimal']): MaybeNumber | null {
  signWord.lastIndex = at
  if (!signWord.test(text)) return null
  const start = signWord.lastIndex
  const number = beginsFigures(text, start) ? readFigures(text, start, decimal) : readNumberWords(text, start)
  return number === null || (!isCode(number) && number.kind === 'article') ? null : negated(number, at)
}

/** Reads a number in figures or words that begins at a place, with its sign; null where none begins there. */
export function readNumber(text: string, at: number, decimal: ReadOptions['decimal']): MaybeNumber | null {
  const sign = text[at]
  if (sign === '-' || sign === '−' || sign === '–' || sign === '+') {
    if (!beginsFigures(text, at + 1)) return null
    const number = readNumber(text, at + 1, decimal)
    if (number === null || isCode(number) || sign !== '+') return number === null ? null : negated(number, at)
    return { ...number, start: at }
  }
  if (beginsFigures(text, at)) {
    const number = readFigures(text, at, decimal)
    return isCode(number) ? number : withEnding(text, number)
  }
  if (!isLetter(text.charCodeAt(at))) return null
  const first = text.charCodeAt(at) | 32
  const negative = first === letterM || first === letterN ? readMinus(text, at, decimal) : null
  if (negative !== null || first === letterM) return negative
  const number = readNumberWords(text, at)
  return number === null || isWordPart(text.charCodeAt(number.end)) ? null : withEnding(text, number)
}
