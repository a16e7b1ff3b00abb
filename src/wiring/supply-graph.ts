import type { AsBuiltRecord } from '../record/record.ts'
import { type Circuit, isThere } from './circuit.ts'
import { boxLines, type Graph, type GraphEdge, type GraphNode, labelLines } from './graph.ts'
import { capital, endName, textAt } from './standing.ts'
import type { SymbolName } from './symbols.ts'
import { wireWords } from './wire-words.ts'
import type { Wiring } from './wiring.ts'

/** The supply as boxes and lines: battery, generator, the feeds and their fuses, fuse boxes, what hangs on the battery itself, earths. */
export function supplyGraph({ record, circuits }: Wiring): Graph {
  const feeds = circuits.filter(circuit => isThere(circuit) && isSupply(record, circuit))
  const parts = feeds.map(circuit => supplyOf(record, circuits, circuit))
  const boxes = record.fuseBoxes.map(
    (box): GraphNode => ({
      id: `box ${box.id}`,
      look: 'box',
      lines: boxLines(endName(record, box.id)),
      leads: { kind: 'part', id: box.id },
    }),
  )
  const nodes = [batteryNode('+', 'Battery, positive'), ...boxes, ...parts.flatMap(part => part.nodes)]
  const edges = parts.flatMap(part => part.edges)
  const home = earthsHome(nodes)
  const used = new Set([...edges, ...home].flatMap(({ from, to }) => [from, to]))
  const last = used.has(minus) ? [batteryNode('-', 'Battery, negative')] : []
  return {
    title: 'The supply: battery, generator, fuse boxes, earths',
    nodes: unique([...nodes, ...last]),
    edges: [...edges, ...home],
  }
}

const [plus, minus] = ['battery +', 'battery -']

const batteryNode = (pole: '+' | '-', name: string): GraphNode => ({
  id: pole === '+' ? plus : minus,
  look: 'rail',
  lines: [name],
  leads: null,
})

/** A circuit belongs to the supply where it feeds a fuse box, charges, starts, or comes straight from the battery. */
function isSupply(record: AsBuiltRecord, { part, use, fuse, supply }: Circuit): boolean {
  const feedsBox = part?.partKind === 'fuse-box'
  const isFeed = record.parts.some(
    box => box.partKind === 'fuse-box' && textAt(box, 'feed') !== null && supply === textAt(box, 'feed'),
  )
  return (
    feedsBox ||
    use === 'charging' ||
    use === 'starting' ||
    ((fuse === null || fuse.box === null) && (supply === 'battery' || isFeed))
  )
}

function supplyOf(
  record: AsBuiltRecord,
  circuits: readonly Circuit[],
  circuit: Circuit,
): { nodes: GraphNode[]; edges: GraphEdge[] } {
  const load = loadNode(record, circuit)
  const from = sourceOf(circuits, circuit)
  const [start, end] = circuit.use === 'charging' ? [load.id, plus] : [from, load.id]
  const fuse = circuit.fuse
  const fuseNode: GraphNode[] =
    fuse === null || fuse.box !== null
      ? []
      : [
          {
            id: `fuse ${circuit.id}`,
            look: 'fuse',
            lines: [[fuse.rating?.value.text ?? 'rating not written', fuse.type ?? ''].join(' ').trim()],
            leads: { kind: 'circuit', id: circuit.id },
          },
        ]
  const stops = [start, ...fuseNode.map(({ id }) => id), end]
  const said = `${circuit.name}: ${circuit.number}, ${wireWords(circuit.feed)}${circuit.feed.length === null ? '' : `, ${circuit.feed.length.value.text}`}${fuse?.rating == null ? ', no fuse' : `, fuse ${fuse.rating.value.text}`}.`
  const edges = stops.slice(1).map(
    (to, index): GraphEdge => ({
      id: `feed ${circuit.id} ${index}`,
      from: stops[index] ?? start,
      to,
      lines:
        index === stops.length - 2
          ? labelLines(
              `${circuit.number}, ${wireWords(circuit.feed)}${circuit.feed.length === null ? '' : `, ${circuit.feed.length.value.text}`}`,
            )
          : [],
      wire: circuit.feed.look,
      circuit: circuit.id,
      says: index === stops.length - 2 ? said : `${circuit.name}, up to its fuse.`,
    }),
  )
  const back = backOf(circuit, load.id)
  return { nodes: [...fuseNode, load, ...back.nodes], edges: [...edges, ...back.edges] }
}

function sourceOf(circuits: readonly Circuit[], { supply }: Circuit): string {
  const feeder = circuits.find(({ id }) => id === supply)
  return feeder === undefined ? plus : nodeOf(feeder)
}

const nodeOf = ({ id, part }: Circuit): string =>
  part === null ? `load ${id}` : part.partKind === 'fuse-box' ? `box ${part.id}` : `part ${part.id}`

function loadNode(record: AsBuiltRecord, circuit: Circuit): GraphNode {
  const { part, use, feeds, name } = circuit
  if (use === 'charging') {
    const alternator = record.parts.find(({ partKind, onVehicle }) => partKind === 'alternator' && onVehicle)
    return {
      id: 'alternator',
      look: 'generator',
      lines: boxLines(alternator?.name ?? 'Alternator'),
      leads: alternator === undefined ? null : { kind: 'part', id: alternator.id },
    }
  }
  const look: SymbolName = use === 'starting' ? 'motor' : 'box'
  return {
    id: nodeOf(circuit),
    look: part?.partKind === 'fuse-box' ? 'box' : look,
    lines: boxLines(capital(feeds ?? name)),
    leads: part === null ? { kind: 'circuit', id: circuit.id } : { kind: 'part', id: part.id },
  }
}

function backOf(circuit: Circuit, load: string): { nodes: GraphNode[]; edges: GraphEdge[] } {
  const { back, earth, id, name } = circuit
  if (back === null && earth === null) return { nodes: [], edges: [] }
  const nodes: GraphNode[] =
    earth === null ? [] : [{ id: `earth ${earth.id}`, look: 'earth', lines: boxLines(earth.name), leads: null }]
  const to = earth === null ? minus : `earth ${earth.id}`
  const words =
    back === null
      ? ''
      : `${back.number}, ${wireWords(back)}${back.length === null ? '' : `, ${back.length.value.text}`}`
  const says =
    back === null
      ? `${name} is earthed at ${earth?.name ?? ''}.`
      : `${name} returns by ${words}${earth === null ? ' to the battery, negative' : ` to ${earth.name}`}.`
  return {
    nodes,
    edges: [
      {
        id: `back ${id}`,
        from: load,
        to,
        lines: back === null ? [] : labelLines(words),
        wire: back === null ? 'chassis' : back.look,
        circuit: id,
        says,
      },
    ],
  }
}

/** Every earth point goes home by the chassis. */
function earthsHome(nodes: readonly GraphNode[]): GraphEdge[] {
  return unique(nodes.filter(({ look }) => look === 'earth')).map(({ id, lines }) => ({
    id: `home ${id}`,
    from: id,
    to: minus,
    lines: [],
    wire: 'chassis',
    circuit: null,
    says: `${lines.join(' ')} goes home by the chassis.`,
  }))
}

function unique(nodes: readonly GraphNode[]): GraphNode[] {
  return [...new Map(nodes.map(node => [node.id, node])).values()]
}
