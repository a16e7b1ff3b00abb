import type { Nodes, Parents } from 'mdast'

/** From the root to a node's parent, and the place of each in its own parent's list; one live object, to be read at once. */
export interface Path {
  readonly ancestors: readonly Parents[]
  /** `indexes[depth]`: which child of `ancestors[depth]` the path goes through. */
  readonly indexes: readonly number[]
}

/** Called for each node before its children. */
export type Visit = (node: Nodes, path: Path) => 'skip' | undefined

export function isParent(node: Nodes): node is Parents {
  return 'children' in node
}

/** Visits each node in the order of the text. Without recursion, so that no depth of nesting overflows the stack. */
export function walk(tree: Nodes, visit: Visit): void {
  const ancestors: Parents[] = []
  const indexes: number[] = []
  const path: Path = { ancestors, indexes }
  const enter = (node: Nodes): void => {
    if (visit(node, path) === 'skip' || !isParent(node)) return
    ancestors.push(node)
    indexes.push(-1)
  }
  enter(tree)
  for (let parent = ancestors.at(-1); parent !== undefined; parent = ancestors.at(-1)) {
    const index = (indexes.at(-1) ?? 0) + 1
    const child = parent.children[index]
    indexes[indexes.length - 1] = index
    if (child !== undefined) enter(child)
    else {
      ancestors.pop()
      indexes.pop()
    }
  }
}

/** What stands in a node's place, or null to leave it. */
export type Change = (node: Nodes, parent: Parents) => readonly Nodes[] | null

/** Replaces nodes, the innermost first, each parent's list in one pass. */
export function rewrite(tree: Nodes, change: Change): void {
  const parents: Parents[] = []
  walk(tree, node => {
    if (isParent(node)) parents.push(node)
    return undefined
  })
  for (const parent of parents.reverse()) rewriteChildren(parent, change)
}

function rewriteChildren(parent: Parents, change: Change): void {
  const next: Nodes[] = []
  let changed = false
  for (const child of parent.children) {
    const instead = change(child, parent)
    if (instead === null) next.push(child)
    else {
      changed = true
      for (const node of instead) next.push(node)
    }
  }
  if (changed) setChildren(parent, next)
}

/** The one place where a list of nodes becomes a parent's children: each caller answers for what may stand in it. */
export function setChildren(parent: Parents, children: readonly Nodes[]): void {
  const open = parent as { children: readonly Nodes[] }
  open.children = children
}
