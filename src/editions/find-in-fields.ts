import type { WrittenKey } from '../facts/marked-words.ts'
import type { Place } from '../findings/place.ts'
import { subjectKinds } from '../record/subject-kinds.ts'
import { isPlace, isWords } from './map-strings.ts'
import type { NameFinder, NameFound } from './name-finder.ts'

/** A withheld word where an edition would publish it. */
export interface NameHit extends NameFound {
  readonly place: Place
}

/** What looking through a note needs at hand; `place` is that of the innermost thing that has one. */
export interface Around {
  readonly place: Place
  readonly file: string
  readonly find: NameFinder
  readonly keys: readonly WrittenKey[]
}

/** What the program writes itself and no builder: it is no hit where a person bears such a name. */
const ownWords = new Set([
  'type',
  'dimension',
  'unit',
  'role',
  'strictness',
  'to',
  'result',
  'word',
  'currency',
  'exact',
  'form',
  'file',
  'session',
  'started',
  'date',
])
const isSubjectKind = (word: string): boolean => subjectKinds.some(kind => kind === word)

/** Withheld words in any piece of what a note states, each where it is written. */
export function findInFields(value: unknown, around: Around, key: string): NameHit[] {
  if (typeof value === 'string')
    return ownWords.has(key) || (key === 'kind' && isSubjectKind(value)) ? [] : findInText(value, around)
  if (Array.isArray(value)) return value.flatMap(entry => findInFields(entry, around, key))
  if (typeof value !== 'object' || value === null || isPlace(value)) return []
  const own =
    'place' in value && typeof value.place === 'object' && value.place !== null && isPlace(value.place)
      ? { ...around, place: value.place }
      : around
  if (isWords(value)) return findInText(value.text, own)
  const names = keyed.has(key) ? Object.keys(value).flatMap(name => findInText(name, own)) : []
  return [
    ...names,
    ...Object.entries(value).flatMap(([name, inner]) => findInFields(inner, keyPlaceOf(value, name, own), name)),
  ]
}

/** Mappings whose keys the builder wrote. */
const keyed = new Set(['rates', 'units'])

/** A key stands where it is written, not where its value is. */
function keyPlaceOf(value: object, name: string, around: Around): Around {
  if (name === 'subject') return { ...around, place: thingPlace(value, around) }
  const isKey = name === 'key' || name === 'part'
  if (!isKey || !('keyPlace' in value)) return around
  const { keyPlace } = value
  return typeof keyPlace === 'object' && keyPlace !== null && isPlace(keyPlace)
    ? { ...around, place: keyPlace }
    : around
}

/** The last key before the fact that bears the thing's name. */
function thingPlace(fact: object, { place, keys }: Around): Place {
  const { subject } = fact as { subject?: { id?: unknown } }
  const isBefore = (key: WrittenKey): boolean =>
    key.place.line < place.line || (key.place.line === place.line && key.place.column <= place.column)
  return keys.findLast(key => key.text.split('/')[0] === subject?.id && isBefore(key))?.place ?? place
}

/** Withheld words in one text that stands at a place. */
export function findInText(text: string, { place, find }: Pick<Around, 'place' | 'find'>): NameHit[] {
  return find(text).map(found => ({ ...found, place: placeWithin(place, text, found) }))
}

/** Exact where the text stands in one line as it is, in quotes or without; else the place of the whole. */
function placeWithin(whole: Place, text: string, { start, end }: NameFound): Place {
  const extra = whole.endColumn - whole.column - text.length
  if (whole.line !== whole.endLine || (extra !== 0 && extra !== 2)) return whole
  const column = whole.column + extra / 2
  return { ...whole, column: column + start, endColumn: column + end }
}
