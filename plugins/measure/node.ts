import type { PhrasingContent } from 'mdast'
import type { Parent, Position } from 'unist'

/** `:measure[860 mm]{of="fuel-tank/length" with="steel tape"}`: names the figure in its label. */
export interface MeasureNode extends Parent {
  type: 'measure'
  of: string | null
  with: string | null
  note: string | null
  supersedes: boolean
  children: PhrasingContent[]
  /** Where each attribute's value stands, where it is known. */
  attributePositions: Record<string, Position>
}

declare module 'mdast' {
  interface PhrasingContentMap {
    measure: MeasureNode
  }
  interface RootContentMap {
    measure: MeasureNode
  }
}
