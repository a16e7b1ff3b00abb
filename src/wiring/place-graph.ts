import { createRequire } from 'node:module'
import { Worker } from 'node:worker_threads'
import type { ElkEdgeSection, ElkExtendedEdge, ElkNode, ElkPort } from 'elkjs/lib/elk-api.js'
import { type Graph, type GraphEdge, type GraphNode, meetsAt, type Placing, sizeOfLabel, sizeOfNode } from './graph.ts'
import { type Point, tenth } from './svg.ts'

const mostPlaced = 260 // boxes and lines together: above this the plain drawing is made, on every machine alike
const patience = 20_000 // milliseconds, a last resort only: no graph within the limit has come near it

const options = {
  'elk.algorithm': 'layered',
  'elk.direction': 'DOWN',
  'elk.edgeRouting': 'ORTHOGONAL',
  'elk.layered.spacing.nodeNodeBetweenLayers': '26',
  'elk.layered.spacing.edgeNodeBetweenLayers': '16',
  'elk.layered.spacing.edgeEdgeBetweenLayers': '14',
  'elk.spacing.nodeNode': '26',
  'elk.spacing.edgeEdge': '14',
  'elk.spacing.edgeNode': '18',
  'elk.spacing.edgeLabel': '6',
  'elk.layered.edgeLabels.sideSelection': 'ALWAYS_UP', // right of a line that runs down, so that it is plain whose label it is
  'elk.spacing.portPort': '14',
  'elk.padding': '[top=10,left=10,bottom=10,right=10]',
  'elk.randomSeed': '1',
}

/** Places graphs by layers, each end of a line at a port of its own. Null for one that is too big, or took too long: it is drawn plainly. */
export async function placeGraphs(graphs: readonly Graph[]): Promise<(Placing | null)[]> {
  const fits = graphs.map(({ nodes, edges }) => nodes.length > 0 && nodes.length + edges.length <= mostPlaced)
  const asked = graphs.flatMap((graph, index) => (fits[index] === true ? [asElk(graph)] : []))
  const placed = asked.length === 0 ? [] : await layOut(asked)
  return graphs.map((_, index) => {
    const answer = fits[index] === true ? placed.shift() : undefined
    return answer === undefined || answer === null ? null : asPlacing(answer)
  })
}

function asElk({ nodes, edges }: Graph): ElkNode {
  const known = new Set(nodes.map(({ id }) => id))
  const drawn = edges.filter(({ from, to }) => from !== to && known.has(from) && known.has(to))
  return {
    id: 'root',
    layoutOptions: options,
    children: nodes.map(node => ({
      id: node.id,
      ...sizeOfNode(node),
      layoutOptions: {
        'elk.portConstraints': node.look === 'fuse' ? 'FIXED_POS' : 'FIXED_SIDE',
        'elk.nodeSize.constraints': '[PORTS, MINIMUM_SIZE]',
        'elk.nodeSize.minimum': `(${sizeOfNode(node).width}, ${sizeOfNode(node).height})`,
      },
      ports: portsOf(node, drawn),
    })),
    edges: drawn.map(edge => ({
      id: edge.id,
      sources: [`${edge.id} out`],
      targets: [`${edge.id} in`],
      labels: edge.lines.length === 0 ? [] : [{ text: edge.lines.join(' '), ...sizeOfLabel(edge) }],
    })),
  }
}

/** A port for each end of a line, so that no two lie on each other. */
function portsOf(node: GraphNode, edges: readonly GraphEdge[]): ElkPort[] {
  const port = (id: string, side: 'NORTH' | 'SOUTH'): ElkPort => ({
    id,
    width: 0,
    height: 0,
    x: meetsAt(node),
    y: side === 'SOUTH' ? sizeOfNode(node).height : 0,
    layoutOptions: { 'elk.port.side': side },
  })
  return edges.flatMap(({ id, from, to }) => [
    ...(from === node.id ? [port(`${id} out`, 'SOUTH')] : []),
    ...(to === node.id ? [port(`${id} in`, 'NORTH')] : []),
  ])
}

/** Runs in a thread of its own, so that a placing which never ends can be ended. */
const threadCode = `
const { parentPort, workerData } = require('node:worker_threads')
const Elk = require(workerData.elk)
const elk = new Elk()
;(async () => {
  for (const [index, graph] of workerData.graphs.entries()) {
    let placed = null
    try { placed = await elk.layout(graph) } catch (fault) { placed = null }
    parentPort.postMessage({ index, placed: JSON.parse(JSON.stringify(placed, (key, value) => (key === '$H' ? undefined : value))) })
  }
  process.exit(0)
})()
`

function layOut(graphs: readonly ElkNode[]): Promise<(ElkNode | null)[]> {
  const elk = createRequire(import.meta.url).resolve('elkjs/lib/elk.bundled.js')
  const placed: (ElkNode | null)[] = graphs.map(() => null)
  return new Promise((resolve, reject) => {
    // The program's own loaders are of no use to plain JavaScript, and cost a tenth of a second.
    const thread = new Worker(threadCode, { eval: true, execArgv: [], workerData: { elk, graphs } })
    const timer = setTimeout(() => void thread.terminate(), patience)
    thread.on('message', ({ index, placed: one }: { index: number; placed: ElkNode | null }) => {
      placed[index] = one
    })
    thread.on('error', reject)
    thread.on('exit', () => {
      clearTimeout(timer)
      resolve(placed)
    })
  })
}

function asPlacing({ width = 0, height = 0, children = [], edges = [] }: ElkNode): Placing {
  return {
    width,
    height,
    nodes: Object.fromEntries(children.map(({ id, x = 0, y = 0 }) => [id, { x: tenth(x), y: tenth(y) }])),
    sizes: Object.fromEntries(
      children.map(({ id, width: w = 0, height: h = 0 }) => [id, { width: tenth(w), height: tenth(h) }]),
    ),
    edges: Object.fromEntries(edges.map(edge => [edge.id, { points: pointsOf(edge), label: labelOf(edge) }])),
  }
}

function pointsOf({ sections = [] }: ElkExtendedEdge): Point[] {
  const along = ({ startPoint, bendPoints = [], endPoint }: ElkEdgeSection): Point[] => [
    startPoint,
    ...bendPoints,
    endPoint,
  ]
  return sections.flatMap(along).map(({ x, y }) => ({ x: tenth(x), y: tenth(y) }))
}

function labelOf({ labels = [] }: ElkExtendedEdge): Point | null {
  const [label] = labels
  return label === undefined ? null : { x: tenth(label.x ?? 0), y: tenth(label.y ?? 0) }
}
