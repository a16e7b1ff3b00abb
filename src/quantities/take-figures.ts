import { isLetter, isWordPart } from './characters.ts'
import { skipCode } from './figures.ts'
import { negativeStart } from './negative-word.ts'
import { beginsFigures } from './read-number.ts'
import type { ReadingState } from './reading-state.ts'
import { takeChain } from './take-chain.ts'
import { takeInchThread, takeMetricThread } from './take-threads.ts'

const joining = /[-−–+/\\@:,&=.]/
const gaugeAhead = /^\d{1,2}[ -]?awg/i
const opening = /[\s([:=~≈<>≥≤"'“]/

/** Whether figures may begin at a place: not in the middle of a word, a part number, a path or a time. */
function mayBegin(text: string, at: number): boolean {
  const mark = at > 0 ? text[at - 1] : undefined
  if (mark === undefined || mark === ' ' || mark === '\n' || mark === 'Ø' || mark === 'ø') return true
  if (isWordPart(mark.charCodeAt(0)) || mark === '#' || mark === '⁄') return false
  const further = text.charCodeAt(at - 2)
  if (!joining.test(mark) || !isWordPart(further) || mark === '=' || mark === '&') return true
  return (mark === ':' || mark === '.') && isLetter(further)
}

/** Where the number begins: at its sign, or at the decimal mark of `.5`. */
function numberStart(text: string, at: number): number {
  const mark = text[at - 1]
  const isBare = mark === '.' && !isWordPart(text.charCodeAt(at - 2)) && beginsFigures(text, at - 1)
  if (isBare) return text[at - 2] === '.' ? at : numberStart(text, at - 1)
  if (mark === ' ') return negativeStart(text, at)
  if (mark !== '-' && mark !== '−' && mark !== '–' && mark !== '+') return at
  const before = text[at - 2]
  return before === undefined || opening.test(before) ? at - 1 : at
}

/** `M8`, `AWG12`, `#10-32 UNF`: figures that what stands right before them makes sense of. */
function takeMarked(state: ReadingState, at: number): number | null {
  const { text } = state
  if (text[at - 1] === '#')
    return takeInchThread(state, at - 1) ?? (gaugeAhead.test(text.slice(at, at + 6)) ? takeChain(state, at) : null)
  if (text[at - 1] === 'M') return takeMetricThread(state, at - 1)
  const pipe = text[at - 1] === 'G' ? takeInchThread(state, at) : null
  if (pipe !== null) return pipe
  const isGauge = /^awg$/i.test(text.slice(Math.max(0, at - 3), at)) && !isWordPart(text.charCodeAt(at - 4))
  return isGauge ? takeChain(state, at - 3) : null
}

function takeBegun(state: ReadingState, at: number): number {
  return takeInchThread(state, at) ?? takeChain(state, numberStart(state.text, at))
}

/** Takes what begins with the figures at a place; gives the place to go on from, which always lies behind it. */
export function takeFigures(state: ReadingState, at: number): number {
  const mark = state.text[at - 1]
  // `3 A@12 V`, `600mm,700mm`
  const isNext = state.lastEnd === at - 1 && (mark === '@' || mark === ',')
  const isBegun = isNext || mayBegin(state.text, at)
  const end = isBegun ? takeBegun(state, at) : (takeMarked(state, at) ?? skipCode(state.text, at).end)
  return Math.max(end, at + 1)
}
