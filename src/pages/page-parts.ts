import type { WiringDrawing } from '../wiring/svg.ts'
import type { Table } from './blocks.ts'
import type { Balloon, Inline, Leader, Mark } from './cells.ts'
import type { Drawing } from './drawing.ts'
import type { PictureSources } from './picture-sources.ts'

/** What stands in a row of a page, top to bottom. */
export type PartOfPage =
  | { readonly kind: 'heading'; readonly rank: 2 | 3; readonly text: string; readonly id: string }
  | {
      readonly kind: 'words'
      readonly look: 'lede' | 'plain' | 'note' | 'said' | 'caution'
      readonly words: readonly Inline[]
    }
  /** From a note: sanitized HTML. */
  | { readonly kind: 'note'; readonly html: string }
  | { readonly kind: 'table'; readonly table: Table }
  | { readonly kind: 'verdict'; readonly mark: Mark }
  /** MathML made by the checker. */
  | {
      readonly kind: 'formula'
      readonly lines: readonly { readonly mathml: string; readonly says: string; readonly text: string }[]
    }
  | { readonly kind: 'given'; readonly values: readonly GivenValue[] }
  | {
      readonly kind: 'drawings'
      readonly wide: Drawing
      readonly narrow: Drawing | null
      readonly caption: readonly Inline[]
      readonly framed: boolean
    }
  /** Side by side where there is room: a drawing and its table. */
  | { readonly kind: 'beside'; readonly left: readonly PartOfPage[]; readonly right: readonly PartOfPage[] }
  | { readonly kind: 'jobs'; readonly jobs: readonly JobLine[] }
  | { readonly kind: 'list'; readonly entries: readonly (readonly Inline[])[] }
  | { readonly kind: 'pictures'; readonly pictures: readonly PagePicture[] }
  | { readonly kind: 'key'; readonly of: 'lines' | 'states' | 'verdicts' }
  /** Where JavaScript makes the search; `instead` stands there without it. */
  | { readonly kind: 'search'; readonly instead: readonly Inline[] }
  /** An `svg` element of the wiring, in a frame that scrolls, with the same in words. */
  | { readonly kind: 'wiring'; readonly drawing: WiringDrawing; readonly caption: readonly Inline[] }
  | { readonly kind: 'signature' }
  /** Labels of one kind, as they lie on their sheet. */
  | {
      readonly kind: 'labels'
      readonly title: string
      readonly id: string
      readonly size: 'large' | 'small'
      readonly labels: readonly PageLabel[]
    }

/** A value that a working begins with: its symbol, itself, and the sentence at the end of its line. */
export interface GivenValue {
  /** MathML of the symbol, empty where it has none. */
  readonly symbol: string
  readonly meaning: string
  readonly leader: Leader
  /** The same in the other system; null where there is none. */
  readonly other: string | null
  readonly quote: string | null
  readonly why: string | null
  readonly place: string
}

export interface JobLine {
  readonly id: string | null
  readonly shape: 'done' | 'open' | 'fix' | 'fix-gone'
  readonly words: readonly Inline[]
  readonly state: readonly Inline[]
  readonly balloon: (Balloon & { readonly href: string }) | null
}

export interface PageLabel {
  readonly name: string
  readonly identifier: string
  /** Of which build and edition. */
  readonly of: string
  /** The dark modules as one path, the box with the quiet zone around it, and what it holds in words. */
  readonly code: { readonly path: string; readonly box: string; readonly says: string }
}

export interface PagePicture {
  /** Its largest size, to which it leads. */
  readonly href: string
  readonly sources: PictureSources | null
  readonly width: number | null
  readonly height: number | null
  readonly alternative: string
  readonly caption: readonly Inline[]
  readonly id: string | null
}
