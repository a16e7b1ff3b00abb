import { isWordPart } from './characters.ts'
import { wordBefore } from './words-around.ts'

const word = 'negative '
const [space, letterE] = [32, 101]
const told =
  /^(?:|is|was|are|were|be|reads?|reading|showed|shows|at|to|of|about|by|from|down|and|or|between|measured|measures|goes|went|sits?|with)$/

/** Where the *negative* of *reads negative 5 V* begins; not that of *the negative 12 V post*. The place itself where there is none. */
export function negativeStart(text: string, at: number): number {
  if (text.charCodeAt(at - 1) !== space || (text.charCodeAt(at - 2) | 32) !== letterE) return at
  const start = at - word.length
  if (text.slice(start, at).toLowerCase() !== word || isWordPart(text.charCodeAt(start - 1))) return at
  return told.test(wordBefore(text, start, 0).word) ? start : at
}
