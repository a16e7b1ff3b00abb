import type { Nodes } from 'mdast'
import type {} from '../../plugins/connector/node.ts'
import type {} from '../../plugins/figures/node.ts'
import type {} from '../../plugins/jobs/node.ts'
import type {} from '../../plugins/marked-places/node.ts'
import type {} from '../../plugins/tables/node.ts'
import type {} from '../../plugins/things/node.ts'

/** The words of a node, those of its pictures too. */
export function textOf(node: Nodes): string {
  if ('value' in node) return node.value
  if (isPicture(node)) return node.alt ?? ''
  return 'children' in node ? node.children.map(textOf).join('') : ''
}

export function isPicture(node: Nodes): node is Extract<Nodes, { type: 'image' | 'imageReference' }> {
  return node.type === 'image' || node.type === 'imageReference'
}
