import type { AsBuiltRecord } from '../record/record.ts'
import { type Circuit, type Fuse, isThere } from './circuit.ts'
import { hasWay } from './circuit-doubts.ts'
import { fuseColour } from './fuse-colours.ts'
import { endName } from './standing.ts'

export interface FuseWay {
  readonly way: string
  readonly circuits: readonly Circuit[]
  /** The ratings as written, each once: one where all agree. */
  readonly ratings: readonly string[]
  /** What colour the fuses of these ratings have, each once. */
  readonly colours: readonly string[]
  readonly state: 'used' | 'spare' | 'shared' | 'no such way'
}

/** A fuse box as it stands before one who lifts its lid. */
export interface FuseBoxSheet {
  readonly id: string
  readonly name: string
  readonly ways: readonly FuseWay[]
  readonly spare: number
  /** Circuits that name the box and no way. */
  readonly unplaced: readonly Circuit[]
}

/** Every fuse box way by way, spare ways too. */
export function listFuseBoxes(record: AsBuiltRecord, circuits: readonly Circuit[]): FuseBoxSheet[] {
  const there = circuits.filter(isThere)
  const known = (ids: readonly string[]): Circuit[] => there.filter(({ id }) => ids.includes(id))
  return record.fuseBoxes.map(box => {
    const ways = box.used.map(({ way, circuits: ids }): FuseWay => {
      const here = known(ids)
      const ratings = [...new Set(here.flatMap(({ fuse }) => fuse?.rating?.value.text ?? []))]
      const colours = [...new Set(here.flatMap(({ fuse }) => colourOf(fuse) ?? []))]
      return { way, circuits: here, ratings, colours, state: stateOf(here.length, hasWay(box.ways, way)) }
    })
    return {
      id: box.id,
      name: endName(record, box.id),
      ways,
      spare: ways.filter(({ state }) => state === 'spare').length,
      unplaced: known(box.unplaced),
    }
  })
}

const colourOf = (fuse: Fuse | null): string | null =>
  fuse?.rating == null ? null : fuseColour(fuse.rating.value, fuse.type)

function stateOf(circuits: number, exists: boolean): FuseWay['state'] {
  if (!exists) return 'no such way'
  if (circuits === 0) return 'spare'
  return circuits === 1 ? 'used' : 'shared'
}
