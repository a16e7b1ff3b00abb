import type { Literal } from 'unist'
import type { Quantity } from '../../src/quantities/quantity.ts'

/** A figure in prose. `value` is the text as written; `position` is exact in the file. */
export interface QuantityNode extends Literal {
  type: 'quantity'
  value: string
  quantity: Quantity
  /** `q-4`: given when all figures of the note are counted. */
  id?: string
}

declare module 'mdast' {
  interface PhrasingContentMap {
    quantity: QuantityNode
  }
  interface RootContentMap {
    quantity: QuantityNode
  }
}
