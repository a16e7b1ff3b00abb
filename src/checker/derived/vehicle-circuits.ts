import type { AsBuiltRecord, Thing } from '../../record/record.ts'
import { byName } from '../by-name.ts'
import type { Input } from '../input.ts'
import { optional } from '../inputs/value.ts'
import { isLive, lookUp, usedWords, wordsOf } from '../look-up.ts'
import { type Scope, withSubject } from '../scope.ts'
import { partSubject, type Selector, type SubjectSource, subjectOf, wholeVehicle } from '../subjects.ts'

/** The vehicle, of a record that has live circuits. */
export function wiredVehicle(): SubjectSource {
  const source = wholeVehicle('the vehicle, where a circuit is live')
  const find = (record: AsBuiltRecord) =>
    source.find(record).map(one => ({ ...one, isCurrent: record.circuits.some(isLive) }))
  return { ...source, find }
}

/** All live circuits. */
export const liveCircuits: Selector = ({ record }) =>
  record.circuits.filter(isLive).map(circuit => subjectOf('circuit', circuit))

/** All live circuits but those that start the engine. */
export const fusableCircuits: Selector = ({ record }) =>
  record.circuits
    .filter(circuit => isLive(circuit) && wordsOf(circuit, 'duty') !== 'starting')
    .map(circuit => subjectOf('circuit', circuit))

/** All earth points. */
export const earthPoints: Selector = ({ record }) => record.earthPoints.map(point => subjectOf('earth-point', point))

const fuseWords = ['fuse.box', 'fuse.way', 'fuse.type'] as const
const fuseFigures = [
  optional({
    of: 'circuit/fuse.rating',
    symbol: 'I_n',
    meaning: 'rating of the fuse',
    dimension: 'current',
    unit: 'A',
  }),
  optional({
    of: 'circuit/fuse.clears',
    symbol: 'I_c',
    meaning: 'current that opens it',
    dimension: 'current',
    unit: 'A',
  }),
] as const
const furthest = 10 // circuits in a row; more is a supply that leads back to itself

/** The circuit in which the fuse of a circuit stands: its own, or the one that supplies it; none where there is no fuse. */
export function fusedIn(): Input<string | null> {
  return {
    symbol: null,
    meaning: 'where its fuse stands',
    dimension: null,
    reads: ['circuit/fuse.box', 'circuit/fuse.rating', 'circuit/supply'],
    read: scope => {
      const fused = fuseUpstream(scope, scope.subject.thing, 0)
      return fused === null ? { type: 'none' } : { type: 'words', words: fused.id }
    },
  }
}

function fuseUpstream(scope: Scope, circuit: Thing | null, depth: number): Thing | null {
  if (circuit === null || depth > furthest) return null
  if (hasFuse(withSubject(scope, subjectOf('circuit', circuit)), circuit)) return circuit
  const supply = usedWords(scope, circuit, 'supply')
  const above = byName(scope.record).circuits.get(supply ?? '')
  return above === undefined || !isLive(above) ? null : fuseUpstream(scope, above, depth + 1)
}

function hasFuse(scope: Scope, circuit: Thing): boolean {
  const said = fuseWords.filter(key => usedWords(scope, circuit, key) !== null)
  const figures = fuseFigures.filter(figure => figure.read(scope)?.type !== 'none')
  return said.length + figures.length > 0
}

/** The sleeve that a circuit's cable runs in: that of its loom, where one is written. */
export function sleeveOfLoom(): Input<number | null> {
  const sleeve = optional({
    of: 'loom/sleeve',
    symbol: 'd_s',
    meaning: 'the sleeve of its loom',
    dimension: 'length',
    unit: 'mm',
  })
  return {
    ...sleeve,
    reads: ['circuit/loom', 'loom/sleeve'],
    read: scope => {
      const { subject, record } = scope
      const id = subject.thing === null ? null : usedWords(scope, subject.thing, 'loom')
      const looms = [
        ...record.looms.map(loom => subjectOf('loom', loom)),
        ...record.parts.filter(({ partKind }) => partKind === 'loom').map(partSubject),
      ].filter(loom => loom.id === id && lookUp(withSubject(scope, loom), 'loom/sleeve').held !== null)
      const [loom] = looms
      return loom === undefined ? { type: 'none' } : sleeve.read(withSubject(scope, loom))
    },
  }
}
