import type { Inline } from './cells.ts'
import type { Link } from './note-context.ts'
import type { PageRow } from './page-row.ts'

/** What every page has around its own content. All hrefs are relative to the page. */
export interface Sheet {
  /** Where the page is written, such as `parts/fuel-tank/index.html`. */
  readonly address: string
  readonly title: string
  readonly build: string
  readonly home: string
  readonly styles: readonly string[]
  readonly scripts: readonly string[]
  readonly policy: string
  /** The page's own address, where the record's is known. */
  readonly canonical?: string
  /** The feed of the sessions. */
  readonly feed?: { readonly href: string; readonly title: string }
  readonly sheets: readonly (Link & { readonly current: 'page' | 'true' | null; readonly main: boolean })[]
  /** The title block at the foot. */
  readonly block: readonly Term[]
  /** Said across the top, where the record was published in spite of mistakes. */
  readonly warning: readonly Inline[]
}

export interface Term {
  readonly term: string
  readonly words: readonly Inline[]
}

/** One page of the record: rows from top to bottom. */
export interface Page {
  readonly sheet: Sheet
  readonly title: string
  /** Set wide: the title takes the margin too. */
  readonly wide: boolean
  readonly gutter: readonly Term[]
  readonly rows: readonly PageRow[]
  /** The sessions before and after, or null. */
  readonly before: Link | null
  readonly after: Link | null
  /** `one-page` prints on one sheet of A4. */
  readonly look: 'plain' | 'session' | 'one-page' | 'wiring' | 'bench' | 'tank' | 'labels'
}

/** All that the site prints. Strings, numbers, addresses and flags only; nothing of it is withheld from its edition. */
export interface SiteData {
  readonly pages: readonly Page[]
  /** Of `html lang`. */
  readonly language: 'en-GB'
}
