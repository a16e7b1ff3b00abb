import { bundleDiameterMm, cableDiameterMm } from './bundle-diameter.ts'
import type { Conductor } from './circuit.ts'
import { boxLines, type Graph, type GraphEdge, labelLines } from './graph.ts'
import { lengthsBetween, stopsAlong } from './loom-lengths.ts'
import type { Loom } from './looms.ts'
import { capital } from './standing.ts'
import { metres } from './wire-words.ts'

/** A loom as stops and the lengths between them: how many wires lie in each, how thick it is, how long where the notes tell. */
export function loomGraph(loom: Loom): Graph {
  const runs = loom.members.flatMap(circuit =>
    circuit.feed.loom === loom.id ? [{ wire: circuit.feed, stops: stopsAlong(circuit) }] : [],
  )
  const reached = lengthsBetween(loom.members)
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
