import type { Dimension } from '../quantities/quantity.ts'
import type { FormulaLine } from './formula.ts'

/** A limit's one end: a figure, a share of one of the check's symbols, or a formula of them. */
export type Bound =
  | { readonly value: number; readonly unit: string }
  /** `share` 0.03 of `U_n`: printed as 3 % of what stands for it. An override in % is a share of the same symbol. */
  | { readonly share: number; readonly of: string }
  | { readonly formula: readonly FormulaLine[] }

export interface Bounds {
  readonly min?: Bound
  readonly max?: Bound
}

/** Who set a limit. The tool informs; it approves nothing. */
export type Setter = 'law' | 'standard' | 'maker' | 'builder' | 'practice'

export interface Limit extends Bounds {
  readonly who: Setter
  /** Title and section of the rule, or the reason where it is practice. */
  readonly source: string
  /** The name of a words input by which the limit differs, such as a circuit's use; a limit of build.md may name its words. */
  readonly by?: string
  /** The ends by those words, in place of `min` and `max`; null: the rule has no row that was seen, and the verdict is missing. */
  readonly groups?: Readonly<Record<string, Bounds | null>>
  /** Taken from build.md's requirements, where one of these paths is there; else the check is a working. */
  readonly required?: readonly string[]
  /** The limit is what build.md requires of the subject itself. */
  readonly ofSubject?: true
  /** The result has to agree with this symbol's value: |difference| ≤ √(U₁² + U₂²); where it is absent, the check is a working. */
  readonly agreesWith?: string
  /** Goes before this one where the property is given, such as the maker's own figure. */
  readonly instead?: { readonly whenGiven: string; readonly limit: Limit }
  /** A limit of build.md in this dimension is what the check is worked with, such as an acceleration; `own` are then the ends that the default stands for. */
  readonly setting?: { readonly dimension: Dimension; readonly own: Bounds }
  /** What lies beyond it is only marginal. */
  readonly beyond?: 'marginal'
}

/** A relative rounding slack: 0.030000000000000006 V against 0.03 V is at the limit, not past it. */
export const roundingSlack = 1e-9 // relative; doubles carry some 1e-16, a working of a hundred steps some 1e-14
