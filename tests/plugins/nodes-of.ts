import type { Nodes } from 'mdast'

type NodeOf<Type extends Nodes['type']> = Extract<Nodes, { type: Type }>

/** All nodes of a type, in the order of the text. */
export function nodesOf<Type extends Nodes['type']>(tree: Nodes, type: Type): NodeOf<Type>[] {
  const own = tree.type === type ? [tree as NodeOf<Type>] : []
  return 'children' in tree ? [...own, ...tree.children.flatMap(child => nodesOf(child, type))] : own
}

/** The first node of a type; a test that expects one fails without it. */
export function nodeOf<Type extends Nodes['type']>(tree: Nodes, type: Type): NodeOf<Type> {
  const [first] = nodesOf(tree, type)
  if (first === undefined) throw new Error(`Unexpected tree without \`${type}\``)
  return first
}

/** A tree in one line a node: type, what it says, and whether it is withheld. */
export function outline(node: Nodes, depth = 0): string[] {
  const said = 'value' in node ? ` ${JSON.stringify(node.value)}` : 'as' in node ? ` ${node.as}` : ''
  const children: readonly Nodes[] = 'children' in node ? node.children : []
  return [`${'  '.repeat(depth)}${node.type}${said}`, ...children.flatMap(child => outline(child, depth + 1))]
}
