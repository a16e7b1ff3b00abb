import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import { plainReading, type ReadOptions } from '../../src/quantities/quantity.ts'
import { type Figure, putFigures, readFigures } from '../tree/figures.ts'
import { inlineRuns } from '../tree/inline-run.ts'
import { reportDoubts } from '../tree/report-doubts.ts'
import { sourceOf } from '../tree/source.ts'
import { numberGroups } from './number-groups.ts'

export type { QuantityNode } from './node.ts'

/** Puts a `quantity` node in the place of each figure in prose; what is doubtful becomes a message and stays text. */
const quantities: Plugin<[Partial<ReadOptions>?], Root> = options => (tree, file) => {
  const source = sourceOf(file)
  const figures: Figure[] = []
  for (const run of inlineRuns(tree, source)) {
    if (run.parent.type === 'measure') continue // Read by the plugin that made it.
    const read = readFigures(run, source, { ...plainReading, ...options })
    for (const figure of read.figures) figures.push(figure)
    reportDoubts(file, read.doubts)
  }
  putFigures(tree, source, numberGroups(figures, tree))
}

export default quantities
