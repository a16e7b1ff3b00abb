import type { NumberToken } from './number-token.ts'
import type { Rational } from './rational.ts'
import type { ToleranceToken } from './read-tolerance.ts'
import type { UnitToken } from './read-unit.ts'

/** One number with what belongs to it; the unit is null while it may still be shared with a neighbour. */
export interface Amount {
  readonly start: number
  readonly end: number
  readonly number: NumberToken
  /** In the unit; feet and inches together are in inches. */
  readonly value: Rational
  readonly half: Rational
  readonly unit: UnitToken | null
  readonly tolerance: ToleranceToken | null
  /** Lengths behind a thread, `M6 x 20`. */
  readonly isUnitImplied: boolean
}
