import type { FactValue, Subject, Words } from '../facts/fact.ts'
import type { Place } from '../findings/place.ts'
import type { Held } from './held.ts'
import type { Thing } from './record.ts'

type History = Held<FactValue>[]

interface Entry {
  first: Place
  readonly properties: Map<string, History>
}

export interface PropertyStore {
  readonly hold: (subject: Subject, key: string, held: Held<FactValue>) => void
  readonly history: (subject: Subject, key: string) => readonly Held<FactValue>[]
  readonly keys: (subject: Subject) => readonly string[]
  /** Notes where a thing was first named, if nothing did so before. */
  readonly meet: (subject: Subject, place: Place) => void
  /** Identifiers of a kind of which anything is held, in the order in which they were met. */
  readonly ids: (kind: Subject['kind']) => readonly string[]
  readonly thing: (home: Subject, as: Subject, otherwise: Place) => Thing
}

/** Holds all that was said of each property of each thing, oldest first. Nothing is ever taken out. */
export function makePropertyStore(): PropertyStore {
  const entries = new Map<string, Entry & { readonly subject: Subject }>()
  const keyOf = ({ kind, id }: Subject): string => `${kind}:${id}`
  const find = (subject: Subject): Entry | undefined => entries.get(keyOf(subject))
  const meet = (subject: Subject, place: Place): Entry => {
    const entry = entries.get(keyOf(subject)) ?? { subject, first: place, properties: new Map<string, History>() }
    entries.set(keyOf(subject), entry)
    return entry
  }
  return {
    meet,
    hold: (subject, key, held) => {
      const { properties } = meet(subject, held.place)
      const history = properties.get(key) ?? []
      properties.set(key, history)
      history.push(held)
    },
    history: (subject, key) => find(subject)?.properties.get(key) ?? [],
    keys: subject => [...(find(subject)?.properties.keys() ?? [])],
    ids: kind => [...entries.values()].filter(({ subject }) => subject.kind === kind).map(({ subject }) => subject.id),
    thing: (home, as, otherwise) => thingOf(as, find(home) ?? { first: otherwise, properties: new Map() }),
  }
}

function thingOf({ kind, id }: Subject, { first, properties }: Entry): Thing {
  const named = lastWords(properties.get('name') ?? [])
  const name = named?.value.text ?? id.replaceAll('-', ' ')
  return { kind, id, name, named, properties: Object.fromEntries(properties), first }
}

/** The words that stand at the end of a history; null where it ends in another value or was taken back. */
export function lastWords(history: readonly Held<FactValue>[]): Held<Words> | null {
  const held = history.at(-1)
  return held?.value.type === 'words' ? { ...held, value: held.value.words } : null
}
