import type { BlockContent, DefinitionContent } from 'mdast'
import type { Parent, Position } from 'unist'

/** `:::connector{#stalk-switch mates="column-loom"}` around a pin table. */
export interface ConnectorNode extends Parent {
  type: 'connector'
  id: string | null
  mates: string | null
  name: string | null
  rating: string | null
  children: (BlockContent | DefinitionContent)[]
  attributePositions: Record<string, Position>
}

declare module 'mdast' {
  interface BlockContentMap {
    connector: ConnectorNode
  }
  interface RootContentMap {
    connector: ConnectorNode
  }
}
