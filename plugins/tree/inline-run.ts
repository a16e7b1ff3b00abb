import type { Link, Nodes, Parents, Text } from 'mdast'
import { countUpTo } from './count-up-to.ts'
import { fillPositions, quotesIn } from './missing-positions.ts'
import type { Source, Span } from './source.ts'
import { isParent, walk } from './walk.ts'

/** Words that read on without a break: a paragraph's, a cell's, a label's, through emphasis and links. */
export interface InlineRun {
  readonly parent: Parents
  readonly text: string
  readonly pieces: readonly TextPiece[]
  /** Where each piece begins. */
  readonly starts: readonly number[]
  /** How many block quotes stand around it. */
  readonly quotes: number
}

/** A text node, and where its words begin in the run. */
export interface TextPiece {
  readonly node: Text
  readonly from: number
  /** Where in the run a carriage return of the value is left out: `\r\n` reads as one blank. */
  readonly returns: readonly number[]
}

/** Read through: `about **64 L**` is one run. */
const transparent = new Set<string>(['emphasis', 'strong', 'link', 'linkReference'])

const wall = '\uFFFC' // object replacement character: no figure reaches across code, a picture, a mark or struck words

/** All runs of a tree that hold words, in the order of the text. */
export function inlineRuns(tree: Nodes, source: Source): InlineRun[] {
  fillPositions(tree, source)
  const runs: InlineRun[] = []
  walk(tree, (node, { ancestors }) => {
    if (!isParent(node) || transparent.has(node.type)) return undefined
    const run = runOf(node, quotesIn([...ancestors, node]))
    if (run.pieces.length > 0) runs.push(run)
    return undefined
  })
  return runs
}

/** The run of one parent's own words. */
export function runOf(parent: Parents, quotes: number): InlineRun {
  const pieces: TextPiece[] = []
  const words: string[] = []
  let from = 0
  walk(parent, node => {
    if (node === parent || isReadThrough(node)) return undefined
    const word = wordOf(node)
    if (node.type === 'text') pieces.push({ node, from, returns: returnsIn(node.value, from) })
    words.push(word)
    from += word.length
    return 'skip'
  })
  return { parent, text: words.join(''), pieces, starts: pieces.map(piece => piece.from), quotes }
}

const powerTag = /^<\/?sup>$/i // of `2.5 mm<sup>2</sup>`

function wordOf(node: Nodes): string {
  if (node.type === 'text') return onOneLine(node.value)
  if (node.type === 'break') return '\n'
  return node.type === 'html' && powerTag.test(node.value) ? node.value : wall
}

/** A soft line break is a blank (CommonMark 0.31 6.8). */
function onOneLine(value: string): string {
  return value.replace(/\r\n|\r|\n/gu, ' ')
}

function returnsIn(value: string, from: number): number[] {
  return Array.from(value.matchAll(/\r\n/gu), ({ index }, before) => from + index - before)
}

/** The part of a piece's value that a stretch of the run covers. */
export function valueSpan({ node, from, returns }: TextPiece, span: Span): Span {
  const unit = (at: number): number => at - from + countUpTo(returns, at)
  const start = span.start <= from ? 0 : unit(span.start)
  return { start, end: Math.max(start, Math.min(node.value.length, span.end <= from ? 0 : unit(span.end - 1) + 1)) }
}

function isReadThrough(node: Nodes): boolean {
  return transparent.has(node.type) && !(node.type === 'link' && isBareAddress(node))
}

/** `https://example.org/5mm` and `<part:tank>` show their own address. */
export function isBareAddress(link: Link): boolean {
  const [only, ...others] = link.children
  if (only?.type !== 'text' || others.length > 0) return false
  return [only.value, `http://${only.value}`, `mailto:${only.value}`].includes(link.url)
}
