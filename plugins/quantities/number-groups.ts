import type { Root } from 'mdast'
import type { Quantity } from '../../src/quantities/quantity.ts'
import type { Figure } from '../tree/figures.ts'
import { walk } from '../tree/walk.ts'

/** Numbers groups through the whole note: the reader begins at 1 in each paragraph. */
export function numberGroups(figures: readonly Figure[], tree: Root): Figure[] {
  const count = { groups: takenGroups(tree) }
  let parent: unknown = null
  let given = new Map<number, number>()
  return figures.map(figure => {
    if (figure.run !== parent) given = new Map()
    parent = figure.run
    return { ...figure, quantity: renumbered(figure.quantity, given, count) }
  })
}

function renumbered(quantity: Quantity, given: Map<number, number>, count: { groups: number }): Quantity {
  if (quantity.group === null) return quantity
  const group = given.get(quantity.group) ?? ++count.groups
  given.set(quantity.group, group)
  return { ...quantity, group }
}

/** Groups in figures that another plugin put there before. */
function takenGroups(tree: Root): number {
  let highest = 0
  walk(tree, node => {
    if (node.type === 'quantity') highest = Math.max(highest, node.quantity.group ?? 0)
    return undefined
  })
  return highest
}
