import type { Compute, UncertainInput } from './uncertain-input.ts'
import { worstCase } from './worst-case.ts'

export type { Compute, UncertainInput } from './uncertain-input.ts'

/** How two sources are correlated, from -1 to 1. */
export interface Correlation {
  readonly sources: readonly [string, string]
  readonly coefficient: number
}

/** One result with its uncertainty. */
export interface Propagated {
  readonly value: number
  /** Combined standard uncertainty, first order (JCGM 100:2008, 5.1 and 5.2). */
  readonly standard: number
  /** U = 2 u, about 95 % (JCGM 100:2008, 6.2). */
  readonly expanded: number
  /** The worst case: the ends when every input may be anywhere between its own. */
  readonly low: number
  readonly high: number
  /** What each source adds to the result, with its sign. */
  readonly contributions: readonly { readonly source: string; readonly size: number }[]
}

const coverage = 2 // k, JCGM 100:2008, 6.3.3
const relativeStep = 1e-4 // of the value: the error of a central difference is then near 1e-8

type Values = Record<string, number>
const isAllFinite = (values: Readonly<Record<string, number>>): boolean =>
  Object.values(values).every(value => Number.isFinite(value))

const valuesOf = (inputs: readonly UncertainInput[], change: (input: UncertainInput) => number): Values =>
  Object.fromEntries(inputs.map(input => [input.name, change(input)]))

/** The change of every result when a source goes up by its standard uncertainty, by a central difference. */
function sensitivity(compute: Compute, inputs: readonly UncertainInput[], source: string): Values | null {
  const moved = inputs.filter(input => input.source === source && input.standard > 0)
  const share = Math.min(
    1,
    ...moved.map(({ value, standard }) => (relativeStep * Math.max(Math.abs(value), standard)) / standard),
  )
  if (moved.length === 0) return {}
  const shift = (sign: number) =>
    compute(
      valuesOf(inputs, ({ value, standard, source: own }) =>
        own === source ? value + sign * share * standard : value,
      ),
    )
  const [up, down] = [shift(1), shift(-1)]
  if (!isAllFinite(up) || !isAllFinite(down)) return null
  return Object.fromEntries(Object.keys(up).map(name => [name, ((up[name] ?? 0) - (down[name] ?? 0)) / (2 * share)]))
}

function combined(sizes: ReadonlyMap<string, number>, correlations: readonly Correlation[]): number {
  const squares = [...sizes.values()].reduce((sum, size) => sum + size ** 2, 0)
  const shared = correlations.reduce(
    (sum, { sources: [one, other], coefficient }) =>
      sum + 2 * coefficient * (sizes.get(one) ?? 0) * (sizes.get(other) ?? 0),
    0,
  )
  return Math.sqrt(Math.max(0, squares + shared))
}

/** Carries the uncertainty of inputs through a calculation; null where any number on the way is not finite. */
export function propagate(
  compute: Compute,
  inputs: readonly UncertainInput[],
  correlations: readonly Correlation[] = [],
): Record<string, Propagated> | null {
  const results = compute(valuesOf(inputs, ({ value }) => value))
  const sources = [...new Set(inputs.map(({ source }) => source))]
  const changes = sources.map(source => [source, sensitivity(compute, inputs, source)] as const)
  const ends = worstCase(compute, inputs)
  if (!isAllFinite(results) || ends === null || changes.some(([, change]) => change === null)) return null
  const propagated = Object.entries(results).map(([name, value]): [string, Propagated] => {
    const sizes = new Map(changes.map(([source, change]) => [source, change?.[name] ?? 0]))
    const standard = combined(sizes, correlations)
    const contributions = [...sizes].map(([source, size]) => ({ source, size }))
    const { low, high } = ends[name] ?? { low: value, high: value }
    return [name, { value, standard, expanded: coverage * standard, low, high, contributions }]
  })
  return Object.fromEntries(propagated)
}
