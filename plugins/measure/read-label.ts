import type { VFile } from 'vfile'
import { plainReading, type ReadOptions } from '../../src/quantities/quantity.ts'
import { putFigures, readFigures } from '../tree/figures.ts'
import { runOf } from '../tree/inline-run.ts'
import { fillPositions } from '../tree/missing-positions.ts'
import { report } from '../tree/report.ts'
import { reportDoubts } from '../tree/report-doubts.ts'
import type { Source } from '../tree/source.ts'
import { lineOf } from '../tree/text-of.ts'
import { walk } from '../tree/walk.ts'
import type { MeasureNode } from './node.ts'

interface Reading {
  readonly source: Source
  readonly quotes: number
  readonly options: Partial<ReadOptions> | undefined
}

/** A ratio or a count: whether its property has a unit is not known here. */
const bareNumber = /^[+\-−]?\d[\d.,/\s]*$/u

/** Puts the figure of the label into it, or says that the label holds none, or more than one. */
export function readLabel(node: MeasureNode, file: VFile, { source, quotes, options }: Reading): void {
  fillPositions(node, source)
  const written = lineOf(node)
  const { figures, doubts } = readFigures(runOf(node, quotes), source, { ...plainReading, ...options })
  putFigures(node, source, figures)
  reportDoubts(file, doubts)
  const count = countFigures(node)
  if (count === 1 || (count === 0 && (doubts.length > 0 || bareNumber.test(written)))) return
  report(file, {
    rule: 'not-a-quantity',
    place: node.position,
    reason: `Unexpected ${count === 0 ? '' : `${count} quantities in `}\`${written}\`, expected one quantity such as \`860 mm\``,
    actual: written,
  })
}

function countFigures(node: MeasureNode): number {
  let count = 0
  walk(node, inner => {
    if (inner.type === 'quantity') count++
    return undefined
  })
  return count
}
