import {
  fuseWidth,
  type Graph,
  type GraphEdge,
  type GraphNode,
  headOf,
  type Placing,
  type Size,
  sizeOfNode,
} from './graph.ts'
import { copyMark, placeInRows } from './place-in-rows.ts'
import {
  byChassis,
  type DrawingLinks,
  drawing,
  leading,
  letters,
  type Point,
  rectangle,
  stroke,
  tag,
  type WiringDrawing,
  wire,
} from './svg.ts'
import { symbol } from './symbols.ts'

/** A graph where it was placed; without a placing, each line by itself in a row. */
export function drawGraph(graph: Graph, placing: Placing | null, links: DrawingLinks): WiringDrawing {
  const placed = placing ?? placeInRows(graph)
  const known = new Map(graph.nodes.map(node => [node.id, node]))
  const boxes = Object.entries(placed.nodes).flatMap(([key, at]) => {
    const node = known.get(key.split(copyMark)[0] ?? key)
    return node === undefined ? [] : [drawNode(node, { at, size: placed.sizes[key] ?? sizeOfNode(node), links })]
  })
  const title = placing === null ? `${graph.title}, line by line` : graph.title
  const says = graph.edges.map(edge => edge.says)
  return drawing({ width: placed.width, height: placed.height, look: 'wd-graph', title, says }, [
    ...graph.edges.map(edge => drawEdge(edge, placed.edges[edge.id], links)),
    ...boxes,
  ])
}

interface Frame {
  readonly at: Point
  readonly size: Size
}

function drawNode(node: GraphNode, { at, size, links }: Frame & { links: DrawingLinks }): string {
  const href = node.leads === null ? null : links[node.leads.kind](node.leads.id)
  return leading(
    href,
    node.lines.join(' '),
    ...(node.look === 'fuse' ? drawFuse(node, at) : drawBox(node, { at, size })),
  )
}

/** Upright on its wire, its rating beside it. */
function drawFuse({ lines }: GraphNode, at: Point): string[] {
  const x = at.x + fuseWidth / 2
  const around = rectangle('frame-of of-fuse', { x: x - 8, y: at.y + 8 }, { width: 16, height: 32 })
  const words = lines.map((text, index) => letters('', { x: at.x + fuseWidth, y: at.y + 29 + index * 17 }, text))
  return [tag('g', { class: 'dev' }, around, stroke('thin', `M${x} ${at.y}V${at.y + 48}`)), ...words]
}

function drawBox(node: GraphNode, { at, size }: Frame): string[] {
  const { look } = node
  const centre = at.x + size.width / 2
  const first = at.y + headOf(look) + 19 + (size.height - sizeOfNode(node).height) / 2
  const words = node.lines.map((text, index) => letters('mid', { x: centre, y: first + index * 17 }, text))
  if (look === 'box' || look === 'rail' || look === 'stop')
    return [rectangle(`frame-of of-${look}`, at, size), ...words]
  return [rectangle('frame-of of-symbol', at, size), symbol(look, { x: centre, y: first - 36 }), ...words]
}

function drawEdge(edge: GraphEdge, placed: Placing['edges'][string] | undefined, links: DrawingLinks): string {
  if (placed === undefined) return ''
  const { points, label } = placed
  const line =
    edge.wire === 'chassis' ? byChassis(points) : edge.wire === 'bundle' ? bundle(points) : wire(points, edge.wire)
  const words =
    label === null
      ? []
      : edge.lines.map((text, index) => letters('wl', { x: label.x + 4, y: label.y + 14 + index * 17 }, text))
  return leading(edge.circuit === null ? null : links.circuit(edge.circuit), edge.says, line, ...words)
}

function bundle(points: readonly Point[]): string {
  const d = points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`).join('')
  return tag('g', { class: 'wire' }, stroke('bundle', d))
}
