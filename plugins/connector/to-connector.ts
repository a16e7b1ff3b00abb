import type { Nodes, Paragraph } from 'mdast'
import type { ContainerDirective } from 'mdast-util-directive'
import { attributePositions } from '../tree/directive-source.ts'
import { type Source, spanOf } from '../tree/source.ts'
import { lineOf } from '../tree/text-of.ts'
import { setChildren } from '../tree/walk.ts'
import type { ConnectorNode } from './node.ts'

/** The container as a `connector`; the words of `:::connector[words]` are its name where no other is given, and stay a paragraph. */
export function toConnector(directive: ContainerDirective, source: Source): ConnectorNode {
  const span = spanOf(directive)
  const attributes = directive.attributes ?? {}
  const label = directive.children.find(isLabel)
  const node: ConnectorNode = {
    type: 'connector',
    id: attributes.id || null,
    mates: attributes.mates || null,
    name: attributes.name || (label === undefined ? null : lineOf(label)) || null,
    rating: attributes.rating || null,
    children: [],
    attributePositions: span === null ? {} : attributePositions(source, span),
    ...(directive.position && { position: directive.position }),
  }
  setChildren(
    node,
    directive.children.map(child => (isLabel(child) ? withoutMark(child) : child)),
  )
  return node
}

function isLabel(node: Nodes): node is Paragraph {
  return node.type === 'paragraph' && node.data?.directiveLabel === true
}

function withoutMark({ data: _, ...label }: Paragraph): Paragraph {
  return label
}
