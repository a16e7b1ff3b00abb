import type { Nodes } from 'mdast'
import type { QuantityNode } from '../../plugins/quantities/node.ts'

/** The figures in nodes, in the order of the text. */
export function figuresIn(nodes: readonly Nodes[]): QuantityNode[] {
  return nodes.flatMap(node => (node.type === 'quantity' ? [node] : 'children' in node ? figuresIn(node.children) : []))
}
