import type { Circuit } from './circuit.ts'

/** The stops of a circuit in order, each once: from its box by its route to its load. */
export function stopsAlong({ route, feed }: Circuit): string[] {
  const from = feed.from.replace(/, way .*$/, '')
  const stops = route.length === 0 ? [from, feed.to] : route
  const whole = route.length > 0 && stops[0] !== from && !stops.includes(from) ? [from, ...stops] : stops
  const distinct = whole.filter((stop, index) => whole.indexOf(stop) === index)
  return distinct.length > 1 ? distinct : [...distinct, `${feed.to}, end`]
}

/** How far in metres a stop is from the start of a route, where a circuit of known length ends at it; by `JSON [start, stop]`. */
export function lengthsBetween(members: readonly Circuit[]): ReadonlyMap<string, number> {
  const found = new Map<string, number>()
  for (const circuit of members) {
    const [start, end] = [stopsAlong(circuit)[0], stopsAlong(circuit).at(-1)]
    const length = circuit.feed.length?.value.si
    if (length !== null && length !== undefined && start !== undefined && end !== undefined)
      found.set(JSON.stringify([start, end]), length)
  }
  return found
}
