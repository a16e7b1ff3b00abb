import type { Element, ElementContent, Root } from 'hast'
import { eachElement, hasClass } from './elements.ts'

const holders = new Set(['p', 'li', 'td', 'th', 'dd', 'figcaption'])
const blocks = new Set([
  'p',
  'ul',
  'ol',
  'blockquote',
  'pre',
  'table',
  'div',
  'figure',
  'section',
  'hr',
  'h1',
  'h2',
  'h3',
  'h4',
  'h5',
  'h6',
])
const segmenter = new Intl.Segmenter('en', { granularity: 'sentence' })
// A workshop's abbreviations end no sentence.
const abbreviation =
  /(?:^|[\s(])(?:approx|max|min|no|nos|dia|thk|qty|incl|excl|e\.g|i\.e|cf|vs|fig|ref|temp|mm|in|ft|lb)\.\s*$/i

/** Puts each sentence into a span of its own, so that who follows a figure lands on the whole sentence. */
export function wrapSentences(tree: Root): void {
  eachElement(tree, node => {
    if (holders.has(node.tagName)) node.children = wrapRuns(node.children)
    return undefined
  })
}

/** The words of an element as a reader sees them. */
export function textOf(node: { type: string; value?: string; children?: readonly unknown[] }): string {
  if (node.type === 'text') return node.value ?? ''
  return (node.children ?? []).map(child => textOf(child as { type: string })).join('')
}

/** A list item may hold words and then a list: only runs of words are cut into sentences. */
function wrapRuns(children: readonly ElementContent[]): ElementContent[] {
  const result: ElementContent[] = []
  let run: ElementContent[] = []
  const flush = (): void => {
    result.push(...wrapRun(run))
    run = []
  }
  for (const child of children) {
    if (child.type === 'element' && isApart(child)) {
      flush()
      result.push(child)
    } else run.push(child)
  }
  flush()
  return result
}

/** Blocks, and what the tool adds to an item of the builder's. */
function isApart(node: Element): boolean {
  return blocks.has(node.tagName) || hasClass(node, 'state')
}

function wrapRun(run: readonly ElementContent[]): ElementContent[] {
  if (run.map(textOf).join('').trim() === '') return [...run]
  return splitAt(run, sentenceEnds(run.map(textOf).join(''))).flatMap(wrapOne)
}

/** Where sentences end, in UTF-16 units; the end of the text is not among them. */
function sentenceEnds(text: string): number[] {
  const ends: number[] = []
  for (const { index, segment } of segmenter.segment(text)) {
    const end = index + segment.length
    if (end < text.length && !abbreviation.test(segment)) ends.push(end)
  }
  return ends
}

/** Cuts at the ends that fall between nodes or inside plain text; one inside emphasis or a link does not cut it. */
function splitAt(run: readonly ElementContent[], ends: readonly number[]): ElementContent[][] {
  const groups: ElementContent[][] = [[]]
  let start = 0
  for (const child of run) {
    const length = textOf(child).length
    if (ends.includes(start) && length > 0 && start > 0) groups.push([])
    const inner =
      child.type === 'text' ? ends.filter(end => end > start && end < start + length).map(end => end - start) : []
    if (child.type !== 'text') groups.at(-1)?.push(child)
    else pushText(groups, child.value, inner)
    start += length
  }
  return groups.filter(group => group.length > 0)
}

function pushText(groups: ElementContent[][], text: string, cuts: readonly number[]): void {
  let from = 0
  for (const cut of [...cuts, text.length]) {
    if (from > 0) groups.push([])
    groups.at(-1)?.push({ type: 'text', value: text.slice(from, cut) })
    from = cut
  }
}

/** The blank after a sentence stays outside of it, or the wash would run on. */
function wrapOne(group: ElementContent[]): ElementContent[] {
  const last = group.at(-1)
  const blank = last?.type === 'text' ? (/\s+$/.exec(last.value)?.[0] ?? '') : ''
  const inner: ElementContent[] =
    last?.type === 'text' && blank !== ''
      ? [...group.slice(0, -1), { type: 'text', value: last.value.slice(0, -blank.length) }]
      : group
  if (inner.map(textOf).join('').trim() === '' && !inner.some(hasPicture)) return group
  const sentence: Element = { type: 'element', tagName: 'span', properties: { className: ['s'] }, children: inner }
  return blank === '' ? [sentence] : [sentence, { type: 'text', value: blank }]
}

function hasPicture(node: ElementContent): boolean {
  return node.type === 'element' && (node.tagName === 'img' || node.children.some(hasPicture))
}
