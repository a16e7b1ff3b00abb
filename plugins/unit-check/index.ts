import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import { type Dimension, plainReading, type ReadOptions } from '../../src/quantities/quantity.ts'
import { readFigures } from '../tree/figures.ts'
import { inlineRuns } from '../tree/inline-run.ts'
import { reportDoubts } from '../tree/report-doubts.ts'
import { sourceOf } from '../tree/source.ts'
import { checkDimensions } from './check-dimensions.ts'
import { notYetTold, placesOf } from './not-yet-told.ts'

export interface UnitCheckOptions extends Partial<ReadOptions> {
  /** The dimension of each property that `:measure[…]{of="thing/property"}` may name. */
  readonly properties?: Readonly<Record<string, Dimension>>
}

/** Reports doubtful units, decimal marks and dimensions, and changes nothing: a linter for the figures of any Markdown. */
const unitCheck: Plugin<[UnitCheckOptions?], Root> =
  (options = {}) =>
  (tree, file) => {
    const source = sourceOf(file)
    const told = placesOf(file)
    for (const run of inlineRuns(tree, source)) {
      const { doubts } = readFigures(run, source, { ...plainReading, ...options })
      reportDoubts(file, notYetTold(doubts, told))
    }
    checkDimensions(tree, file, {
      properties: options.properties ?? {},
      source,
      reading: { ...plainReading, ...options },
    })
  }

export default unitCheck
