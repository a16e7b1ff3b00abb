import type { Place } from '../findings/place.ts'
import type { Quantity } from '../quantities/quantity.ts'
import type { AsBuiltRecord, Thing } from '../record/record.ts'
import type { Sentence } from './note-sentences.ts'
import type { HitKind } from './search-index.ts'

/** A record that an edition may see: only such a one is indexed, so that an index holds nothing withheld. */
export type EditedRecord = AsBuiltRecord & { readonly edition: string }

/** Where things have their pages, within the record and ready for a link. `null`: build.md. */
export interface Addresses {
  readonly note: (session: string | null) => string
  readonly thing: (thing: Pick<Thing, 'kind' | 'id'>) => string
  readonly inspection: string
}

/** The words of a hit. Entries of one sentence share one object. */
export interface Said {
  readonly text: string
  /** Searched, not shown. */
  readonly also: string
}

/** What a hit is about. `address` is empty where the thing has no page of its own. */
export interface LinkedThing extends Pick<Thing, 'kind' | 'id' | 'name'> {
  readonly address: string
}

/** One thing that can be found. */
export interface Entry {
  readonly kind: HitKind
  readonly path: string | null
  /** What it is called: `Tank, made to a drawing: length`. */
  readonly label: Said | null
  /** Its identifier as words, `fuel tank length`: a name too, and not shown. */
  readonly name: string | null
  readonly said: Said
  /** Where the figure stands in `said`. */
  readonly mark: { readonly start: number; readonly end: number } | null
  readonly place: Pick<Place, 'file' | 'line' | 'column'>
  readonly session: string | null
  readonly address: string
  readonly anchor: string
  readonly thing: LinkedThing | null
  readonly figure: Quantity | null
  /** Goes after its equals: a later note replaced it, or it is a price. */
  readonly isAside: boolean
}

export interface NoteSentences {
  readonly session: string | null
  readonly file: string
  readonly sentences: readonly (Sentence & { readonly said: Said })[]
}

/** What the makers of entries share. */
export interface Desk {
  readonly record: EditedRecord
  readonly addresses: Addresses
  readonly notes: readonly NoteSentences[]
}

/** `pins.31b.wire.area` as words. */
export const inWords = (name: string): string => name.replace(/[-._/]+/g, ' ')
