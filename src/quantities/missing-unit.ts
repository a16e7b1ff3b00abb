import { missingUnitDoubt } from './doubts.ts'
import type { Chain } from './read-chain.ts'
import type { ReadingState } from './reading-state.ts'
import { clauseBefore, wordAfter } from './words-around.ts'

const eighths = /(?:eighth|sixteenth|thirty-second|sixty-fourth)s?$/i
const measuring =
  /^(?:is|was|are|were|be|measure|measures|measured|reads|read|cut|at|to|by|made|comes|came|gap|length|width|depth|height|hole|bore|drill|drilled)$/
const sized = /^(?:deep|long|wide|high|thick|tall|across|apart|clear|short|over|under|out|proud)$/

/** Says so where a size in eighths or sixteenths is told without its unit. */
export function findMissingUnit(state: ReadingState, { amounts }: Chain): void {
  const last = amounts.at(-1)
  if (last === undefined || last.unit !== null || last.number.written !== 'words' || last.number.kind === 'article')
    return
  if (last.number.kind !== 'fraction' && last.number.kind !== 'mixed') return
  const span = { start: last.start, end: last.end }
  if (!eighths.test(state.text.slice(span.start, span.end))) return
  const next = wordAfter(state.text, span.end)
  if (/^(?:of|full|turn|turns|done|finished)$/.test(next.word)) return
  const isTold = sized.test(next.word) || clauseBefore(state.text, span.start, 3).some(word => measuring.test(word))
  if (isTold) state.doubts.push(missingUnitDoubt(state.text, span))
}
