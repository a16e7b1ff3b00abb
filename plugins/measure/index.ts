import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import type { ReadOptions } from '../../src/quantities/quantity.ts'
import { quotesIn } from '../tree/missing-positions.ts'
import { reportAttributes } from '../tree/report-attributes.ts'
import { sourceOf } from '../tree/source.ts'
import { rewrite, walk } from '../tree/walk.ts'
import type { MeasureNode } from './node.ts'
import { readLabel } from './read-label.ts'
import { toMeasure } from './to-measure.ts'

export type { MeasureNode } from './node.ts'

/** `:measure[860 mm]{of="fuel-tank/length"}` becomes a `measure` node that holds the figure of its label. */
const measure: Plugin<[Partial<ReadOptions>?], Root> = options => (tree, file) => {
  const source = sourceOf(file)
  rewrite(tree, node => {
    if (node.type !== 'textDirective' || node.name !== 'measure') return null
    const made = toMeasure(node, source)
    reportAttributes(file, node, { known: ['of', 'with', 'note', 'supersedes'], positions: made.attributePositions })
    return [made]
  })
  const found: { node: MeasureNode; quotes: number }[] = []
  walk(tree, (node, { ancestors }) => {
    if (node.type === 'measure') found.push({ node, quotes: quotesIn(ancestors) })
    return undefined
  })
  for (const { node, quotes } of found) readLabel(node, file, { source, quotes, options })
}

export default measure
