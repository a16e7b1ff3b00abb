import type { AsBuiltRecord } from '../record/record.ts'
import type { Circuit } from './circuit.ts'
import type { Cut } from './cut-list.ts'
import { type FuseBoxSheet, listFuseBoxes } from './fuse-ways.ts'
import { listCircuits } from './list-circuits.ts'
import { type Loom, listLooms } from './looms.ts'
import { type Pair, pairConnectors } from './pair-connectors.ts'

/** The wiring of a record as those who cut, crimp and follow it need it. */
export interface Wiring {
  readonly record: AsBuiltRecord
  /** In the order of their wire numbers. */
  readonly circuits: readonly Circuit[]
  readonly fuseBoxes: readonly FuseBoxSheet[]
  readonly pairs: readonly Pair[]
  readonly looms: readonly Loom[]
  /** Wires that run in no loom. */
  readonly loose: readonly Cut[]
}

/** Reads it all, once for a record. */
export function readWiring(record: AsBuiltRecord): Wiring {
  const circuits = listCircuits(record)
  return {
    record,
    circuits,
    fuseBoxes: listFuseBoxes(record, circuits),
    pairs: pairConnectors(record),
    ...listLooms(record, circuits),
  }
}
