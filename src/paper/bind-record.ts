import { bindLeaf, placesOf } from './bind-leaf.ts'
import { cautionsAnchor, cautionsPage } from './cautions.ts'
import { type Chapter, chaptersOf, depthOf } from './chapters.ts'
import { contentsPage, type Entry } from './contents.ts'
import { coverPage } from './cover.ts'
import { type Folder, textOf } from './folder.ts'
import { type Leaf, readLeaf } from './leaf.ts'
import { boundStyles } from './styles.ts'
import { escapeWords, readWords, wordsOf } from './tags.ts'

/** The whole record as one page of HTML. */
export interface BoundRecord {
  readonly entries: readonly Entry[]
  /** The words of every heading. */
  readonly headings: readonly string[]
  /** The document with the numbers of pages by anchor; places are kept for those that are not known yet. */
  readonly html: (numbers: ReadonlyMap<string, number>) => string
}

/** Binds the printed pages of an edition into one document: cover, contents, cautions, then the pages by chapter. */
export function bindRecord(folder: Folder): BoundRecord {
  const leaves = folder.files.flatMap(({ path, content }) =>
    path.endsWith('index.html') && typeof content === 'string' ? [readLeaf(path, content)] : [],
  )
  const chapters = chaptersOf(leaves)
  const bound = chapters.flatMap(({ pages }) => pages)
  const { anchorOf } = placesOf(bound)
  const bodies = chapters.map((chapter, at) => {
    const heading = chapter.isHeaded ? `<h1 class="h1" id="part-${at}">${chapter.title}</h1>` : ''
    const pages = chapter.pages.map((leaf, nth) => bindLeaf(leaf, depthIn(chapter, nth), { anchorOf }))
    return `<div class="chapter chapter-${at}">${heading}\n${pages.join('')}</div>\n`
  })
  const first = { title: 'Read this first', anchor: cautionsAnchor, depth: 0 } as const
  const entries = [first, ...chapters.flatMap((chapter, at) => entriesOf(chapter, at, anchorOf))]
  const head = headOf(
    folder,
    boundStyles(
      folder,
      chapters.map(({ title }) => readWords(title)),
    ),
  )
  const front = `${shapesOf(folder)}${coverPage(folder)}`
  const rest = `${cautionsPage(bound)}${bodies.join('')}</body></html>\n`
  const headings = headingsOf(`${front}${contentsPage(entries, new Map())}${rest}`)
  return { entries, headings, html: numbers => `${head}<body>${front}${contentsPage(entries, numbers)}${rest}` }
}

const depthIn = ({ pages, isHeaded }: Chapter<Leaf>, nth: number): 0 | 1 | 2 =>
  depthOf(pages[nth]?.path ?? '', nth === 0 && !isHeaded)

/** Workings are not in the contents: there are hundreds, and the page of their check lists them. */
function entriesOf(chapter: Chapter<Leaf>, at: number, anchorOf: (path: string, id: string) => string | null): Entry[] {
  const { pages, isHeaded, title } = chapter
  const lead: Entry[] = isHeaded ? [{ title, anchor: `part-${at}`, depth: 0 }] : []
  const listed = pages.flatMap(({ path, title: own }, nth): Entry[] => {
    const depth = depthIn(chapter, nth)
    return depth === 2 ? [] : [{ title: own, anchor: anchorOf(path, '') ?? '', depth }]
  })
  return isHeaded && pages.length === 1 ? lead : [...lead, ...listed]
}

const headingsOf = (html: string): string[] =>
  [...html.matchAll(/<h([1-6])\b[^>]*>([\s\S]*?)<\/h\1>/g)].map(([, , words = '']) => readWords(wordsOf(words)))

function headOf({ title, files }: Folder, styles: string): string {
  const page = files.find(({ path }) => path === 'index.html')?.content
  const language = /<html lang="([\w-]+)"/.exec(typeof page === 'string' ? page : '')?.[1] ?? 'en-GB'
  return `<!doctype html>\n<html lang="${language}"><head><meta charset="utf-8"><title>${escapeWords(`${title}, as built`)}</title><style>${styles.replaceAll('<', '\\3c ')}</style></head>`
}

/** The shapes that all pages share, once. */
const shapesOf = (folder: Folder): string =>
  /<svg class="defs"[\s\S]*?<\/svg>/.exec(textOf(folder, 'index.html') ?? '')?.[0] ?? ''
