import { isForEach } from './for-each.ts'
import { findMissingUnit } from './missing-unit.ts'
import { isCode } from './number-token.ts'
import { readAnyAmount, readChain } from './read-chain.ts'
import type { ReadingState } from './reading-state.ts'
import { resolveChain } from './resolve-chain.ts'
import { takeSegments } from './take-segments.ts'

/** Takes the amounts that begin at a place, as far as they belong together; gives the place to go on from. */
export function takeChain(state: ReadingState, start: number): number {
  const amount = readAnyAmount(state, start)
  if (amount === null) return start + 1
  if (isCode(amount)) return Math.max(amount.end, start + 1)
  if (amount.number.kind === 'article' && isForEach(state.text, amount.start, state.lastEnd)) return amount.end
  const chain = readChain(state, amount)
  takeSegments(state, resolveChain(state.text, chain))
  findMissingUnit(state, chain)
  // The last one is looked at again where no unit was found for it: `10, 12 and 3/8 UNF` ends in a thread.
  const last = chain.amounts.length > 1 ? (chain.amounts.at(-1)?.number.start ?? 0) : amount.end
  return Math.max(last, state.lastEnd, start + 1)
}
