import type { Place } from '../findings/place.ts'
import type { Quantity } from '../quantities/quantity.ts'
import type { Offender, Source } from './check.ts'
import type { Setter } from './limit.ts'
import type { Need, UsedTable } from './notebook.ts'

export type VerdictWord = 'pass' | 'marginal' | 'fail' | 'missing' | 'waived'

/** The answer of one check for one subject and aspect. All but `working` is what `check --json` prints. */
export interface Verdict {
  readonly check: string
  readonly subject: string
  readonly aspect: string | null
  readonly verdict: VerdictWord
  /** In `unit`, unrounded; `uncertainty` is U (k = 2), `worst` the end nearest the limit or furthest beyond it. Null where missing. */
  readonly result: {
    readonly value: number
    readonly unit: string
    readonly uncertainty: number
    readonly worst: number
  } | null
  /** In the result's unit; null for a working. */
  readonly limit: VerdictLimit | null
  readonly inputs: readonly VerdictInput[]
  readonly assumed: readonly string[]
  /** Paths that the record has not. */
  readonly missing: readonly string[]
  /** Paths, of a check that counts. */
  readonly offenders?: readonly string[]
  readonly working: Working
}

export interface VerdictLimit {
  readonly min: number | null
  readonly max: number | null
  readonly unit: string
  /** In words: `3 % of 12 V`. */
  readonly from: string
  readonly who: Setter
  readonly source: string
}

/** One figure, or words, of the record that the answer stands on. */
export interface VerdictInput {
  readonly path: string
  readonly value: number | string | null
  /** Null for words. */
  readonly unit: string | null
  readonly file: string
  readonly line: number
  readonly column: number
}

/** What the pages show of a working; figures in text are rounded for reading. */
export interface Working {
  readonly title: string
  readonly question: string
  readonly source: Source
  readonly caution: string | null
  readonly subject: { readonly kind: string; readonly name: string; readonly place: Place | null }
  /** One sentence: `0.363 V ± 0.025 V against 0.36 V at most: 0.003 V over`. */
  readonly says: string
  /** `4 mm`, by which it is short or over; null where it passes or nothing can be told. */
  readonly beyondBy: string | null
  /** The check's formula with its symbols, as stated in its file. */
  readonly formula: readonly (Shown & { readonly says: string })[]
  /** The lines worked in this case, the result last. */
  readonly steps: readonly WorkedStep[]
  readonly beside: readonly WorkedStep[]
  readonly values: readonly WorkedValue[]
  readonly contributions: readonly WorkedContribution[]
  /** The least and greatest by interval, in the result's unit. */
  readonly interval: { readonly low: number; readonly high: number } | null
  /** The check's own limit beside an override, and the builder's reason. */
  readonly override: {
    readonly default: VerdictLimit
    readonly verdict: VerdictWord
    readonly why: string | null
    readonly place: Place
  } | null
  /** The path of the requirement of build.md that is its limit. */
  readonly requirement: string | null
  readonly tables: readonly UsedTable[]
  readonly notes: readonly string[]
  readonly needs: readonly Need[]
  readonly offenders: readonly Offender[]
  readonly measureNext: readonly Need[]
  /** Where it does not pass: the same with the sizes next to what is fitted. */
  readonly alternatives: readonly WorkedAlternative[]
}

export interface WorkedAlternative {
  /** `4 mm²`. */
  readonly said: string
  readonly isFitted: boolean
  readonly verdict: VerdictWord
  readonly result: Verdict['result']
}

/** A piece of mathematics, as MathML and as one line of text. */
export interface Shown {
  readonly mathml: string
  readonly text: string
}

export interface WorkedStep {
  readonly symbol: Shown
  readonly formula: Shown
  readonly values: Shown
  readonly result: Shown
  /** Unrounded, in `unit`. */
  readonly value: number
  readonly unit: string
  readonly says: string
}

/** A value put in, and where it comes from. */
export interface WorkedValue {
  readonly symbol: Shown | null
  readonly meaning: string
  readonly origin: 'record' | 'table' | 'assumed' | 'constant' | 'limit'
  /** As shown: `7.0 A ± 0.4 A`, or the words. */
  readonly shown: Shown
  readonly path: string | null
  readonly quantity: Quantity | null
  readonly place: Place | null
  readonly session: string | null
  /** `q-4` of the figure in its note. */
  readonly figure: string | null
}

export interface WorkedContribution {
  readonly path: string
  readonly symbol: Shown
  readonly meaning: string
  /** Half-width as read, in `unit`. */
  readonly halfWidth: number
  readonly unit: string
  /** Carried to the result, in the result's unit, as one standard deviation. */
  readonly carried: number
  /** Share of the variance, 0 to 1. */
  readonly share: number
}
