import type { Amount } from './amount.ts'
import { gaugeNumber } from './awg.ts'
import { blankQuantity, type DraftQuantity } from './blank-quantity.ts'
import { intervalToSi, toSi } from './convert.ts'
import type { Qualifiers } from './qualifiers.ts'
import type { Quantity } from './quantity.ts'
import { Rational } from './rational.ts'
import type { Segment } from './segment.ts'
import { isTemperatureDifference } from './temperature-difference.ts'
import type { ThreadToken } from './thread.ts'
import type { Unit } from './unit.ts'
import { unitOf } from './units.ts'

const hundred = Rational.of(100)
const finestRule = Rational.of(1, 32) // in, half of the sixteenths on an inch rule: nobody reads 1/2 in to a quarter of an inch

interface Written {
  readonly source: string
  readonly unit: Unit
  readonly isDifference: boolean
}

/** The size of a written tolerance in the quantity's own unit; a percentage is one of the value. */
function toleranceSize(size: Rational, amount: Amount, unit: Unit): number {
  const id = amount.tolerance?.unit?.id
  if (id === undefined || id === unit.id) return size.toNumber()
  if (id === 'percent') return size.times(amount.value.absolute()).over(hundred).toNumber()
  return size.times(unitOf(id).factor).over(unit.factor).toNumber()
}

function exactValue({ source }: Written, { number, value }: Amount): Rational {
  if (number.kind !== 'gauge') return value
  return Rational.of(gaugeNumber(source.slice(number.start, number.end)) ?? 0)
}

/** Half of what the last digit, or the smallest part, stands for; a gauge is exact by its definition. */
function roundingOf(unit: Unit, { number, half }: Amount): number {
  if (unit.scale === 'gauge') return 0
  const isFraction = number.kind === 'fraction' || number.kind === 'mixed'
  const isCoarse = unit.id === 'in' && isFraction && half.compare(finestRule) > 0
  return (isCoarse ? finestRule : half).toNumber()
}

const siOf = (value: Rational, { unit, isDifference }: Written): number | null =>
  isDifference ? intervalToSi(value, unit) : toSi(value, unit)

function fillRange(draft: DraftQuantity, written: Written, one: Amount, two: Amount): void {
  const values = [exactValue(written, one), exactValue(written, two)] as const
  const [low, high] = values[0].compare(values[1]) <= 0 ? values : [values[1], values[0]]
  const [first, second] = [siOf(low, written), siOf(high, written)]
  const isTurned = first !== null && second !== null && first > second
  draft.low = low.toNumber()
  draft.high = high.toNumber()
  draft.siLow = isTurned ? second : first
  draft.siHigh = isTurned ? first : second
  draft.rounding = Math.max(roundingOf(written.unit, one), roundingOf(written.unit, two))
  draft.exact = { number: null, low: low.toString(), high: high.toString() }
}

function fillSingle(draft: DraftQuantity, written: Written, amount: Amount): void {
  const { number, tolerance } = amount
  const value = exactValue(written, amount)
  const isGauge = number.kind === 'gauge'
  draft.number = isGauge ? null : value.toNumber()
  draft.si = siOf(value, written)
  draft.rounding = roundingOf(written.unit, amount)
  draft.exact = { number: isGauge ? null : value.toString(), low: null, high: null }
  draft.numberText = isGauge || amount.value === number.value ? written.source.slice(number.start, number.end) : null
  if (tolerance === null) return
  draft.plus = toleranceSize(tolerance.plus, amount, written.unit)
  draft.minus = toleranceSize(tolerance.minus, amount, written.unit)
}

function fillBound(draft: DraftQuantity, bound: 'min' | 'max' | null): void {
  if (bound === null) return
  draft.bound = bound
  const { number, si, exact } = draft
  if (bound === 'min') [draft.low, draft.siLow, draft.exact] = [number, si, { ...exact, low: exact.number }]
  else [draft.high, draft.siHigh, draft.exact] = [number, si, { ...exact, high: exact.number }]
}

/** The quantity that a segment and the words about it make; the group is its number in the text. */
export function makeQuantity(source: string, segment: Segment, around: Qualifiers, group: number | null): Quantity {
  const unit = unitOf(segment.unit.id)
  const one = segment.amounts[0]
  const two = segment.amounts[1]
  if (one === undefined) throw new Error('Unexpected segment without a number')
  const isDifference = unit.scale === 'offset' && isTemperatureDifference(source, around)
  const written = { source, unit, isDifference }
  const draft = blankQuantity(source.slice(around.start, around.end), unit)
  if (two === undefined) fillSingle(draft, written, one)
  else fillRange(draft, written, one, two)
  if (two === undefined) fillBound(draft, around.bound)
  if (isDifference) draft.difference = true
  draft.approximate = around.isApproximate || segment.isLoose || one.number.isLoose || two?.number.isLoose === true
  draft.group = group
  draft.whole = segment.whole === null ? null : source.slice(segment.whole.start, segment.whole.end)
  return draft
}

/** The quantity of a thread. */
export function makeThread(source: string, { start, end, diameter, pitch }: ThreadToken): Quantity {
  return { ...blankQuantity(source.slice(start, end), unitOf('thread')), thread: { diameter, pitch } }
}
