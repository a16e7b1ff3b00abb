import type { Amount } from './amount.ts'
import { findChange, isBetweenFixed } from './change.ts'
import { Rational } from './rational.ts'
import type { Join } from './read-chain.ts'
import type { UnitToken } from './read-unit.ts'
import type { Segment } from './segment.ts'
import { wordBefore } from './words-around.ts'

interface Between {
  readonly start: number
  readonly isLoose: boolean
}

const loose = /^(?:about|around|roughly|approximately|approx)$/

/** Where the *between* of a range begins, *about* before its first figure allowed. */
function findBetween(text: string, start: number): Between | null {
  const before = wordBefore(text, start, 0)
  const isLoose = loose.test(before.word)
  const between = isLoose ? wordBefore(text, before.start, 0) : before
  return between.word === 'between' ? { start: between.start, isLoose } : null
}

function isAlternative([left, right]: readonly [Amount, Amount]): boolean {
  const isShared = left.unit === null || right.unit === null || left.unit === right.unit
  return !isShared && left.unit?.id.startsWith('money:') !== true
}

function isNoRange(text: string, join: Join, pair: readonly [Amount, Amount], isGauge: boolean): boolean {
  if (join === 'or') return isAlternative(pair)
  if (join !== 'to') return join !== 'dash' && join !== 'dots'
  const isBelowZero = pair[0].value.compare(Rational.zero) < 0 && pair[1].value.compare(Rational.zero) < 0
  const isFalling = !isBelowZero && pair[0].value.compare(pair[1].value) > 0 && !isGauge
  const isStepped = pair[0].unit !== null && wordBefore(text, pair[0].start, 0).word === 'by'
  return isStepped || isFalling || findChange(text, pair[0].start) || isBetweenFixed(text, pair)
}

/** The range that two joined amounts of one unit are; null where they are two values. */
export function rangeSegment(
  text: string,
  join: Join,
  pair: readonly [Amount, Amount],
  unit: UnitToken,
): Segment | null {
  const [left, right] = pair
  const between = join === 'and' ? findBetween(text, left.start) : null
  if (between === null && isNoRange(text, join, pair, unit.id === 'AWG')) return null
  const start = between?.start ?? left.start
  const isLoose = between?.isLoose ?? false
  return { kind: 'range', start, end: right.end, amounts: pair, unit, whole: null, isGrouped: false, isLoose }
}
