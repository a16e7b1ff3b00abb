import type { FormulaLine } from './formula.ts'
import type { Given, Inputs } from './input.ts'
import type { Comparison } from './judge.ts'
import type { Limit } from './limit.ts'
import type { Worked } from './propagate.ts'
import type { Scope } from './scope.ts'
import type { SubjectSource } from './subjects.ts'
import type { Term } from './term.ts'

/** Where a formula or a limit is from: the title, and its page, section or clause. */
export interface Source {
  readonly title: string
  readonly section: string
}

/** One worked example. `given` is what a record states, `circuit/length` of the subject and `circuit:other/load` of others. */
export interface Example {
  readonly given: Readonly<Record<string, string>>
  readonly aspect?: string
  readonly expect: 'pass' | 'marginal' | 'fail' | 'missing' | 'waived'
  /** In the check's own unit, worked by hand; absent where nothing can be worked. */
  readonly value?: number
  /** The paths missing, where the verdict is that. */
  readonly missing?: readonly string[]
  /** Where the figures are from, and how the value was got. */
  readonly source: string
}

/** Patterns of which the record has at least one, or whatever else tells that a question is worth asking of a subject. */
export type WorthAsking = readonly string[] | 'always' | ((scope: Scope) => boolean)

/** One answer among several for the same subject: feed and return, idle and speed. */
export interface Aspect {
  readonly formula: readonly FormulaLine[]
  readonly limit: Limit | null
  /** It appears only where one of these is given; without it, always. */
  readonly worthAsking?: WorthAsking
}

export interface Offender {
  readonly path: string
  /** In words, for the page: `has no fuse`. */
  readonly why: string
}

/** What a check that counts gives back. */
export interface Count {
  readonly offenders: readonly Offender[]
  /** Where it is not the number of offenders: pairs. */
  readonly count?: number
  readonly notes?: readonly string[]
}

/** How an answer came out, for what is said after it. */
export interface Outcome {
  readonly aspect: string | null
  readonly term: Term
  readonly worked: Worked
  /** The end of the limit that decided; null for a working. */
  readonly nearest: Comparison | null
}

/** A check as its file states it. */
export interface CheckSpec<I extends Inputs = Inputs> {
  /** The name of its file. */
  readonly id: string
  readonly title: string
  readonly question: string
  readonly subject: SubjectSource
  /** It is asked where one of these is in the record: what only it or its family needs. */
  readonly worthAsking: WorthAsking
  readonly inputs: I
  /** One answer by a formula; its last line is the result. */
  readonly formula?: readonly FormulaLine[]
  /** Several answers, by aspect. */
  readonly aspects?: Readonly<Record<string, Aspect>>
  /** One answer by counting offenders. Pure: it sees SI numbers and words. */
  readonly compute?: (given: Given<I>) => Count
  /** What fails a check by a formula whatever its figure: circuits on one way that name different fuses. Its inputs are then all needed. */
  readonly alsoFails?: (given: Given<I>) => readonly Offender[]
  /** Lines worked beside the answer, which move no verdict: what the blocked fan would draw. */
  readonly beside?: readonly FormulaLine[]
  /** Symbols that can only bring the result nearer to failing: where one is missing, the rest may fail already, and that is said. */
  readonly onlyWorsens?: readonly string[]
  /** A sentence about some symbols' values, in SI, that moves no verdict; null for none. */
  readonly remark?: {
    readonly of: readonly string[]
    readonly say: (
      values: Readonly<Record<string, { readonly value: number; readonly uncertainty: number }>>,
    ) => string | null
  }
  /** Sentences about how the answer came out, which move no verdict. */
  readonly afterword?: (outcome: Outcome, scope: Scope) => readonly string[]
  /** Sizes to try in place of what is fitted where it does not pass, by the unit in which that is written: the next cable. */
  readonly whatIf?: {
    readonly of: readonly [string, ...string[]]
    readonly sizes: Readonly<Record<string, readonly string[]>>
  }
  readonly source: Source
  /** Null: the check is a working. */
  readonly limit: Limit | null
  /** Sentences that belong to every working of it. */
  readonly notes?: readonly string[]
  /** Where the work can hurt someone. */
  readonly caution: string | null
  /** Why it can miss nothing, where that is so: it counts what is there. Then no example has to. */
  readonly cannotMiss?: string
  readonly examples: readonly Example[]
}

/** A check as the checker runs it, whatever its inputs. */
export interface Check extends Omit<CheckSpec, 'compute' | 'alsoFails'> {
  readonly compute?: (given: never) => Count
  readonly alsoFails?: (given: never) => readonly Offender[]
}

/** States a check. What is wrong with it is thrown here, when it is loaded. */
export function defineCheck<const I extends Inputs>(spec: CheckSpec<I>): Check {
  const ways = [spec.formula, spec.aspects, spec.compute].filter(way => way !== undefined)
  if (ways.length !== 1)
    throw new Error(`Unexpected ${ways.length} ways to work \`${spec.id}\`, expected one of formula, aspects, compute`)
  return spec
}
