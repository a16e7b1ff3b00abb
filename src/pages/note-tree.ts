import type { Element, Root as Html } from 'hast'
import type { Root } from 'mdast'
import rehypeSanitize from 'rehype-sanitize'
import rehypeSlug from 'rehype-slug'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { eachElement, replaceElements } from './elements.ts'
import { nameBlocks } from './name-blocks.ts'
import type { NoteContext } from './note-context.ts'
import { noteHandlers } from './note-handlers.ts'
import { linkFigures, resolveLinks } from './note-links.ts'
import { showPictures } from './note-pictures.ts'
import { placePoints } from './note-points.ts'
import { noteSchema } from './note-schema.ts'
import { stackTables } from './note-tables.ts'
import { wrapSentences } from './sentences.ts'

/** The order is what makes it safe: footnote anchors are named first, then all is sanitized, then headings get theirs. */
const steps = unified()
  .use(remarkRehype, {
    clobberPrefix: 'n-',
    handlers: noteHandlers,
    footnoteLabelProperties: { className: ['footnotes-title'] },
  })
  .freeze()
const safe = unified().use(rehypeSanitize, noteSchema).use(rehypeSlug, { prefix: 'h-' }).freeze()

/** A note's body as HTML that holds nothing but what this folder lets through, its links resolved for one page. */
export function noteTree(body: Root, context: NoteContext): Html {
  const made = steps.runSync(body) as Html
  rankHeadings(made)
  const pictures = resolveLinks(made, context)
  const tree = safe.runSync(made) as Html
  // A link whose address was refused is its words.
  replaceElements(tree, node => (node.tagName === 'a' && !('href' in node.properties) ? node.children : null))
  nameFootnotes(tree)
  nameBlocks(tree)
  stateJobs(tree, context)
  stackTables(tree)
  wrapSentences(tree)
  linkFigures(tree, context)
  showPictures(tree, pictures)
  placePoints(tree, body)
  return tree
}

/** The page's own title has the first rank, so the note's highest heading takes the second. */
function rankHeadings(tree: Html): void {
  const headings: Element[] = []
  eachElement(tree, node => {
    if (/^h[1-6]$/.test(node.tagName) && node.properties.id !== 'footnote-label') headings.push(node)
    return undefined
  })
  const rankOf = ({ tagName }: Element): number => Number(tagName[1])
  const shift = 2 - Math.min(...headings.map(rankOf))
  for (const heading of headings) heading.tagName = `h${Math.min(6, rankOf(heading) + shift)}`
}

/** The heading of the footnotes gets an anchor that begins as theirs do. */
function nameFootnotes(tree: Html): void {
  eachElement(tree, node => {
    if (node.properties.id === 'footnote-label') node.properties.id = 'n-footnotes'
    if ('dataFootnoteRef' in node.properties) node.properties.ariaDescribedBy = ['n-footnotes']
    return undefined
  })
}

/** Box and words of a job: the box is drawn, the words say how it stands today. */
function stateJobs(tree: Html, context: NoteContext): void {
  const named = new Set<string>()
  eachElement(tree, node => {
    if (node.tagName === 'li') stateJob(node, context, named)
    if (node.tagName === 'input') boxOf(node)
    return undefined
  })
}

function stateJob(item: Element, context: NoteContext, named: Set<string>): void {
  const id = item.properties.dataJob
  delete item.properties.dataJob
  if (typeof id !== 'string') return
  if (!named.has(id)) item.properties.id = `j-${id}`
  named.add(id)
  const state = context.job(id)
  if (state === null) return
  const paragraph = item.children.find((child): child is Element => child.type === 'element' && child.tagName === 'p')
  const nested = item.children.findIndex(
    child => child.type === 'element' && (child.tagName === 'ul' || child.tagName === 'ol'),
  )
  const line: Element = {
    type: 'element',
    tagName: 'span',
    properties: { className: ['state'] },
    children: [{ type: 'text', value: state }],
  }
  if (paragraph !== undefined) paragraph.children.push(line)
  else item.children.splice(nested < 0 ? item.children.length : nested, 0, line)
}

/** A tick box that nobody can tick is a picture of one. */
function boxOf(input: Element): void {
  const done = input.properties.checked === true
  input.tagName = 'span'
  input.properties = { className: ['box', done ? 'done' : 'open'], role: 'img', ariaLabel: done ? 'done' : 'to do' }
}
