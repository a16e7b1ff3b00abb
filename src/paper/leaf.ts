import { rewriteTags, wordsOf } from './tags.ts'

/** A printed page as the document takes it up: the sheet alone, without the bar and the title block around it. */
export interface Leaf {
  /** Its address within the record. */
  readonly path: string
  /** The words of its first heading, escaped. */
  readonly title: string
  /** The class of its body, empty where it has none. */
  readonly look: string
  readonly html: string
  /** Said across the top of every page of a record with mistakes; empty for most. */
  readonly warning: string
  /** Every anchor on it. */
  readonly ids: ReadonlySet<string>
}

// The overview prints the manifest's own sum, and the manifest sums this document too: here it cannot stand.
const ownSum = /<p>[^<]*0{8}(?: 0{8}){7}<\/p>/

/** Reads one page of the site. */
export function readLeaf(path: string, page: string): Leaf {
  const [, sheet] = /<main\b[^>]*>([\s\S]*)<\/main>/.exec(page) ?? []
  if (sheet === undefined) throw new Error(`Unexpected page \`${path}\` without a sheet, expected <main>`)
  const [warning = ''] = /^<p class="warning">[\s\S]*?<\/p>/.exec(sheet) ?? []
  const html = sheet.slice(warning.length).replace(ownSum, '')
  return {
    path,
    title: wordsOf(/<h1\b[^>]*>([\s\S]*?)<\/h1>/.exec(html)?.[1] ?? path),
    look: /<body class="([^"]*)"/.exec(page)?.[1] ?? '',
    html,
    warning,
    ids: idsOf(html),
  }
}

function idsOf(html: string): ReadonlySet<string> {
  const ids = new Set<string>()
  rewriteTags(html, ({ attributes }) => {
    const id = attributes.get('id')
    if (typeof id === 'string') ids.add(id)
    return null
  })
  return ids
}
