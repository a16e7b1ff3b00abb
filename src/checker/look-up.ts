import type { FactValue } from '../facts/fact.ts'
import { latest } from '../record/lookups.ts'
import type { AsBuiltRecord, Held, Part, Thing } from '../record/record.ts'
import { byName } from './by-name.ts'
import type { Scope } from './scope.ts'

/** What a pattern such as `circuit/length` leads to in the record. */
export interface Target {
  /** As the record prints it: `circuit:fuel-pump/length`. */
  readonly path: string
  /** What stands; null where nobody said it, or took it back. */
  readonly held: Held<FactValue> | null
  /** Why nothing can be told, where that is more than absence. */
  readonly trouble: string | null
}

/** Follows a pattern from the subject: its own property, one of `build` or `vehicle`, or that of the one part of a kind. */
export function lookUp(scope: Scope, pattern: string): Target {
  const target = follow(scope, pattern)
  const quantity = scope.instead?.get(target.path)
  return quantity === undefined || target.held === null
    ? target
    : { ...target, held: { ...target.held, value: { type: 'quantity', quantity } } }
}

function follow(scope: Scope, pattern: string): Target {
  const slash = pattern.indexOf('/')
  const [kind, key] = [pattern.slice(0, slash), pattern.slice(slash + 1)]
  const { record, subject } = scope
  if (kind === subject.kind && subject.thing !== null) return targetOf(subject.thing, `${subject.prefix}${key}`)
  if (kind === 'part' && subject.thing?.kind === 'part') return targetOf(subject.thing, key)
  if (kind === 'volume') return volumeTarget(scope, key)
  if (kind === 'build') return targetOf(record.settings, key)
  if (kind === 'vehicle') return targetOf(record.vehicle, key)
  return onlyOne(record, kind, key)
}

/** The volume stated for the part that is asked about. */
function volumeTarget({ record, subject }: Scope, key: string): Target {
  const volume = record.volumes.find(({ part }) => part === subject.id)
  return { path: `volume:${subject.id}/${key}`, held: volume === undefined ? null : latest(volume, key), trouble: null }
}

/** A property of a thing, with its latest value. */
export function targetOf(thing: Thing, key: string): Target {
  return { path: `${pathOf(thing)}/${key}`, held: latest(thing, key), trouble: null }
}

/** The words that stand for a property: `use`, `return`, `zone`; the digits of a bare number, such as a way. Null where there are none. */
export function wordsOf(thing: Thing, key: string): string | null {
  const value = latest(thing, key)?.value
  if (value?.type === 'quantity') return value.quantity.numberText
  return value?.type === 'words' ? value.words.text.trim() : null
}

/** The words of a property, noted as used; null where there are none. */
export function usedWords(scope: Scope, thing: Thing, key: string): string | null {
  const [words, held] = [wordsOf(thing, key), latest(thing, key)]
  if (words === null || held === null) return null
  const { place, session, figure } = held
  scope.notebook.use({ path: targetOf(thing, key).path, words, place, session, figure })
  return words
}

/** How paths name a thing: a part by its identifier, anything else with its kind in front. */
export function pathOf(thing: Pick<Thing, 'kind' | 'id'>): string {
  if (thing.kind === 'part') return thing.id
  return thing.kind === 'vehicle' ? 'vehicle' : `${thing.kind}:${thing.id}`
}

const checkedStates: readonly string[] = ['fitted', 'modified', 'made', 'trial-fitted']

/** Parts that are fitted, modified, made or trial-fitted are checked; what is on order or gone is not. */
export function isChecked(part: Part): boolean {
  return checkedStates.includes(part.state)
}

/** A circuit that carries current: neither planned nor taken out. */
export function isLive(circuit: Thing): boolean {
  return !['planned', 'removed'].includes(wordsOf(circuit, 'state') ?? 'live')
}

export function partsOfKind(record: AsBuiltRecord, kinds: readonly string[]): Part[] {
  const [first, ...others] = kinds
  if (first === undefined) return []
  if (others.length === 0) return (byName(record).partsByKind.get(first) ?? []).filter(isChecked)
  return record.parts.filter(part => part.partKind !== null && kinds.includes(part.partKind) && isChecked(part))
}

function onlyOne(record: AsBuiltRecord, kind: string, key: string): Target {
  const parts = partsOfKind(record, [kind])
  const telling = parts.filter(part => latest(part, key) !== null)
  const [first] = telling
  if (first !== undefined && telling.length === 1) return targetOf(first, key)
  if (telling.length > 1) return severalTell(telling, key)
  const [silent] = parts
  return silent === undefined
    ? { path: `${kind}/${key}`, held: null, trouble: `no ${kind} is on the vehicle` }
    : targetOf(silent, key)
}

/** Several parts of a kind (two tyres) are as one where they say the same. */
function severalTell(parts: readonly Part[], key: string): Target {
  const targets = parts.map(part => targetOf(part, key))
  const [first, ...others] = targets
  if (first === undefined) throw new Error('Unexpected empty list of parts, expected two or more')
  if (others.every(other => sameValue(first.held, other.held))) return first
  return { path: first.path, held: null, trouble: `${parts.map(({ id }) => id).join(', ')} differ in their ${key}` }
}

function sameValue(one: Held<FactValue> | null, other: Held<FactValue> | null): boolean {
  if (one?.value.type === 'quantity' && other?.value.type === 'quantity')
    return one.value.quantity.si === other.value.quantity.si
  return one?.value.type === 'words' && other?.value.type === 'words' && one.value.words.text === other.value.words.text
}
