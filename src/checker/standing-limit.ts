import type { Place } from '../findings/place.ts'
import type { Dimension } from '../quantities/quantity.ts'
import type { Setter } from './limit.ts'
import type { SymbolTable, WrittenEnds } from './limit-end.ts'
import type { Scope } from './scope.ts'

/** A limit with its ends worked out. Both null: an end is not known. */
export interface StandingLimit extends WrittenEnds {
  readonly who: Setter
  readonly source: string
  /** In words, where its ends are not known: `3 % of the nominal voltage`. */
  readonly stated: string
  /** What the check would hold, and could not work out, is missing. */
  readonly isWhole: boolean
  /** Its ends have both uncertainties in them already, so none is taken off again. */
  readonly isAgreement: boolean
  /** The path of the requirement that it is. */
  readonly requirement: string | null
}

export interface ResolvedLimit {
  readonly own: StandingLimit
  readonly override: (StandingLimit & { readonly why: string | null; readonly place: Place }) | null
  readonly beyond: 'marginal' | null
}

/** What a limit is resolved with: the check's name, the words by which it differs, its symbols. */
export interface LimitGround {
  readonly check: string
  readonly scope: Scope
  readonly words: string | null
  readonly symbols: SymbolTable
  readonly result: { readonly uncertainty: number } | null
  /** Of the result; null where there is none. */
  readonly dimension: Dimension | null
}
