import type { Dimension } from '../../quantities/quantity.ts'
import { type FormulaLine, type Terms, workFormula } from '../formula.ts'
import { type Found, type Input, type Inputs, termIn } from '../input.ts'
import type { Scope } from '../scope.ts'
import { readsOf } from './reads-of.ts'

interface DerivedSpec {
  readonly symbol: string
  readonly meaning: string
  readonly dimension: Dimension
  readonly inputs: Inputs
  /** Its last line gives the symbol. */
  readonly formula: readonly FormulaLine[]
}

/** A figure that is worked out from others, its lines shown in the working. */
export function derived(spec: DerivedSpec): Input<number> {
  return {
    symbol: spec.symbol,
    meaning: spec.meaning,
    dimension: spec.dimension,
    ...readsOf(Object.values(spec.inputs), [], spec.formula),
    read: scope => {
      const found = readAll(spec.inputs, scope)
      return found === null ? null : { type: 'figure', term: workFormula(spec.formula, termsOf(spec.inputs, found)) }
    },
  }
}

/** Reads every input, so that all that is missing is named at once; null where one is. */
export function readAll(inputs: Inputs, scope: Scope): Record<string, Found> | null {
  const found = Object.entries(inputs).map(([name, input]) => [name, input.read(scope)] as const)
  const all: Record<string, Found> = {}
  for (const [name, one] of found) if (one !== null) all[name] = one
  return Object.keys(all).length === found.length ? all : null
}

/** The figures among what was read, by symbol. */
export function termsOf(inputs: Inputs, found: Readonly<Record<string, Found>>): Terms {
  const terms: Record<string, Terms[string]> = {}
  for (const [name, { symbol }] of Object.entries(inputs)) {
    const one = found[name]
    const term = symbol === null || one === undefined ? null : termIn(one)
    if (symbol !== null && term !== null) terms[symbol] = term
  }
  return terms
}
