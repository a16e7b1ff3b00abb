import type { Compute, UncertainInput } from './uncertain-input.ts'

interface Ends {
  readonly low: number
  readonly high: number
}

const mostCorners = 10 // sources of which every corner is tried: 1024 calculations

type End = 'low' | 'high'

function valuesAt(inputs: readonly UncertainInput[], endOf: (source: string) => End | 'value'): Record<string, number> {
  return Object.fromEntries(inputs.map(input => [input.name, input[endOf(input.source)]]))
}

function* corners(sources: readonly string[]): Generator<ReadonlyMap<string, End>> {
  for (let bits = 0; bits < 2 ** sources.length; bits += 1) {
    yield new Map(sources.map((source, at) => [source, (bits >> at) & 1 ? 'high' : 'low']))
  }
}

/** Each source alone says which of its ends makes a result greater; those ends together are two corners for each result. */
function* steepest(
  compute: Compute,
  inputs: readonly UncertainInput[],
  sources: readonly string[],
): Generator<ReadonlyMap<string, End>> {
  const names = Object.keys(compute(valuesAt(inputs, () => 'value')))
  const alone = sources.map(source =>
    (['low', 'high'] as const).map(end => compute(valuesAt(inputs, own => (own === source ? end : 'value')))),
  )
  for (const name of names) {
    for (const isUp of [true, false]) {
      const isRising = (at: number) => (alone[at]?.[1]?.[name] ?? 0) >= (alone[at]?.[0]?.[name] ?? 0)
      yield new Map(sources.map((source, at): [string, End] => [source, isRising(at) === isUp ? 'high' : 'low']))
    }
  }
}

/** The least and greatest of each result when every source may lie anywhere between its ends, which move together for inputs of one source;
 * the calculation is taken to rise or fall steadily in each. Null where a number is not finite. */
export function worstCase(compute: Compute, inputs: readonly UncertainInput[]): Record<string, Ends> | null {
  const sources = [...new Set(inputs.filter(({ low, high }) => low !== high).map(({ source }) => source))]
  const tried = sources.length <= mostCorners ? corners(sources) : steepest(compute, inputs, sources)
  const ends: Record<string, Ends> = {}
  for (const [name, value] of Object.entries(compute(valuesAt(inputs, () => 'value'))))
    ends[name] = { low: value, high: value }
  for (const corner of tried) {
    for (const [name, value] of Object.entries(compute(valuesAt(inputs, source => corner.get(source) ?? 'value')))) {
      if (!Number.isFinite(value)) return null
      const { low, high } = ends[name] ?? { low: value, high: value }
      ends[name] = { low: Math.min(low, value), high: Math.max(high, value) }
    }
  }
  return ends
}
