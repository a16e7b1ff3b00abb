import type { PartOfPage } from './page-parts.ts'
import type { PageRow } from './page-row.ts'
import type { PageScope } from './page-scope.ts'
import { makeSheet } from './sheet.ts'
import type { Page, Term } from './site-data.ts'

interface PageText {
  readonly title: string
  /** Of the browser's tab and the title block, where it differs. */
  readonly longTitle?: string
  readonly section: string | null
  readonly rows: readonly PageRow[]
  readonly gutter?: readonly Term[]
  readonly look?: Page['look']
  readonly wide?: boolean
}

/** A page that has no neighbours. */
export function simplePage(scope: PageScope, text: PageText): Page {
  return {
    sheet: makeSheet(scope.atlas, {
      address: scope.address,
      title: text.longTitle ?? text.title,
      section: text.section,
    }),
    title: text.title,
    wide: text.wide ?? false,
    gutter: text.gutter ?? [],
    rows: text.rows.filter(row => row.parts.length > 0),
    before: null,
    after: null,
    look: text.look ?? 'plain',
  }
}

export const wideRow = (...parts: readonly PartOfPage[]): PageRow => ({ wide: true, parts, rail: [] })
export const textRow = (...parts: readonly PartOfPage[]): PageRow => ({ wide: false, parts, rail: [] })
