import { type Graph, meetsAt, type Placing, type Size, sizeOfLabel, sizeOfNode } from './graph.ts'
import type { Point } from './svg.ts'

/** Between a box's own name and which of its copies it is. */
export const copyMark = '\n'

const edgeOfSheet = 10
const between = 20 // from one drawn line to the next
const widestRow = 860 // as wide as a page shows at once

/** The plain drawing: each line by itself between its two boxes, from the upper to the lower. It takes no time at any size. */
export function placeInRows({ nodes, edges }: Graph): Placing {
  const known = new Map(nodes.map(node => [node.id, { node, size: sizeOfNode(node) }]))
  const at: { nodes: Record<string, Point>; edges: Record<string, { points: Point[]; label: Point }> } = {
    nodes: {},
    edges: {},
  }
  const drawn = edges.filter(({ from, to }) => known.has(from) && known.has(to))
  const row = { x: edgeOfSheet, y: edgeOfSheet, height: 0, width: 0 }
  const advance = (size: Size): Point => {
    if (row.x > edgeOfSheet && row.x + size.width > widestRow)
      Object.assign(row, { x: edgeOfSheet, y: row.y + row.height + between, height: 0 })
    const here = { x: row.x, y: row.y }
    Object.assign(row, {
      x: row.x + size.width + between,
      height: Math.max(row.height, size.height),
      width: Math.max(row.width, row.x + size.width),
    })
    return here
  }
  for (const edge of drawn) {
    const [from, to] = [known.get(edge.from), known.get(edge.to)]
    if (from === undefined || to === undefined) continue
    const label = sizeOfLabel(edge)
    const run = label.height + 20
    const line = Math.max(meetsAt(from.node), meetsAt(to.node))
    const right = Math.max(from.size.width - meetsAt(from.node), to.size.width - meetsAt(to.node), label.width + 10)
    const here = advance({ width: line + right, height: from.size.height + run + to.size.height })
    const [x, top] = [here.x + line, here.y + from.size.height]
    at.nodes[`${edge.from}${copyMark}${edge.id} out`] = { x: x - meetsAt(from.node), y: here.y }
    at.nodes[`${edge.to}${copyMark}${edge.id} in`] = { x: x - meetsAt(to.node), y: top + run }
    at.edges[edge.id] = {
      points: [
        { x, y: top },
        { x, y: top + run },
      ],
      label: { x: x + 8, y: top + 8 },
    }
  }
  for (const [id, { size }] of known)
    if (!drawn.some(({ from, to }) => from === id || to === id)) at.nodes[id] = advance(size)
  return { width: row.width + edgeOfSheet, height: row.y + row.height + edgeOfSheet, sizes: {}, ...at }
}
