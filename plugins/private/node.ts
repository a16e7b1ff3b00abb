import type { BlockContent, DefinitionContent, PhrasingContent } from 'mdast'
import type { Parent } from 'unist'

export type PrivateKind = 'cost' | 'source' | 'people' | 'place' | 'identity'

/** `:private[the plate]{as=identity}`: words that an edition may have to leave out. */
export interface PrivateNode extends Parent {
  type: 'private'
  as: PrivateKind
  children: PhrasingContent[]
}

/** `:::private{as=place}` around blocks; `broken` where a mark in it did not parse: withheld from every edition but full. */
export interface PrivateBlockNode extends Parent {
  type: 'privateBlock'
  as: PrivateKind | 'broken'
  children: (BlockContent | DefinitionContent)[]
}

declare module 'mdast' {
  interface PhrasingContentMap {
    private: PrivateNode
  }
  interface BlockContentMap {
    privateBlock: PrivateBlockNode
  }
  interface RootContentMap {
    private: PrivateNode
    privateBlock: PrivateBlockNode
  }
}
