import type { Nodes, Root } from 'mdast'
import type { VFile } from 'vfile'
import type { Dimension, Quantity, ReadOptions } from '../../src/quantities/quantity.ts'
import { readFigures } from '../tree/figures.ts'
import { runOf } from '../tree/inline-run.ts'
import { report } from '../tree/report.ts'
import type { Source } from '../tree/source.ts'
import { isParent, walk } from '../tree/walk.ts'

interface DimensionCheck {
  readonly properties: Readonly<Record<string, Dimension>>
  readonly source: Source
  readonly reading: ReadOptions
}

/** Tells of each `:measure` whose figure has another dimension than its property. */
export function checkDimensions(tree: Root, file: VFile, check: DimensionCheck): void {
  walk(tree, node => {
    const path = measuredPath(node)
    const property = path?.split('/').at(-1) ?? ''
    const expected = Object.hasOwn(check.properties, property) ? check.properties[property] : undefined
    const quantity = expected === undefined ? null : firstQuantity(node, check)
    if (expected === undefined || quantity === null || quantity.dimension === expected) return undefined
    report(file, {
      rule: 'dimension',
      place: node.position,
      reason: `Unexpected ${quantity.dimension} \`${quantity.text}\` for \`${path}\`, expected a ${expected}`,
      actual: quantity.text,
    })
    return undefined
  })
}

/** The `of=` of a measure, whether it is still a directive or already a node of its own. */
function measuredPath(node: Nodes): string | null {
  if (node.type === 'measure') return node.of
  return node.type === 'textDirective' && node.name === 'measure' ? (node.attributes?.of ?? null) : null
}

function firstQuantity(node: Nodes, { source, reading }: DimensionCheck): Quantity | null {
  let first: Quantity | null = null
  walk(node, inner => {
    if (inner.type === 'quantity') first ??= inner.quantity
    return undefined
  })
  if (first !== null || !isParent(node)) return first
  return readFigures(runOf(node, 0), source, reading).figures[0]?.quantity ?? null
}
