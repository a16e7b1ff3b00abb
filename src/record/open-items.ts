import type { Place } from '../findings/place.ts'
import type { Turn } from './job.ts'

/** A job or a temporary fix as the notes open and close it. */
export interface OpenItem<T> {
  readonly id: string
  readonly first: Turn
  /** What was said of it last. */
  said: T
  /** Every wording under which it was open. */
  readonly wordings: Set<string>
  readonly turns: Turn[]
  /** The note that named it last. */
  lastSession: string | null
}

interface Naming<T> {
  readonly id: string
  readonly words: string
  readonly open: boolean
  readonly place: Place
  readonly session: string | null
  readonly said: T
}

/** Opens, repeats or closes an item: the same identifier or the same words are the same item, but not twice in one note. */
export function nameItem<T>(items: OpenItem<T>[], naming: Naming<T>): void {
  const item = findItem(items, naming)
  const turn: Turn = { open: naming.open, place: naming.place, session: naming.session }
  if (item === undefined) {
    items.push({
      id: naming.id,
      first: turn,
      said: naming.said,
      wordings: new Set([plain(naming.words)]),
      turns: [turn],
      lastSession: naming.session,
    })
    return
  }
  item.lastSession = naming.session
  if (naming.open) {
    item.said = naming.said
    item.wordings.add(plain(naming.words))
  }
  if (isOpen(item) !== naming.open) item.turns.push(turn)
}

/** Closes what is open under that identifier or those words; the item that was found, open or not, and whether it closed. */
export function closeItem<T>(
  items: readonly OpenItem<T>[],
  named: string,
  turn: Turn,
): { item: OpenItem<T> | null; closed: boolean } {
  const words = plain(named)
  const found = items.filter(({ id, wordings }) => id === named || wordings.has(words))
  const open = found.find(item => isOpen(item) && item.id === named) ?? found.find(isOpen)
  if (open === undefined) return { item: found[0] ?? null, closed: false }
  open.turns.push(turn)
  return { item: open, closed: true }
}

export function isOpen({ turns }: OpenItem<unknown>): boolean {
  return turns.at(-1)?.open ?? false
}

/** Where it was closed last; null while it is open. */
export function closingOf({ turns }: OpenItem<unknown>): Turn | null {
  const last = turns.at(-1)
  return last === undefined || last.open ? null : last
}

function findItem<T>(items: readonly OpenItem<T>[], naming: Naming<T>): OpenItem<T> | undefined {
  const sameId = items.find(({ id }) => id === naming.id && id !== '')
  if (sameId !== undefined) return sameId
  const words = plain(naming.words)
  // Two items of one note with the same words are two things, such as one a side.
  const earlier = items.filter(({ wordings, lastSession }) => wordings.has(words) && lastSession !== naming.session)
  return earlier.find(isOpen) ?? earlier.at(-1)
}

/** The same but for case, blanks and a full stop. */
export const sameWords = (one: string, other: string): boolean => plain(one) === plain(other)

const plain = (words: string): string =>
  words.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim().replace(/\.$/, '')
