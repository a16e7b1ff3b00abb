import type { Page, SiteData } from '../src/pages/site-data.ts'
import { PrintedPage } from './_includes/page.tsx'

interface Given {
  readonly page_: Page
  readonly site: { readonly language: SiteData['language'] }
}

/** One file for each page of the record. */
export const data = {
  pagination: { data: 'site.pages', size: 1, alias: 'page_' },
  permalink: ({ page_ }: Given) => `/${page_.sheet.address}`,
}

export const render = ({ page_, site }: Given) => <PrintedPage page={page_} language={site.language} />
