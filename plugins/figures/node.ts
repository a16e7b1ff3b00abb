import type { Image } from 'mdast'
import type { Parent } from 'unist'

/** A picture that stands alone in its paragraph; the title is its caption. */
export interface FigureNode extends Parent {
  type: 'figure'
  caption: string | null
  children: [Image]
}

declare module 'mdast' {
  interface BlockContentMap {
    figure: FigureNode
  }
  interface RootContentMap {
    figure: FigureNode
  }
}
