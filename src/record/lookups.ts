import type { FactValue, Subject, Words } from '../facts/fact.ts'
import type { Quantity } from '../quantities/quantity.ts'
import type { AsBuiltRecord, Held, Thing } from './record.ts'
import { resolveName, splitPath } from './resolve-name.ts'

type Properties = Pick<Thing, 'properties'>

/** What stands of a property; null where nothing was said of it or it was taken back. */
export function latest(thing: Properties, key: string): Held<FactValue> | null {
  const held = Object.hasOwn(thing.properties, key) ? thing.properties[key]?.at(-1) : undefined
  return held === undefined || held.value.type === 'nothing' ? null : held
}

/** The figure that stands of a property; null where there is none or it holds something else. */
export function quantityAt(thing: Properties, key: string): Held<Quantity> | null {
  const held = latest(thing, key)
  return held?.value.type === 'quantity' ? { ...held, value: held.value.quantity } : null
}

/** The words that stand of a property; null where there are none or it holds something else. */
export function wordsAt(thing: Properties, key: string): Held<Words> | null {
  const held = latest(thing, key)
  return held?.value.type === 'words' ? { ...held, value: held.value.words } : null
}

/** A thing of the record, one that was only measured included; null where there is none. */
export function findThing(record: AsBuiltRecord, { kind, id }: Subject): Thing | null {
  if (kind === 'vehicle') return record.vehicle
  if (kind === 'build') return record.settings.id === id ? record.settings : null
  const list = thingsOf(record, kind)
  return list.find(thing => thing.id === id) ?? null
}

/** What a path is about, a bare one by the part of that name, else by the one other thing; null where nothing or more than one bears it. */
export function resolvePath(record: AsBuiltRecord, path: string): { subject: Subject; property: string } | null {
  const written = splitPath(path)
  if (written === null) return null
  const { subject, bare, property } = written
  if (!bare) return findThing(record, subject) === null ? null : { subject, property }
  const meant = resolveName(subject.id, ({ kind, id }) => declared(record, kind).some(thing => thing.id === id))
  const [found] = meant
  if (meant.length === 1 && found !== undefined) return { subject: found, property }
  return meant.length === 0 && findThing(record, subject) !== null ? { subject, property } : null
}

function thingsOf(record: AsBuiltRecord, kind: Subject['kind']): readonly Thing[] {
  return [...declared(record, kind), ...record.measured.filter(thing => thing.kind === kind)]
}

function declared(record: AsBuiltRecord, kind: Subject['kind']): readonly Thing[] {
  const lists: Partial<Record<Subject['kind'], readonly Thing[]>> = {
    part: record.parts,
    circuit: record.circuits,
    connector: record.connectors,
    loom: record.looms,
    donor: record.donors,
    system: record.systems,
    'earth-point': record.earthPoints,
  }
  return lists[kind] ?? []
}
