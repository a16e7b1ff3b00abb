import { parseHTML } from 'linkedom'

interface Undo {
  /** Shift of the headings of the specified HTML, so that its highest has the second rank, as on a page of ours. */
  readonly rankHeadings: boolean
}

const blocks = new Set([
  'P',
  'UL',
  'OL',
  'LI',
  'BLOCKQUOTE',
  'PRE',
  'TABLE',
  'THEAD',
  'TBODY',
  'TR',
  'TD',
  'TH',
  'HR',
  'H1',
  'H2',
  'H3',
  'H4',
  'H5',
  'H6',
  'BODY',
  'SECTION',
  'DIV',
  'FIGURE',
])

/** HTML as a string in which only what means something differs: attributes sorted, entities read, blanks between blocks gone. */
export function canonicalHtml(html: string, { rankHeadings }: Undo = { rankHeadings: false }): string {
  const { document } = parseHTML(`<!doctype html><html><body>${html}</body></html>`)
  const headings = [...document.querySelectorAll('h1,h2,h3,h4,h5,h6')]
  const shift =
    rankHeadings && headings.length > 0 ? 2 - Math.min(...headings.map(heading => Number(heading.tagName[1]))) : 0
  return printChildren(document.body as unknown as PlainNode, { shift, inPre: false }).trim()
}

/** The words of HTML, blanks made one. */
export function wordsOf(html: string): string {
  const { document } = parseHTML(`<!doctype html><html><body>${html}</body></html>`)
  return (document.body.textContent ?? '').replace(/\s+/g, ' ').trim()
}

interface PlainNode {
  readonly nodeType: number
  readonly tagName: string
  readonly textContent: string | null
  readonly childNodes: Iterable<PlainNode>
  readonly attributes: Iterable<{ readonly name: string; readonly value: string }>
}

interface Print {
  readonly shift: number
  readonly inPre: boolean
}

function printChildren(node: PlainNode, print: Print): string {
  return [...node.childNodes]
    .map((child, index, all) =>
      printNode(child, print, { before: all[index - 1], after: all[index + 1], parent: node }),
    )
    .join('')
}

function printNode(
  node: PlainNode,
  print: Print,
  around: { before?: PlainNode | undefined; after?: PlainNode | undefined; parent: PlainNode },
): string {
  if (node.nodeType === 3) return printText(node.textContent ?? '', print, around)
  if (node.nodeType !== 1) return ''
  const rank = /^H([1-6])$/.exec(node.tagName)?.[1]
  const name = rank === undefined ? node.tagName.toLowerCase() : `h${Math.min(6, Number(rank) + print.shift)}`
  const attributes = [...node.attributes]
    .map(({ name: key, value }) => ` ${key}="${value}"`)
    .sort()
    .join('')
  return `<${name}${attributes}>${printChildren(node, { ...print, inPre: print.inPre || node.tagName === 'PRE' })}</${name}>`
}

function printText(
  text: string,
  { inPre }: Print,
  { before, after, parent }: { before?: PlainNode | undefined; after?: PlainNode | undefined; parent: PlainNode },
): string {
  if (inPre) return text
  let plain = text.replace(/[\t\n\f\r \u202f]+/g, ' ')
  const isEdge = (node: PlainNode | undefined): boolean =>
    node === undefined ? blocks.has(parent.tagName) : blocks.has(node.tagName) || node.tagName === 'BR'
  if (isEdge(before)) plain = plain.trimStart()
  if (isEdge(after)) plain = plain.trimEnd()
  return plain
}
