import { isDigit, isLetter, isWordPart } from './characters.ts'
import { readFigures } from './figures.ts'
import { glyphFraction } from './fraction-part.ts'
import { isCode, type MaybeNumber, type NumberToken } from './number-token.ts'
import { readAndFraction, readNumberWords } from './number-words.ts'
import type { ReadOptions } from './quantity.ts'

const [letterI, letterM, letterO] = [105, 109, 111]

/** Whether figures begin at a place: a digit, `.5` or `½`. */
export function beginsFigures(text: string, at: number): boolean {
  const code = text.charCodeAt(at)
  if (isDigit(code)) return true
  if (code === 46) return isDigit(text.charCodeAt(at + 1))
  return code > 127 && glyphFraction(text, at) !== null
}

function looseEnd(text: string, end: number): number | null {
  const first = text.charCodeAt(end)
  const mayBegin = first === 32 || first === 45 ? (text.charCodeAt(end + 1) | 32) === letterO : (first | 32) === letterI
  if (!mayBegin) return null
  const rest = text.slice(end, end + 4).toLowerCase()
  const length = rest === '-odd' || rest === ' odd' ? 4 : rest.startsWith('ish') ? 3 : 0
  return length > 0 && !isWordPart(text.charCodeAt(end + length)) ? end + length : null
}

function withEnding(text: string, number: NumberToken): NumberToken {
  const added = number.written === 'figures' && number.kind === 'whole' ? readAndFraction(text, number.end) : null
  if (added !== null) return { ...number, ...added, value: number.value.plus(added.value), kind: 'mixed' }
  const loose = number.kind === 'article' ? null : looseEnd(text, number.end)
  return loose === null ? number : { ...number, end: loose, isLoose: true }
}

function negated(number: MaybeNumber, start: number): MaybeNumber {
  return isCode(number) ? number : { ...number, start, value: number.value.negated(), stroke: null }
}

/** `minus 5`, `minus five`. */
function readMinus(text: string, at: number, decimal: ReadOptions['decimal']): MaybeNumber | null {
  const start = at + 6
  const number = beginsFigures(text, start) ? readFigures(text, start, decimal) : readNumberWords(text, start)
  return number === null || (!isCode(number) && number.kind === 'article') ? null : negated(number, at)
}

/** Reads a number in figures or words that begins at a place, with its sign; null where none begins there. */
export function readNumber(text: string, at: number, decimal: ReadOptions['decimal']): MaybeNumber | null {
  const sign = text[at]
  if (sign === '-' || sign === '−' || sign === '+') {
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
  if ((text.charCodeAt(at) | 32) === letterM) {
    if (!/^minus\s/i.test(text.slice(at, at + 6))) return null
    return readMinus(text, at, decimal)
  }
  const number = readNumberWords(text, at)
  return number === null || isWordPart(text.charCodeAt(number.end)) ? null : withEnding(text, number)
}
