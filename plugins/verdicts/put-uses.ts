import type { Nodes, Root } from 'mdast'
import { type Path, walk } from '../tree/walk.ts'
import type { Use } from './node.ts'

/** Blocks that may have a list beside them; an item of a list has it beside its paragraph, a cell beside its table. */
const blocks = new Set<string>(['paragraph', 'heading', 'table', 'figure'])

/** Marks the used figures, and gives each block the list of what used them, each use once. */
export function putUses(tree: Root, uses: Readonly<Record<string, readonly Use[]>>): void {
  const listed = new Map<Nodes, Map<string, Use>>()
  walk(tree, (node, path) => {
    if (node.type !== 'quantity' || node.id === undefined || !Object.hasOwn(uses, node.id)) return undefined
    const own = uses[node.id] ?? []
    if (own.length === 0) return undefined
    node.data = { ...node.data, used: true }
    const block = blockAround(path)
    const list = listed.get(block) ?? new Map<string, Use>()
    for (const use of own) list.set(JSON.stringify([use.label, use.verdict, use.href, use.text]), use)
    listed.set(block, list)
    return undefined
  })
  for (const [block, list] of listed) block.data = { ...block.data, uses: [...list.values()] }
}

function blockAround({ ancestors }: Path): Nodes {
  const block = ancestors.findLast(ancestor => blocks.has(ancestor.type))
  return block ?? ancestors[0] ?? { type: 'root', children: [] }
}
