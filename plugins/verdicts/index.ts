import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import type { Use } from './node.ts'
import { putUses } from './put-uses.ts'

export type { Use } from './node.ts'

export interface VerdictsOptions {
  /** By the identifier of the figure (`q-4`): what used it, in the order to be shown. */
  readonly uses: Readonly<Record<string, readonly Use[]>>
}

/** Puts beside each block what used the figures in it, and how that came out. */
const verdicts: Plugin<[VerdictsOptions], Root> =
  ({ uses }) =>
  tree =>
    putUses(tree, uses)

export default verdicts
