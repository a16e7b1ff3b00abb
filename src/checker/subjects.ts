import { latest } from '../record/lookups.ts'
import type { AsBuiltRecord, Connector, Part, Requirement, Thing } from '../record/record.ts'
import { isChecked, isLive, wordsOf } from './look-up.ts'
import type { CheckSubject, Scope } from './scope.ts'

/** Something that a check can be asked of. One that is not current (planned, on order) is asked only by its name. */
interface Candidate {
  readonly subject: CheckSubject
  readonly isCurrent: boolean
}

/** Where the subjects of a check come from. */
export interface SubjectSource {
  /** `circuit`, a part's kind, `connector`, `loom`, `way`, `path`, `vehicle`. */
  readonly kind: string
  /** In words, for the check's page: `each circuit that is live, but not those that start the engine`. */
  readonly meaning: string
  readonly find: (record: AsBuiltRecord) => readonly Candidate[]
}

/** Which subjects stay out: those whose words are among these, unless another property is given. */
export interface Filter {
  readonly key: string
  readonly is: readonly string[]
  readonly unlessGiven?: string
}

export interface Filters {
  readonly only?: readonly Filter[]
  readonly not?: readonly Filter[]
}

/** Each circuit that is live. */
export function circuits(meaning: string, filters: Filters = {}): SubjectSource {
  return {
    kind: 'circuit',
    meaning,
    find: ({ circuits: all }) =>
      all
        .filter(circuit => isIn(circuit, filters))
        .map(circuit => ({ subject: subjectOf('circuit', circuit), isCurrent: isLive(circuit) })),
  }
}

/** Each part of these kinds that is fitted, modified, made or trial-fitted. */
export function parts(kinds: readonly [string, ...string[]], meaning: string, filters: Filters = {}): SubjectSource {
  return {
    kind: kinds[0],
    meaning,
    find: ({ parts: all }) =>
      all
        .filter(part => part.partKind !== null && kinds.includes(part.partKind) && isIn(part, filters))
        .map(part => ({ subject: partSubject(part), isCurrent: isChecked(part) })),
  }
}

/** The vehicle as a whole. */
export function wholeVehicle(meaning: string): SubjectSource {
  return { kind: 'vehicle', meaning, find: record => [{ subject: vehicleSubject(record), isCurrent: true }] }
}

/** The part of a kind, or the vehicle where the record has no such part. */
export function partElseVehicle(kind: string, meaning: string): SubjectSource {
  const source = parts([kind], meaning)
  return {
    ...source,
    find: record => {
      const found = source.find(record)
      return found.length > 0 ? found : [{ subject: vehicleSubject(record), isCurrent: true }]
    },
  }
}

/** Each connector, loom or earth point. */
export function things(kind: 'connector' | 'loom' | 'earth-point', meaning: string): SubjectSource {
  const all = { connector: 'connectors', loom: 'looms', 'earth-point': 'earthPoints' } as const
  return {
    kind,
    meaning,
    find: record =>
      record[all[kind]].map((thing: Thing | Connector) => ({ subject: subjectOf(kind, thing), isCurrent: true })),
  }
}

/** Each way of a fuse box that a circuit uses: `aux-fuses/3`. */
export function fuseWays(meaning: string): SubjectSource {
  return {
    kind: 'way',
    meaning,
    find: ({ fuseBoxes }) =>
      fuseBoxes.flatMap(box =>
        box.used
          .filter(({ circuits: fused }) => fused.length > 0)
          .map(({ way }) => ({
            subject: { ...nothing, kind: 'way', id: `${box.id}/${way}`, name: `way ${way} of ${box.id}` },
            isCurrent: true,
          })),
      ),
  }
}

/** Each path that build.md requires something of. */
export function requiredPaths(meaning: string): SubjectSource {
  return {
    kind: 'path',
    meaning,
    find: ({ requirements }) =>
      requirements.map(requirement => ({ subject: pathSubject(requirement), isCurrent: true })),
  }
}

const nothing = { thing: null, place: null, requirement: null, prefix: '' } as const

export function subjectOf(kind: string, thing: Thing): CheckSubject {
  return { ...nothing, kind, id: thing.id, name: thing.name, thing, place: thing.first }
}

/** A part as a subject is of its own kind: `tank`, `strap`. */
export function partSubject(part: Part): CheckSubject {
  return subjectOf(part.partKind ?? 'part', part)
}

export function vehicleSubject({ vehicle }: AsBuiltRecord): CheckSubject {
  return { ...subjectOf('vehicle', vehicle), id: 'vehicle' }
}

function pathSubject(requirement: Requirement): CheckSubject {
  return {
    ...nothing,
    kind: 'path',
    id: requirement.path,
    name: requirement.path,
    place: requirement.place,
    requirement,
  }
}

function isIn(thing: Thing, { only = [], not = [] }: Filters): boolean {
  const matches = ({ key, is, unlessGiven }: Filter): boolean => {
    const spared = unlessGiven !== undefined && latest(thing, unlessGiven) !== null
    return is.includes(wordsOf(thing, key) ?? '') && !spared
  }
  return only.every(matches) && !not.some(matches)
}

/** Other things that a subject leads to: the circuits of its box, the pins of its mate. */
export type Selector = (scope: Scope) => readonly CheckSubject[]
