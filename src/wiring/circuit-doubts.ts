import type { AsBuiltRecord } from '../record/record.ts'
import type { Circuit } from './circuit.ts'
import { endName } from './standing.ts'

/** What is odd about a circuit as written, one sentence each; empty where nothing is. The checks judge; this only says. */
export function doubtsOf(record: AsBuiltRecord, circuit: Omit<Circuit, 'doubts'>): string[] {
  if (circuit.state === 'removed') return []
  const { load, part, feed, duty } = circuit
  const feedsBox = part?.partKind === 'fuse-box'
  return [
    ...(load === null && !feedsBox ? ['No load is written.'] : []),
    ...(part !== null && !part.onVehicle ? [`It feeds ${part.name}, which is not on the vehicle.`] : []),
    ...(circuit.fuse === null && duty !== 'starting' ? ['No fuse is written.'] : []),
    ...wayDoubts(record, circuit),
    ...(feed.look.ground === 'unknown' ? [`The colour “${feed.look.written}” is not known.`] : []),
    ...(feed.length === null ? ['No length is written: measure before cutting.'] : []),
    ...(circuit.return === 'not written' ? ['No return is written.'] : []),
    ...loopDoubts(record, circuit),
    ...reverseDoubts(circuit),
  ]
}

/** EU lighting directive, text of the tractors' one: a reversing lamp lights only in reverse and with the engine's switch on. */
function reverseDoubts({ name, feeds, supply }: Omit<Circuit, 'doubts'>): string[] {
  const isReversing = /revers|backup lamp|back-up lamp/i.test(`${name} ${feeds ?? ''}`)
  return isReversing && supply === 'battery'
    ? [
        'It is live with the ignition off: EU rules let a reversing lamp light only in reverse gear with the ignition on.',
      ]
    : []
}

function wayDoubts(record: AsBuiltRecord, { id, fuse }: Omit<Circuit, 'doubts'>): string[] {
  if (fuse === null || fuse.box === null) return []
  const box = record.fuseBoxes.find(known => known.id === fuse.box)
  if (box === undefined) return [`There is no fuse box “${fuse.box}”.`]
  const name = endName(record, box.id)
  if (fuse.way === null) return [`No way of ${name} is written.`]
  const others = box.used.find(({ way }) => way === fuse.way)?.circuits.filter(other => other !== id) ?? []
  const shared =
    others.length === 0
      ? []
      : [
          `Way ${fuse.way} is shared with ${others.map(other => record.circuits.find(known => known.id === other)?.name ?? other).join(', ')}.`,
        ]
  return hasWay(box.ways, fuse.way) ? shared : [`${name} has no way ${fuse.way}.`, ...shared]
}

/** Whether a box of so many ways has one of this name; a way with a name of its own, or a box that was not counted, may. */
export function hasWay(ways: number | null, way: string): boolean {
  return ways === null || !/^\d+$/.test(way) || (Number(way) >= 1 && Number(way) <= ways)
}

function loopDoubts(record: AsBuiltRecord, { id, supply }: Omit<Circuit, 'doubts'>): string[] {
  const seen = new Set([id])
  for (let next = supply; next !== null; ) {
    if (seen.has(next)) return ['Its supply leads back to itself.']
    seen.add(next)
    next = supplyOf(record, next)
  }
  return []
}

function supplyOf(record: AsBuiltRecord, id: string): string | null {
  const value = record.circuits.find(circuit => circuit.id === id)?.properties.supply?.at(-1)?.value
  return value?.type === 'words' ? value.words.text : null
}
