import type { Dimension } from '../quantities/quantity.ts'
import type { FormulaLine } from './formula.ts'
import type { Scope } from './scope.ts'
import type { Term } from './term.ts'

/** What reading an input gives. Nothing at all (null from `read`) means missing, and the notebook says what. */
export type Found =
  | { readonly type: 'figure'; readonly term: Term }
  /** One figure for each member of a set; in a formula it is added up, or its least taken. */
  | { readonly type: 'figures'; readonly terms: readonly Term[] }
  | { readonly type: 'words'; readonly words: string }
  | { readonly type: 'list'; readonly words: readonly string[] }
  | { readonly type: 'members'; readonly members: readonly FoundMember[] }
  /** An input that may be absent, and is. */
  | { readonly type: 'none' }

export interface FoundMember {
  /** `circuit:fuel-pump`, `stalk-switch/3`. */
  readonly path: string
  readonly name: string
  readonly fields: Readonly<Record<string, Found>>
}

/** One thing that a check needs to know. `T` is what a check's `compute` is given for it: SI numbers, words, members. */
export interface Input<T = unknown> {
  /** As its formula names it: `r_20`, `DeltaU`; null for what stands in no formula. */
  readonly symbol: string | null
  /** What it is, in the builder's words. */
  readonly meaning: string
  readonly dimension: Dimension | null
  /** What it reads of the record: `circuit/length`, `build/nominal`. */
  readonly reads: readonly string[]
  /** Tables that it may read. */
  readonly tables?: readonly string[]
  /** The lines by which it may be worked out, for the check's page. */
  readonly formula?: readonly FormulaLine[]
  /** It may be absent without being missing. */
  readonly isOptional?: true
  readonly read: (scope: Scope) => Found | null
  /** Never there: carries the type. */
  readonly gives?: T
}

/** What a found input stands for in a formula; null for words. */
export function termIn(found: Found): Term | readonly Term[] | 'absent' | null {
  if (found.type === 'figure') return found.term
  if (found.type === 'figures') return found.terms
  return found.type === 'none' ? 'absent' : null
}

export type Inputs = Readonly<Record<string, Input>>

/** What `compute` is given: each input's plain value by name. */
export type Given<I extends Inputs> = { readonly [K in keyof I]: I[K] extends Input<infer T> ? T : never }

/** A member of a set as `compute` sees it. */
export type Member<F> = { readonly path: string; readonly name: string } & F
