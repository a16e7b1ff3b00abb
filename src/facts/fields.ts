import type { Dimension } from '../quantities/quantity.ts'
import type { ReferenceFact } from './fact.ts'

/** Where a key's words must lead, or may; `file` is the note's. Null: these words are free. */
export type Referral = (
  text: string,
  file: string,
) => { to: ReferenceFact['to']; name?: string; strictness: ReferenceFact['strictness'] } | null

/** What a key may hold. The schema, the sentences about a mistake and the reading all come from it. */
export type Field =
  | { readonly holds: 'words'; readonly refer?: Referral }
  | { readonly holds: 'prose' }
  | { readonly holds: 'closed'; readonly words: readonly string[] }
  | { readonly holds: 'figure'; readonly dimensions: readonly Dimension[] }
  | { readonly holds: 'amount' }
  | { readonly holds: 'list'; readonly refer?: Referral; readonly of?: readonly string[] }
  | { readonly holds: 'colour' }
  /** A section and a colour in one text, or a mapping; of a pin's wire the colour may stand alone. */
  | { readonly holds: 'cable'; readonly fields: Fields; readonly colourAlone?: true }
  | { readonly holds: 'return'; readonly fields: Fields }
  /** A mapping; `short` is the key that a lone figure or word stands for. */
  | { readonly holds: 'group'; readonly fields: Fields; readonly short?: string }
  /** Names of the builder's own, each with the same kind of value. */
  | { readonly holds: 'named'; readonly each: Field }
  | { readonly holds: 'rows'; readonly fields: Fields }
  | { readonly holds: 'shapes' }
  /** Read by a place of its own. */
  | { readonly holds: 'anything' }

export type Fields = Readonly<Record<string, Field>>
