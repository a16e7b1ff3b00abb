import type { Nodes, Parents } from 'mdast'
import type { PrivateBlockNode } from '../private/node.ts'
import { type Path, setChildren } from './walk.ts'

/** Neighbouring blocks of one parent, from `first` to `last`, both included. */
export interface BlockRange {
  readonly parent: Parents
  readonly first: number
  readonly last: number
}

const holdsBlocks = new Set<string>([
  'root',
  'blockquote',
  'listItem',
  'footnoteDefinition',
  'containerDirective',
  'connector',
  'privateBlock',
])

/** The block in which a node stands: the one that its innermost container holds directly. */
export function blockOf({ ancestors, indexes }: Path): BlockRange | null {
  for (let depth = ancestors.length - 1; depth >= 0; depth--) {
    const parent = ancestors[depth]
    const index = indexes[depth]
    if (parent !== undefined && index !== undefined && holdsBlocks.has(parent.type))
      return { parent, first: index, last: index }
  }
  return null
}

/** Wraps blocks so that every edition but the full one leaves them out; ranges that meet become one. */
export function withholdBlocks(ranges: readonly BlockRange[]): void {
  const byParent = new Map<Parents, BlockRange[]>()
  for (const range of ranges) {
    const own = byParent.get(range.parent)
    if (own === undefined) byParent.set(range.parent, [range])
    else own.push(range)
  }
  for (const [parent, own] of byParent) setChildren(parent, wrapped(parent.children, merged(own)))
}

function merged(ranges: readonly BlockRange[]): { first: number; last: number }[] {
  const joined: { first: number; last: number }[] = []
  for (const { first, last } of ranges.toSorted((a, b) => a.first - b.first || a.last - b.last)) {
    const before = joined.at(-1)
    if (before !== undefined && first <= before.last) before.last = Math.max(before.last, last)
    else joined.push({ first, last })
  }
  return joined
}

function wrapped(children: readonly Nodes[], ranges: readonly { first: number; last: number }[]): Nodes[] {
  const next: Nodes[] = []
  let from = 0
  for (const { first, last } of ranges) {
    for (const child of children.slice(from, first)) next.push(child)
    next.push(broken(children.slice(first, last + 1)))
    from = last + 1
  }
  for (const child of children.slice(from)) next.push(child)
  return next
}

function broken(children: readonly Nodes[]): PrivateBlockNode {
  const start = children[0]?.position?.start
  const end = children.at(-1)?.position?.end
  const block: PrivateBlockNode = { type: 'privateBlock', as: 'broken', children: [] }
  if (start !== undefined && end !== undefined) block.position = { start, end }
  setChildren(block, children)
  return block
}
