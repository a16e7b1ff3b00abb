/** Something of the record that used a figure: a check, a table, a requirement. */
export interface Use {
  readonly label: string
  /** How it came out; null where nothing was judged. */
  readonly verdict: string | null
  readonly href: string
  readonly text?: string
}

declare module 'mdast' {
  interface Data {
    /** What used the figures of this block. */
    uses?: Use[]
  }
}

declare module '../quantities/node.ts' {
  interface QuantityNode {
    data?: QuantityUse
  }
}

interface QuantityUse {
  used?: boolean
}
