import type { Front, FrontEntry, FrontMap, FrontScalar } from '../notes/front.ts'

/** The entry of a key; null where the mapping has none. */
export function entryOf(front: Front | null | undefined, key: string): FrontEntry | null {
  return front?.kind === 'map' ? (front.entries.find(entry => entry.key === key) ?? null) : null
}

/** The entries of a mapping; none of anything else. */
export function entriesOf(front: Front | null | undefined): readonly FrontEntry[] {
  return front?.kind === 'map' ? front.entries : []
}

/** The entries of a list; a lone scalar or mapping is a list of one. */
export function itemsOf(front: Front | null | undefined): readonly Front[] {
  if (front === null || front === undefined || front.kind === 'nothing') return []
  return front.kind === 'list' ? front.items : [front]
}

/** A scalar with its blanks trimmed; null for anything else. */
export function scalarOf(front: Front | null | undefined): FrontScalar | null {
  return front?.kind === 'scalar' && front.text.trim() !== '' ? front : null
}

/** The text of a key that holds a scalar, trimmed; null where there is none. */
export function textOf(front: FrontMap | null, key: string): string | null {
  return scalarOf(entryOf(front, key)?.value)?.text.trim() ?? null
}
