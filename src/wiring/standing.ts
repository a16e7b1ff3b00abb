import { latest } from '../record/lookups.ts'
import type { AsBuiltRecord, Part, Thing } from '../record/record.ts'

type Properties = Pick<Thing, 'properties'>

/** What stands of a property as one line of text, a figure as written; null where nothing does. */
export function textAt(thing: Properties, key: string): string | null {
  const value = latest(thing, key)?.value
  if (value?.type === 'words') return value.words.text
  return value?.type === 'quantity' ? value.quantity.text : null
}

/** The entries of a list that stands, each with where it is written; one word alone counts as a list. */
export function listAt(thing: Properties, key: string): readonly string[] {
  const value = latest(thing, key)?.value
  if (value?.type === 'list') return value.entries.map(({ words }) => words.text)
  return value?.type === 'words' ? [value.words.text] : []
}

/** The part of that name, null where there is none. */
export function partOf(record: AsBuiltRecord, id: string | null): Part | null {
  return record.parts.find(part => part.id === id) ?? null
}

/** What a stop or an end is called: a part by its name, else the words themselves, an identifier with spaces. */
export function endName(record: AsBuiltRecord, words: string): string {
  return partOf(record, words)?.name ?? (/^[a-z0-9-]+$/.test(words) ? words.replaceAll('-', ' ') : words)
}

/** The same with a capital. */
export function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
}
