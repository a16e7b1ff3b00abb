import type { Root } from 'mdast'
import type { PrivateKind } from '../../plugins/private/node.ts'
import type { Finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import type { Quantity, ReadOptions } from '../quantities/quantity.ts'
import type { Amount, Fact, Words } from './fact.ts'

/** One figure of a note, numbered in source order with all others of the note, front matter included. */
export interface Figure {
  /** `q-4`. */
  readonly id: string
  readonly place: Place
  readonly quantity: Quantity
  /** Which list of the record it is in: one only. */
  readonly role: 'measurement' | 'circuit' | 'volume' | 'pin' | 'price' | 'setting' | 'prose'
  /** `fuel-tank/length`, `circuit:fuel-pump/fuse.rating`; null where nobody named it. */
  readonly path: string | null
  /** The kinds of private mark that it stands in; absent where it stands in none. */
  readonly privacy?: readonly PrivateKind[]
}

export interface SessionHead {
  readonly id: string
  readonly file: string
  readonly fence: Place
  readonly title: Words
  /** ISO 8601, null where there is none that exists. */
  readonly date: string | null
  readonly datePlace: Place
  /** Who wrote it: a person's name, whole. */
  readonly by: Words | null
  /** Exact decimal hours as text, `6.5`. */
  readonly hours: { readonly amount: string; readonly place: Place } | null
}

export interface BuildHead {
  readonly file: string
  readonly fence: Place
  readonly title: Words
  readonly summary: Words | null
  readonly started: string | null
  /** Who writes the notes that name nobody. */
  readonly by: Words | null
  readonly currency: string
  /** Currency → how many of the build's currency one of it is, an exact decimal as text. */
  readonly rates: Readonly<Record<string, string>>
  /** Dimension → unit in which derived figures are shown. */
  readonly units: Readonly<Record<string, string>>
  readonly approximateShare: number
  /** How its notes, and what is asked of them, are read. */
  readonly reading: ReadOptions
  readonly identity: readonly { readonly key: string; readonly words: Words; readonly place: Place }[]
}

/** What one note states. Plain JSON. */
export interface StatedNote {
  readonly session: SessionHead | null
  readonly build: BuildHead | null
  /** In source order. */
  readonly facts: readonly Fact[]
  readonly figures: readonly Figure[]
  /** The body, each `quantity` node with the `id` of its figure. */
  readonly body: Root
  readonly findings: readonly Finding[]
}

export type { Amount }
