import { markDoubt, twoReadingsDoubt, unitDoubt } from './doubts.ts'
import { makeQuantity } from './make-quantity.ts'
import { type Qualifiers, readQualifiers, type Surroundings } from './qualifiers.ts'
import type { ReadingState } from './reading-state.ts'
import type { Segment } from './segment.ts'
import { findUnit } from './units.ts'
import { wordAfter, wordBefore } from './words-around.ts'

const pieces =
  /^(?:lengths|pieces|bolts|screws|bars|tubes|strips|holes|studs|offcuts|sheets|boards|planks|rods|pipes|hoses|cables|wires|straps|plates|brackets|rails|spacers|washers|nails|panels|discs|legs|slots|tabs|gussets|fuses|lamps|bulbs|relays|resistors|batteries|lines|runs|links|pins|nuts|tanks|sections|bits|chunks|shelves|slats|battens|struts|ropes|chains|belts|drills|clips|clamps|angles|channels|beams)$/
const counting =
  /^(?:cut|cuts|bought|ordered|need|needed|needs|made|make|fitted|fit|drilled|drill|took|take|want|wants|used|use|welded|sawed|sawn|got|get|and|with|added|bolted|made|picked|saved|found|bent)$/

/** `Cut 2 350 mm lengths`, where the first figure may be a count. */
function hasTwoReadings(text: string, segment: Segment): boolean {
  const amount = segment.amounts[0]
  if (segment.kind !== 'single' || amount === undefined || segment.whole !== null) return false
  const isSpacedFraction =
    amount.number.kind === 'mixed' && /^\d{1,2} \d+\/\d/.test(text.slice(amount.start, amount.start + 8))
  if (!amount.number.isSpaced && !isSpacedFraction) return false
  const next = wordAfter(text, segment.end)
  const isCounted = counting.test(wordBefore(text, amount.start, 0).word)
  if (pieces.test(next.word)) return isCounted || !isSpacedFraction
  return (
    isCounted &&
    amount.number.isSpaced &&
    /[a-z]{3,}s$/.test(next.word) &&
    !/(?:ss|us|is)$/.test(next.word) &&
    /^\d{1,2} \d{3} /.test(text.slice(amount.start, amount.start + 7))
  )
}

const isLength = ({ unit }: Segment): boolean => findUnit(unit.id)?.dimension === 'length'

const aroundOf = (segment: Segment, limit: number): Surroundings => ({
  limit,
  isLength: isLength(segment),
  isOpen: segment.amounts[0]?.number.isOpen === true,
})

/** Where the words about a segment may begin: the *up to* of `from 10 A up to 15 A` joins, and bounds nothing. */
function limitOf(state: ReadingState, segments: readonly Segment[], at: number): number {
  return at === 0 ? state.lastEnd : (segments[at]?.start ?? 0)
}

function groupOf(state: ReadingState, segments: readonly Segment[], at: number): number | null {
  const [segment, before] = [segments[at], segments[at - 1]]
  if (segment?.isGrouped !== true) return null
  if (before?.whole?.start !== segment.whole?.start) state.groups += 1
  return state.groups
}

function takeDoubt(state: ReadingState, segment: Segment, previous: Segment | undefined): boolean {
  const { text, options } = state
  if (segment.amounts.some(({ number }) => number.isMarkWrong)) {
    state.doubts.push(markDoubt(text, segment, options.decimal))
    return true
  }
  const key = segment.unit.ambiguous
  if (key === null) return false
  const last = state.doubts.at(-1)
  const isShared = previous?.unit === segment.unit && last !== undefined
  if (isShared) state.doubts.pop()
  const start = isShared ? last.start : segment.start
  state.doubts.push(unitDoubt(text, { start, end: segment.end }, key))
  return true
}

/** The qualifiers of the first and last member of a group hold for all of it. */
function groupQualifiers(all: readonly Qualifiers[], segments: readonly Segment[], at: number): Qualifiers {
  const own = all[at] ?? { start: 0, end: 0, isApproximate: false, bound: null }
  const whole = segments[at]?.isGrouped === true ? segments[at]?.whole : null
  if (!whole) return own
  const mates = all.filter((_, index) => segments[index]?.whole?.start === whole.start)
  return {
    ...own,
    isApproximate: mates.some(mate => mate.isApproximate),
    bound: mates.find(mate => mate.bound !== null)?.bound ?? null,
  }
}

function takeQuantity(state: ReadingState, segment: Segment, qualifiers: Qualifiers, group: number | null): void {
  const { text } = state
  const { start, end } = qualifiers
  state.readings.push({ quantity: makeQuantity(text, segment, qualifiers, group), start, end })
  if (hasTwoReadings(text, segment)) state.doubts.push(twoReadingsDoubt(text, segment))
  state.quotation.pass(start, end)
  state.lastEnd = end
}

function takeAlone(state: ReadingState, segment: Segment): void {
  const qualifiers = readQualifiers(state.text, segment, aroundOf(segment, state.lastEnd))
  if (takeDoubt(state, segment, undefined)) state.lastEnd = segment.end
  else takeQuantity(state, segment, qualifiers, null)
}

/** Takes what a chain of amounts came to: quantities with the words about them, and doubts. */
export function takeSegments(state: ReadingState, segments: readonly Segment[]): void {
  const first = segments[0]
  if (first === undefined) return
  if (segments.length === 1) takeAlone(state, first)
  else takeTogether(state, segments)
}

function takeTogether(state: ReadingState, segments: readonly Segment[]): void {
  const { text } = state
  const around = segments.map((segment, at) =>
    readQualifiers(text, segment, aroundOf(segment, limitOf(state, segments, at))),
  )
  for (const [at, segment] of segments.entries()) {
    const group = groupOf(state, segments, at)
    if (takeDoubt(state, segment, segments[at - 1])) {
      state.lastEnd = segment.end
      continue
    }
    const qualifiers = groupQualifiers(around, segments, at)
    takeQuantity(state, segment, qualifiers, group)
  }
}
