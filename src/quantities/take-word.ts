import { isWordPart } from './characters.ts'
import type { ReadingState } from './reading-state.ts'
import { takeChain } from './take-chain.ts'

const hyphen = 45
const apostrophe = 39
const curlyApostrophe = 0x2019

function isJoined(text: string, start: number): boolean {
  const before = text.charCodeAt(start - 1)
  if (isWordPart(before)) return true
  const isMark = before === hyphen || before === apostrophe || before === curlyApostrophe
  return isMark && isWordPart(text.charCodeAt(start - 2))
}

/** Takes a number spelled out, `AWG 12` or `GBP 85` that begins at a place; gives the place to go on from. */
export function takeWord(state: ReadingState, start: number): number {
  return isJoined(state.text, start) ? start + 1 : Math.max(takeChain(state, start), start + 1)
}
