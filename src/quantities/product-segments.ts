import type { Amount } from './amount.ts'
import { isTradeSize } from './labels.ts'
import type { UnitToken } from './read-unit.ts'
import { type Segment, singleSegment } from './segment.ts'
import { splitStroke } from './stroke.ts'
import { findUnit } from './units.ts'
import { wordAfter } from './words-around.ts'

/** An amount with the unit it has or shares; null where it has none. */
export interface Known {
  readonly amount: Amount
  readonly unit: UnitToken | null
}

const isLength = (unit: UnitToken): boolean => findUnit(unit.id)?.dimension === 'length'

const countMark = /^[xX×] \d/

/** `2 x 350 mm lengths` and `4x 20 mm`, where the first figure counts them. */
function isCountOfPieces(text: string, run: readonly Known[]): boolean {
  const [first, last] = [run[0]?.amount, run.at(-1)?.amount]
  if (run.length !== 2 || !first || !last || first.unit !== null || first.number.kind !== 'whole') return false
  return (
    /^(?:lengths|pieces|lots|offcuts|holes)$/.test(wordAfter(text, last.end).word) ||
    countMark.test(text.slice(first.end, first.end + 3))
  )
}

const largestGauge = 14
const screws = /^\s(?:\p{L}+\s)?(?:wood|self-tapping |self tapping )?screws?(?!\p{L})/iu

/** `8 x 1½" screws`: the gauge of a screw and its length in inches. */
function isScrewGauge(text: string, run: readonly Known[]): boolean {
  const [first, last] = [run[0]?.amount, run[1]]
  if (run.length !== 2 || !first || last?.unit?.id !== 'in' || first.number.kind !== 'whole') return false
  return first.value.toNumber() <= largestGauge && screws.test(text.slice(last.amount.end, last.amount.end + 30))
}

/** `860 × 380 × 300 mm`: a group where all are lengths; in `3 x 20 A` the first is a count. */
export function productSegments(text: string, run: readonly Known[]): Segment[] {
  const first = run[0]?.amount
  if (first !== undefined && first.unit === null && (isTradeSize(text, first.number) || isScrewGauge(text, run)))
    return productSegments(text, run.slice(1))
  const known = run.filter((one): one is { amount: Amount; unit: UnitToken } => one.unit !== null)
  const isGroup = known.length > 1 && known.every(({ unit }) => isLength(unit)) && !isCountOfPieces(text, run)
  if (!isGroup)
    return known.filter(({ amount }) => amount.unit !== null).flatMap(({ amount, unit }) => splitStroke(amount, unit))
  const last = known.at(-1)?.amount
  const whole = { start: known[0]?.amount.start ?? 0, end: last?.end ?? 0 }
  return known.map(({ amount, unit }) => ({
    ...singleSegment({ ...amount, tolerance: amount.tolerance ?? last?.tolerance ?? null }, unit),
    whole,
    isGrouped: true,
  }))
}
