import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { listed, plain } from './inline.ts'
import { pageScope } from './page-scope.ts'
import { simplePage, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { words } from './tables.ts'

/** The query, what it asks and what shows the hits; in this order, each a classic script. */
const scripts = ['client/search-query.js', 'client/search-index.js', 'client/search-page.js']

/** Words and quantities in one box. Its scripts and its style are loaded here only. */
export function makeSearchPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('search'))
  const indexes = ['measurements', 'parts', 'sessions'].map(folder => [scope.link(folder, pageAddress(folder))])
  const page = simplePage(scope, {
    title: 'Search',
    section: 'search',
    rows: [
      wideRow(
        words('lede', 'Words, a quantity in any unit, or both; a hit leads to the words in which it was written.'),
        {
          kind: 'search',
          instead: [
            plain('Searching needs JavaScript, which is not running here. Without it these list all that there is: '),
            ...listed(indexes),
            plain('.'),
          ],
        },
      ),
    ],
  })
  const { sheet } = page
  return {
    ...page,
    sheet: {
      ...sheet,
      styles: [...sheet.styles, scope.to('styles/search.css')],
      scripts: [...sheet.scripts, ...scripts.map(scope.to)],
    },
  }
}
