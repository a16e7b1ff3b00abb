import { isWideDigit, nextAnchor } from './anchor.ts'
import { isGap, isLetter, isWordPart } from './characters.ts'
import type { Reading, ReadingDoubt, ReadOptions } from './quantity.ts'
import { beginsFigures } from './read-number.ts'
import { type ReadingState, startReading } from './reading-state.ts'
import { takeChain } from './take-chain.ts'
import { takeFigures } from './take-figures.ts'
import { takeWord } from './take-word.ts'
import { asWritten, narrowed } from './wide-figures.ts'

/** The end of the address of a page, whose figures are no quantities. */
function addressEnd(text: string, start: number): number {
  let end = start
  while (end < text.length && !isGap(text.charCodeAt(end)) && text[end] !== '>') end += 1
  return end
}

function takeNext(state: ReadingState, at: number): number {
  const { text } = state
  if (beginsFigures(text, at)) return takeFigures(state, at)
  if (text[at] === ':' || text.startsWith('www.', at)) return addressEnd(text, at)
  if (isLetter(text.charCodeAt(at))) return takeWord(state, at)
  const isOwn = text[at] === '$' || !isWordPart(text.charCodeAt(at - 1))
  return isOwn ? takeChain(state, at) : at + 1
}

/** Every quantity that a plain text writes, in order, and what in it could be read as more than one thing. */
export function readQuantities(text: string, options: ReadOptions): { readings: Reading[]; doubts: ReadingDoubt[] } {
  const state = startReading(text, options)
  for (let at = nextAnchor(text, 0); at < text.length; at = nextAnchor(text, takeNext(state, at))) {
    if (isWideDigit(text.charCodeAt(at))) return asWritten(text, readQuantities(narrowed(text), options))
  }
  return { readings: state.readings, doubts: state.doubts }
}
