import type { Amount } from './amount.ts'
import { isLabelled, isYear } from './labels.ts'
import { Rational } from './rational.ts'
import type { Chain, Join } from './read-chain.ts'
import type { UnitToken } from './read-unit.ts'
import { findUnit } from './units.ts'
import { clauseBefore, wordAfter, wordBefore } from './words-around.ts'

const ranging: ReadonlySet<Join> = new Set(['to', 'or', 'dash', 'dots'])
const fromLeft = (unit: UnitToken): boolean => unit.id.startsWith('money:') || unit.id === 'AWG'

/** Whether a comma belongs to a list that shares its unit: one that ends in *and* or *or*, or one of three figures and more. */
function isListed({ joins, amounts }: Chain, at: number): boolean {
  let [first, next] = [at, at]
  while (joins[first - 1] === 'comma' && amounts[first - 1]?.unit === null) first -= 1
  while (joins[next] === 'comma' && amounts[next + 1]?.unit === null) next += 1
  return joins[next] === 'and' || joins[next] === 'or' || (joins[next] === 'comma' && next > first)
}

function maySendBack(text: string, chain: Chain, at: number, left: Amount, right: Amount): boolean {
  const join = chain.joins[at]
  if (join === 'times' || join === 'by' || join === 'slash') return true
  if (join !== 'to' && left.number.stroke !== null && left.value.compare(Rational.one) > 0) return false // 24/7
  const isAlike = left.number.written === right.number.written
  if (isLabelled(text, left.number) || left.number.kind === 'article') return false
  if (join === 'to' || join === 'dash' || join === 'dots') return true
  if (!isAlike || isYear(text, left.number)) return false
  return join !== 'comma' || isListed(chain, at)
}

/** *between £50 and 60* */
function isBetween(text: string, { amounts, joins }: Chain, at: number): boolean {
  return joins[at - 1] === 'and' && wordBefore(text, amounts[at - 1]?.start ?? 0, 0).word === 'between'
}

const stock = /^(?:flat|flats|bar|strip|plate|angle|box|channel|section|sheet|steel|tube|strap|timber|batten|slot)$/

/** `50 mm x 25 x 3`, and `50 mm x 3` where it is told of a flat: the figures behind are lengths too, and no counts. */
function isSentOn(text: string, { amounts, joins }: Chain, at: number, unit: UnitToken): boolean {
  const [first, right] = [amounts[0], amounts[at]]
  if (joins[at - 1] !== 'times' || joins[0] !== 'times' || first?.unit !== unit || right?.number.written !== 'figures')
    return false
  if (findUnit(unit.id)?.dimension !== 'length') return false
  if (amounts.length > 2) return joins[1] === 'times' && amounts[2]?.unit === null
  return (
    stock.test(wordAfter(text, right.end).word) || clauseBefore(text, first.start, 3).some(word => stock.test(word))
  )
}

/** The unit of each amount of a chain, a shared one given back from the right; null for what has none. */
export function shareUnits(text: string, chain: Chain): (UnitToken | null)[] {
  const units = chain.amounts.map(({ unit }) => unit)
  for (let at = units.length - 2; at >= 0; at -= 1) {
    const [left, right, unit] = [chain.amounts[at], chain.amounts[at + 1], units[at + 1]]
    if (units[at] !== null || !left || !right || !unit || (fromLeft(unit) && unit.start < right.start + 1)) continue
    if (maySendBack(text, chain, at, left, right)) units[at] = unit
  }
  for (let at = 1; at < units.length; at += 1) {
    const [before, join] = [units[at - 1], chain.joins[at - 1]]
    const isGauge = before?.id === 'AWG' && (join === 'and' || join === 'comma')
    if (
      units[at] === null &&
      before &&
      fromLeft(before) &&
      before.start <= (chain.amounts[at - 1]?.start ?? 0) &&
      join &&
      (ranging.has(join) || isGauge || isBetween(text, chain, at))
    ) {
      units[at] = before
    }
    if (units[at] === null && before && isSentOn(text, chain, at, before)) units[at] = before
  }
  return units
}
