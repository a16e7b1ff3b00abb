import type { Place } from '../findings/place.ts'
import type { Front } from '../notes/front.ts'
import { entryOf } from './front-tree.ts'

/** Plain values for the schema: mappings, lists, texts, and null for what is taken back. */
export type Plain = string | null | readonly Plain[] | { readonly [key: string]: Plain }

/** A tree of front matter without its places. */
export function toPlain(front: Front): Plain {
  if (front.kind === 'scalar') return front.text
  if (front.kind === 'list') return front.items.map(toPlain)
  if (front.kind === 'map') return Object.fromEntries(front.entries.map(({ key, value }) => [key, toPlain(value)]))
  return null
}

/** The entry at the end of a path of keys and list positions, with the place of its key where it has one. */
export function entryAt(front: Front, path: readonly PropertyKey[]): { value: Front; keyPlace: Place } {
  let value = front
  let keyPlace = front.place
  for (const step of path) {
    const entry = value.kind === 'map' ? entryOf(value, String(step)) : null
    const next = entry?.value ?? (value.kind === 'list' ? value.items[Number(step)] : undefined)
    if (next === undefined) break
    keyPlace = entry?.keyPlace ?? next.place
    value = next
  }
  return { value, keyPlace }
}
