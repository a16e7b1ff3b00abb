import type { Quantity } from '../quantities/quantity.ts'
import { quantityAt } from '../record/lookups.ts'
import type { AsBuiltRecord, Held, Part, Thing } from '../record/record.ts'
import { bundleDiameterMm, cableDiameterMm } from './bundle-diameter.ts'
import type { Circuit } from './circuit.ts'
import { type Cut, listCuts } from './cut-list.ts'
import { partOf } from './standing.ts'

/** A loom, its wires and how thick it becomes. */
export interface Loom {
  readonly id: string
  readonly name: string
  readonly thing: Thing
  readonly part: Part | null
  readonly members: readonly Circuit[]
  readonly cuts: readonly Cut[]
  /** Over all wires whose section is written; null where none is. */
  readonly bundleMm: number | null
  /** Wires that the bundle leaves out, since their section is not written or beyond the table. */
  readonly notInBundle: number
  readonly sleeve: Held<Quantity> | null
  readonly measured: Held<Quantity> | null
}

/** Every loom, and what runs outside any. */
export function listLooms(record: AsBuiltRecord, circuits: readonly Circuit[]): { looms: Loom[]; loose: Cut[] } {
  const cuts = listCuts(circuits)
  const looms = record.looms.map(thing => loomOf(record, thing, { cuts, circuits }))
  return { looms, loose: cuts.filter(({ wire }) => !looms.some(({ id }) => id === wire.loom)) }
}

function loomOf(
  record: AsBuiltRecord,
  thing: Thing,
  all: { cuts: readonly Cut[]; circuits: readonly Circuit[] },
): Loom {
  const cuts = all.cuts.filter(({ wire }) => wire.loom === thing.id)
  const inside = new Set(cuts.map(({ circuit }) => circuit.id))
  const diameters = cuts.flatMap(({ wire }) => (wire.area === null ? [] : (cableDiameterMm(wire.area.value) ?? [])))
  const part = partOf(record, thing.id)
  const held = (key: string): Held<Quantity> | null =>
    (part === null ? null : quantityAt(part, key)) ?? quantityAt(thing, key)
  return {
    id: thing.id,
    name: thing.name,
    thing,
    part,
    members: all.circuits.filter(({ id }) => inside.has(id)),
    cuts,
    bundleMm: diameters.length === 0 ? null : bundleDiameterMm(diameters),
    notInBundle: cuts.length - diameters.length,
    sleeve: held('sleeve'),
    measured: held('outside-diameter'),
  }
}
