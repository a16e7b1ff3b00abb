import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import { attributePositions } from '../tree/directive-source.ts'
import { isDirective, whatPrivateLacks } from '../tree/private-mark.ts'
import { report } from '../tree/report.ts'
import { reportAttributes } from '../tree/report-attributes.ts'
import { sourceOf, spanOf } from '../tree/source.ts'
import { rewrite, walk } from '../tree/walk.ts'
import { type BlockRange, blockOf, withholdBlocks } from '../tree/withhold-blocks.ts'
import { toPrivate } from './to-private.ts'

export type { PrivateBlockNode, PrivateKind, PrivateNode } from './node.ts'

/** `:private[…]{as=…}` and `:::private{as=…}` become `private` and `privateBlock`; one that says too little fails closed. */
const privateMarks: Plugin<[], Root> = () => (tree, file) => {
  const source = sourceOf(file)
  const failed: BlockRange[] = []
  walk(tree, (node, path) => {
    const reason = isDirective(node) && node.name === 'private' ? whatPrivateLacks(node) : null
    if (reason === null) return undefined
    report(file, { rule: 'directive', place: node.position, reason })
    const block = blockOf(path)
    if (block !== null) failed.push(block)
    return undefined
  })
  withholdBlocks(failed)
  rewrite(tree, node => {
    const mark = isDirective(node) && node.name === 'private' ? toPrivate(node) : null
    if (mark === null || !isDirective(node)) return null
    const span = spanOf(node)
    reportAttributes(file, node, { known: ['as'], positions: span === null ? {} : attributePositions(source, span) })
    return [mark]
  })
}

export default privateMarks
