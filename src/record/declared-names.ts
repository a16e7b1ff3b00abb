import type { Fact, PropertyFact, Subject, ThingKind } from '../facts/fact.ts'
import { isIdentifier } from '../facts/identifier.ts'
import type { Place } from '../findings/place.ts'

export interface DeclaredNames {
  /** Of each kind, identifier → where it was first declared. */
  readonly of: (kind: ThingKind) => ReadonlyMap<string, Place>
  /** No more than a circuit's own words declare this loom or earth point. */
  readonly isOnlyUsed: (subject: Subject) => boolean
  /** A part of kind `connector` or `loom` is the connector or loom of that name: one thing under two kinds. */
  readonly home: (subject: Subject) => Subject
}

/** Kinds that a bare path may mean where no part bears the name, in the order in which they are named to a reader. */
export const otherKinds = ['circuit', 'connector', 'loom', 'donor', 'system', 'earth-point'] as const

type Names = Map<ThingKind, Map<string, Place>>

/** Every name that all notes together declare. A measurement declares nothing. */
export function findNames(facts: readonly Fact[]): DeclaredNames {
  const names: Names = new Map()
  const latest = new Map<string, PropertyFact>()
  for (const fact of facts) {
    if (fact.type === 'mention') declare(names, { kind: 'part', id: fact.part }, fact.keyPlace)
    else if (fact.type === 'donor') declare(names, { kind: 'donor', id: fact.id }, fact.place)
    if (fact.type !== 'property' || fact.bare || fact.observed) continue
    if (fact.subject.kind !== 'part') declare(names, fact.subject, fact.keyPlace)
    latest.set(`${fact.subject.kind}:${fact.subject.id}/${fact.key}`, fact)
  }
  const partKinds = declareTwins(names, latest.values())
  const stated = new Map([...names].map(([kind, ids]) => [kind, new Set(ids.keys())]))
  for (const { subject, place } of usedNames(latest.values())) declare(names, subject, place)
  return {
    of: kind => names.get(kind) ?? new Map(),
    isOnlyUsed: ({ kind, id }) => names.get(kind)?.has(id) === true && stated.get(kind)?.has(id) !== true,
    home: subject => (partKinds.get(subject.id) === subject.kind ? { ...subject, kind: 'part' } : subject),
  }
}

/** Declares the connectors and looms that parts are by their kind. */
function declareTwins(names: Names, latest: Iterable<PropertyFact>): ReadonlyMap<string, ThingKind> {
  const partKinds = new Map<string, ThingKind>()
  for (const { subject, key, value } of latest) {
    const kind = twinKinds.find(twin => value.type === 'words' && value.words.text === twin)
    const place = names.get('part')?.get(subject.id)
    if (subject.kind !== 'part' || key !== 'kind' || kind === undefined || place === undefined) continue
    partKinds.set(subject.id, kind)
    declare(names, { kind, id: subject.id }, place)
  }
  return partKinds
}

const twinKinds = ['connector', 'loom'] as const

/** Keys of a circuit whose word names a loom or an earth point, and thereby declares it. */
const declaringKeys: Readonly<Record<string, ThingKind>> = { loom: 'loom', 'return.loom': 'loom', earth: 'earth-point' }

function* usedNames(latest: Iterable<PropertyFact>): Generator<{ subject: Subject; place: Place }> {
  for (const { subject, key, value, place } of latest) {
    const kind = Object.hasOwn(declaringKeys, key) ? declaringKeys[key] : undefined
    if (subject.kind !== 'circuit' || kind === undefined || value.type !== 'words') continue
    if (isIdentifier(value.words.text)) yield { subject: { kind, id: value.words.text }, place }
  }
}

function declare(names: Names, { kind, id }: Subject, place: Place): void {
  const ofKind = names.get(kind) ?? new Map<string, Place>()
  names.set(kind, ofKind)
  if (!ofKind.has(id)) ofKind.set(id, place)
}
