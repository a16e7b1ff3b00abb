import { makeThread } from './make-quantity.ts'
import { isCode } from './number-token.ts'
import { readAmount } from './read-amount.ts'
import type { ReadingState } from './reading-state.ts'
import { singleSegment } from './segment.ts'
import { takeSegments } from './take-segments.ts'
import { readInchThread, readMetricThread, readPipeThread, type ThreadToken } from './thread.ts'

const [space, letterG] = [32, 71]
const times = /\s?[xX×*]\s?/y

/** `M6 x 20`: the figure behind a thread is the screw's length in millimetres unless it says otherwise. */
function takeLength(state: ReadingState, end: number): number {
  times.lastIndex = end
  if (!times.test(state.text)) return end
  const amount = readAmount(state, times.lastIndex)
  if (amount === null || isCode(amount)) return end
  const isPlain = amount.number.written === 'figures' && amount.number.kind !== 'gauge'
  if (amount.unit === null && !isPlain) return end
  const unit = amount.unit ?? { id: 'mm', ambiguous: null, start: amount.end, end: amount.end, gap: 'none' as const }
  takeSegments(state, [singleSegment({ ...amount, isUnitImplied: amount.unit === null }, unit)])
  return Math.max(amount.end, state.lastEnd)
}

function takeThread(state: ReadingState, thread: ThreadToken): number {
  state.readings.push({ quantity: makeThread(state.text, thread), start: thread.start, end: thread.end })
  state.lastEnd = thread.end
  return thread.end
}

/** Takes `M8 × 1.25 × 30` that begins at a place; null where no metric thread does. */
export function takeMetricThread(state: ReadingState, start: number): number | null {
  const thread = readMetricThread(state.text, start)
  return thread === null ? null : takeLength(state, takeThread(state, thread))
}

/** Takes `3/8 UNF` or `10-32 UNF` that begins at a place; null where no such thread does. */
export function takeInchThread(state: ReadingState, start: number): number | null {
  const before = state.text.charCodeAt(start - 1)
  if (before === letterG || (before === space && state.text.charCodeAt(start - 2) === letterG)) {
    const piped = readPipeThread(state.text, before === space ? start - 2 : start - 1)
    if (piped !== null && piped.start >= state.lastEnd) return takeThread(state, piped)
  }
  const hasSeries = state.mayHaveSeries && /UN[CFES]|BS[PFW]|NPT|UNS|BA|Whit/.test(state.text.slice(start, start + 24))
  const thread = hasSeries ? readInchThread(state.text, start) : null
  return thread === null ? null : takeThread(state, thread)
}
