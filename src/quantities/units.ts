import { type Unit, unit } from './unit.ts'
import { electricsUnits } from './unit-table-electrics.ts'
import { mechanicsUnits } from './unit-table-mechanics.ts'
import { motionUnits } from './unit-table-motion.ts'
import { rarerUnits } from './unit-table-rarer.ts'
import { spaceUnits } from './unit-table-space.ts'

/** Every unit that is read and printed; money stands apart, since its units are currencies. */
export const units: readonly Unit[] = [
  ...spaceUnits,
  ...motionUnits,
  ...mechanicsUnits,
  ...electricsUnits,
  ...rarerUnits,
]

const byId = new Map(units.map(one => [one.id, one]))
const made = new Map(units.flatMap(one => one.made.map(parts => [parts, one.id] as const)))

/** The unit of an identifier, `money:GBP` included; null where there is none. */
export function findUnit(id: string): Unit | null {
  const known = byId.get(id)
  if (known !== undefined) return known
  if (!/^money:[A-Z]{3}$/.test(id)) return null
  const money = unit(`${id} = ${id.slice(6)}`, 'money', { factor: '1', scale: 'none', source: 'ISO 4217' })
  byId.set(id, money)
  return money
}

/** The unit of an identifier that the program itself wrote down; an unknown one is a fault of ours. */
export function unitOf(id: string): Unit {
  const found = findUnit(id)
  if (found === null) throw new Error(`Unexpected unit \`${id}\`, expected an identifier of the unit table`)
  return found
}

/** The unit made of others, such as `L/h` or `lbf·ft`. */
export const findMadeUnit = (parts: string): string | null => made.get(parts) ?? null

const firstParts = new Set(['gal', ...[...made.keys()].map(parts => /^\w+/.exec(parts)?.[0] ?? '')])

/** Whether a unit may be the first part of a made one. */
export const mayLeadMadeUnit = (id: string): boolean => firstParts.has(id)
