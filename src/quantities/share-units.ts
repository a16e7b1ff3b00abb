import type { Amount } from './amount.ts'
import { isLabelled, isYear } from './labels.ts'
import type { Chain, Join } from './read-chain.ts'
import type { UnitToken } from './read-unit.ts'

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
  const isAlike = left.number.written === right.number.written
  if (isLabelled(text, left.number) || left.number.kind === 'article') return false
  if (join === 'to' || join === 'dash' || join === 'dots') return true
  if (!isAlike || isYear(text, left.number)) return false
  return join !== 'comma' || isListed(chain, at)
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
      (ranging.has(join) || isGauge)
    ) {
      units[at] = before
    }
  }
  return units
}
