import type { Nodes, Root } from 'mdast'
import type {} from '../../plugins/marked-places/node.ts'
import { joinMarks, markAt } from './mark-nodes.ts'

/** A marked place goes with its picture: where the picture is taken out, its number and where the point lies are. */
export function dropLostMarks(covered: Root, dropped: (node: Nodes) => void): Root {
  const shown = new Set<number>()
  const gather = (node: Nodes): void => {
    if (node.type === 'image' && node.data?.picture !== undefined) shown.add(node.data.picture)
    if ('children' in node) node.children.forEach(gather)
  }
  gather(covered)
  const without = (node: Nodes): Nodes => {
    if (node.type === 'markedPlace' && node.picture !== null && !shown.has(node.picture)) {
      dropped(node)
      return markAt(node.position)
    }
    return 'children' in node
      ? ({ ...node, children: joinMarks(node.children.map(without)) } as unknown as Nodes)
      : node
  }
  return without(covered) as Root
}
