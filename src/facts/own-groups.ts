import type { Root } from 'mdast'
import type { Reading } from '../quantities/quantity.ts'
import { figuresIn } from './figures-in.ts'
import type { Sheet } from './sheet.ts'

/** Lengths that belong together, under a number that no other lengths of the note have: each text counts its groups from 1. */
export function withOwnGroups(sheet: Sheet, readings: readonly Reading[]): Reading[] {
  const given = new Map<number, number>()
  return readings.map(reading => {
    const { quantity } = reading
    if (quantity.group === null) return reading
    const group = given.get(quantity.group) ?? sheet.groups.last + 1
    sheet.groups.last = Math.max(sheet.groups.last, group)
    given.set(quantity.group, group)
    return { ...reading, quantity: { ...quantity, group } }
  })
}

/** The highest group that the body of a note has. */
export function lastGroup(body: Root): number {
  return figuresIn([body]).reduce((last, { quantity }) => Math.max(last, quantity.group ?? 0), 0)
}
