import { isWordPart } from './characters.ts'
import { negativeStart } from './negative-word.ts'
import type { ReadingState } from './reading-state.ts'
import { takeChain } from './take-chain.ts'

const hyphen = 45
const letterM = 109
const apostrophe = 39
const curlyApostrophe = 0x2019

function isJoined(text: string, start: number): boolean {
  const before = text.charCodeAt(start - 1)
  if (isWordPart(before)) return true
  const isMark = before === hyphen || before === apostrophe || before === curlyApostrophe
  return isMark && isWordPart(text.charCodeAt(start - 2))
}

const minus = 'minus'.length

/** The *minus* of *plus or minus 0.5 mm* is no sign. */
function isPlusOrMinus(text: string, start: number): boolean {
  if ((text.charCodeAt(start) | 32) !== letterM) return false
  return /plus[ -]or[ -]$/i.test(text.slice(Math.max(0, start - 8), start))
}

/** Takes a number spelled out, `AWG 12` or `GBP 85` that begins at a place; gives the place to go on from. */
export function takeWord(state: ReadingState, start: number): number {
  if (isPlusOrMinus(state.text, start)) return start + minus
  return isJoined(state.text, start)
    ? start + 1
    : Math.max(takeChain(state, negativeStart(state.text, start)), start + 1)
}
