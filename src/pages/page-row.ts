import type { RailNote } from './blocks.ts'
import type { PartOfPage } from './page-parts.ts'

/** A block across the page: text in the middle, notes in the margin. */
export interface PageRow {
  readonly wide: boolean
  readonly parts: readonly PartOfPage[]
  readonly rail: readonly RailNote[]
}
