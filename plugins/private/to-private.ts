import type { Nodes, Paragraph } from 'mdast'
import { type DirectiveNode, privateKindOf, whatPrivateLacks } from '../tree/private-mark.ts'
import { setChildren } from '../tree/walk.ts'
import type { PrivateBlockNode, PrivateNode } from './node.ts'

/** The mark as a node of ours; null where it cannot be read. */
export function toPrivate(mark: DirectiveNode): PrivateNode | PrivateBlockNode | null {
  const as = privateKindOf(mark)
  if (as === null || whatPrivateLacks(mark) !== null || mark.type === 'leafDirective') return null
  const place = mark.position === undefined ? {} : { position: mark.position }
  if (mark.type === 'textDirective') return { type: 'private', as, children: mark.children, ...place }
  const block: PrivateBlockNode = { type: 'privateBlock', as, children: [], ...place }
  setChildren(block, mark.children.map(plainLabel))
  return block
}

/** The words of `:::private[words]` are a paragraph like any other. */
function plainLabel(child: Nodes): Nodes {
  if (child.type !== 'paragraph' || child.data?.directiveLabel !== true) return child
  const { data: _, ...label }: Paragraph = child
  return label
}
