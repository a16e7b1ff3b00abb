import { isLabelled } from './labels.ts'
import type { NumberToken } from './number-token.ts'
import { type Known, productSegments } from './product-segments.ts'
import { rangeSegment } from './range-segment.ts'
import { Rational } from './rational.ts'
import type { Chain, Join } from './read-chain.ts'
import { type Segment, singleSegment } from './segment.ts'
import { shareUnits } from './share-units.ts'
import { splitStroke } from './stroke.ts'

interface Walk {
  readonly text: string
  readonly chain: Chain
  readonly known: readonly Known[]
}

const ten = Rational.of(10)
const isProduct = (join: Join | undefined): boolean => join === 'times' || join === 'by'

/** Whether *or* ends a list that shares its unit, as in `10, 12 or 14 mm`. */
function isListEnd({ joins, amounts }: Chain, at: number): boolean {
  return joins[at - 1] === 'comma' && amounts[at - 1]?.unit === null
}

function rangeAt({ text, chain, known }: Walk, at: number): Segment | null {
  const [left, right, join] = [known[at], known[at + 1], chain.joins[at]]
  if (!left?.unit || !right?.unit || join === undefined || left.unit.id !== right.unit.id) return null
  if (left.amount.tolerance !== null || right.amount.tolerance !== null) return null
  if (join === 'or' && (isListEnd(chain, at) || isProduct(chain.joins[at + 1]))) return null
  return rangeSegment(text, join, [left.amount, right.amount], right.unit)
}

/** `4501-22 A`: no range falls to less than a tenth. */
function isFallingFar(first: NumberToken, second: NumberToken | undefined): boolean {
  return second !== undefined && !second.value.isZero() && first.value.compare(second.value.times(ten)) > 0
}

/** `3-4-5 mm` and `part 12-345 A` are codes. */
function isDashCode(text: string, { joins, amounts }: Chain): boolean {
  const isBare = (at: number) => amounts[at]?.unit === null
  const first = amounts[0]?.number
  if (joins[0] === 'dash' && isBare(0) && first !== undefined && isLabelled(text, first)) return true
  if (first !== undefined && isBare(0) && joins[0] === 'dash' && isFallingFar(first, amounts[1]?.number)) return true
  return joins.some((join, at) => join === 'dash' && joins[at + 1] === 'dash' && isBare(at) && isBare(at + 1))
}

/** `0.75/1.5 mm²`: two figures about a stroke that share the unit. */
function strokeAt({ chain, known }: Walk, at: number): Segment[] | null {
  const [left, right] = [known[at], known[at + 1]]
  if (chain.joins[at] !== 'slash' || !left?.unit || !right?.unit || left.amount.unit !== null) return null
  const whole = { start: left.amount.start, end: right.amount.end }
  return [singleSegment(left.amount, left.unit), singleSegment(right.amount, right.unit)].map(one => ({
    ...one,
    whole,
  }))
}

/** The segments of the amounts from one on, and how many amounts they took. */
function segmentsAt(walk: Walk, at: number): { segments: Segment[]; taken: number } {
  const { text, chain, known } = walk
  let last = at
  while (isProduct(chain.joins[last])) last += 1
  if (last > at) return { segments: productSegments(text, known.slice(at, last + 1)), taken: last + 1 - at }
  const range = rangeAt(walk, at)
  if (range !== null) return { segments: [range], taken: 2 }
  const stroke = strokeAt(walk, at)
  if (stroke !== null) return { segments: stroke, taken: 2 }
  const one = known[at]
  return { segments: one === undefined ? [] : splitStroke(one.amount, one.unit), taken: 1 }
}

/** Turns a chain of amounts into what becomes quantities: groups, ranges, lists that share a unit, and single ones. */
export function resolveChain(text: string, chain: Chain): Segment[] {
  const only = chain.amounts[0]
  if (only !== undefined && chain.amounts.length === 1) return splitStroke(only, only.unit)
  if (isDashCode(text, chain)) return []
  const units = shareUnits(text, chain)
  const known = chain.amounts.map((amount, at) => ({ amount, unit: units[at] ?? null }))
  const resolved: Segment[] = []
  for (let at = 0; at < known.length; ) {
    const { segments, taken } = segmentsAt({ text, chain, known }, at)
    resolved.push(...segments)
    at += taken
  }
  return resolved
}
