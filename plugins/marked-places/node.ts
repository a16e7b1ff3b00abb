import type { Node } from 'unist'

/** `:mark[2]{at="40%,25%"}`: a number that names a point on the picture beside it. */
export interface MarkedPlaceNode extends Node {
  type: 'markedPlace'
  /** The number as it reads among words: `(2)`. */
  value: string
  number: number
  /** Where the point lies, from the left and from the top, in per cent of the picture as it is shown; null where an earlier mark says it. */
  at: { readonly left: number; readonly top: number } | null
  /** `data.picture` of the picture on which it lies; null where there is none. */
  picture: number | null
}

declare module 'mdast' {
  interface PhrasingContentMap {
    markedPlace: MarkedPlaceNode
  }
  interface RootContentMap {
    markedPlace: MarkedPlaceNode
  }
  interface ImageData {
    /** Tells pictures that bear marks apart. */
    picture?: number
  }
}
