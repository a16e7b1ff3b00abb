import { bundleDiameterMm, cableDiameterMm } from './bundle-diameter.ts'
import type { Circuit, Conductor } from './circuit.ts'
import { boxLines, type Graph, type GraphEdge, labelLines } from './graph.ts'
import type { Loom } from './looms.ts'
import { capital } from './standing.ts'
import { metres } from './wire-words.ts'

/** A loom as stops and the lengths between them: how many wires lie in each, how thick it is, how long where the notes tell. */
export function loomGraph(loom: Loom): Graph {
  const runs = loom.members.flatMap(circuit =>
    circuit.feed.loom === loom.id ? [{ wire: circuit.feed, stops: stopsOf(circuit) }] : [],
  )
  const reached = lengthsTo(loom.members)
  const sections = new Map<string, { from: string; to: string; wires: Conductor[] }>()
  for (const { wire, stops } of runs)
    for (const [index, to] of stops.slice(1).entries()) {
      const from = stops[index] ?? to
      const key = JSON.stringify([from, to])
      const section = sections.get(key) ?? { from, to, wires: [] }
      sections.set(key, { ...section, wires: [...section.wires, wire] })
    }
  const names = [...new Set(runs.flatMap(({ stops }) => stops))]
  return {
    title: `${loom.name}: its branches`,
    nodes: names.map(name => ({ id: name, look: 'stop', lines: boxLines(capital(name)), leads: null })),
    edges: [...sections.values()].map((section, index) => sectionEdge(section, index, reached)),
  }
}

/** The stops of a circuit in order, each once: from its box by its route to its load. */
function stopsOf({ route, feed }: Circuit): string[] {
  const from = feed.from.replace(/, way .*$/, '')
  const stops = route.length === 0 ? [from, feed.to] : route
  const whole = route.length > 0 && stops[0] !== from && !stops.includes(from) ? [from, ...stops] : stops
  const distinct = whole.filter((stop, index) => whole.indexOf(stop) === index)
  return distinct.length > 1 ? distinct : [...distinct, `${feed.to}, end`]
}

/** How far a stop is from the start of a route, where a circuit of known length ends at it. */
function lengthsTo(members: readonly Circuit[]): ReadonlyMap<string, number> {
  const found = new Map<string, number>()
  for (const circuit of members) {
    const [start, end] = [stopsOf(circuit)[0], stopsOf(circuit).at(-1)]
    const length = circuit.feed.length?.value.si
    if (length !== null && length !== undefined && start !== undefined && end !== undefined)
      found.set(JSON.stringify([start, end]), length)
  }
  return found
}

function sectionEdge(
  { from, to, wires }: { from: string; to: string; wires: readonly Conductor[] },
  index: number,
  reached: ReadonlyMap<string, number>,
): GraphEdge {
  const diameters = wires.flatMap(({ area }) => (area === null ? [] : (cableDiameterMm(area.value) ?? [])))
  const thick = diameters.length === 0 ? '' : `, ⌀ ${bundleDiameterMm(diameters).toFixed(0)} mm`
  const long = sectionLength(from, to, reached)
  const words = `${wires.length === 1 ? (wires[0]?.number ?? '') : `${wires.length} wires${thick}`}${long === null ? '' : `, ${metres(long)}`}`
  return {
    id: `section ${index}`,
    from,
    to,
    lines: labelLines(words),
    wire: 'bundle',
    circuit: wires.length === 1 ? (wires[0]?.circuit ?? null) : null,
    says: `${capital(from)} to ${to}: ${words} (${wires.map(({ number }) => number).join(', ')})${long === null ? ', length not written' : ''}.`,
  }
}

/** Known where circuits end at both ends of the section, or where it is a whole route. */
function sectionLength(from: string, to: string, reached: ReadonlyMap<string, number>): number | null {
  const direct = reached.get(JSON.stringify([from, to]))
  if (direct !== undefined) return direct
  for (const [key, length] of reached) {
    const [start, end] = JSON.parse(key) as [string, string]
    const before = end === to ? reached.get(JSON.stringify([start, from])) : undefined
    if (before !== undefined && length > before) return length - before
  }
  return null
}
