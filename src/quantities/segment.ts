import type { Amount } from './amount.ts'
import type { UnitToken } from './read-unit.ts'

/** What becomes one quantity: an amount, or the two ends of a range, before the words around it are read. */
export interface Segment {
  readonly kind: 'single' | 'range'
  readonly start: number
  readonly end: number
  readonly amounts: readonly Amount[]
  readonly unit: UnitToken
  /** Segments of `860 × 380 × 300 mm` and of `60/55W` know the string they stand in. */
  readonly whole: { readonly start: number; readonly end: number } | null
  readonly isGrouped: boolean
  /** *between about 3 and 4 mm* */
  readonly isLoose: boolean
}

/** A segment of one amount. */
export function singleSegment(amount: Amount, unit: UnitToken): Segment {
  const { start, end } = amount
  return { kind: 'single', start, end, amounts: [amount], unit, whole: null, isGrouped: false, isLoose: false }
}
