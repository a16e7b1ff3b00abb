import type { Drawing } from './drawing.ts'
import type { PictureSources } from './picture-sources.ts'
import type { FigureColumns, Run } from './typeset.ts'

/** Words in a line: plain, or leading somewhere. `look`: `unit` muted, `path` an identifier, `said` the builder's own words. */
export interface Inline {
  readonly text: string
  readonly href: string | null
  readonly look: 'plain' | 'unit' | 'strong' | 'path' | 'said' | 'muted'
}

/** The circle with the session's number, or a box with a word where there is no session. */
export interface Balloon {
  readonly text: string
  /** For who cannot see the circle: `session 7`. */
  readonly says: string
  readonly square: boolean
}

/** A figure, its line, and the balloon at the end of it: one link to the words in which it was written. */
export interface Leader extends FigureColumns {
  readonly line: 'written' | 'worked' | 'assumed' | 'missing'
  readonly href: string | null
  readonly balloon: Balloon | null
}

/** How a check came out: a shape and a word. */
export interface Mark {
  readonly verdict: 'pass' | 'fail' | 'marginal' | 'missing' | 'waived'
  readonly text: string
  readonly href: string | null
}

/** What stands in one cell of a table. */
export type Cell =
  | { readonly kind: 'words'; readonly words: readonly Inline[]; readonly sub: readonly Inline[] }
  | { readonly kind: 'leader'; readonly leader: Leader }
  /** A figure where it was written: others lead to its anchor, it leads to what used it. */
  | {
      readonly kind: 'figure'
      readonly runs: readonly Run[]
      readonly href: string | null
      readonly anchor: string | null
    }
  | { readonly kind: 'marks'; readonly marks: readonly Mark[]; readonly otherwise: string }
  | { readonly kind: 'state'; readonly state: string; readonly text: string; readonly sub: readonly Inline[] }
  | { readonly kind: 'wires'; readonly wires: readonly WireCell[] }
  | { readonly kind: 'drawing'; readonly drawing: Drawing }
  | { readonly kind: 'balloon'; readonly balloon: Balloon; readonly words: readonly Inline[] }
  | { readonly kind: 'evidence'; readonly lines: readonly { readonly mark: Mark; readonly words: readonly Inline[] }[] }
  /** A small picture, and words that lead to where it stands large. */
  | { readonly kind: 'thumb'; readonly picture: Thumb; readonly words: readonly Inline[] }
  | { readonly kind: 'tick' }

/** A picture beside words that say what it shows. */
export interface Thumb {
  readonly src: string
  readonly sources: PictureSources | null
  readonly width: number | null
  readonly height: number | null
}

/** A wire as it looks, and its colours in words. */
export interface WireCell {
  readonly ground: string | null
  readonly band: string | null
  readonly words: readonly Inline[]
}
