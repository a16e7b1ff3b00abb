import type { Literal, Nodes } from 'mdast'
import type { Span } from './span.ts'

/** By node: the parts of its own words that are taken out because of words around it. */
export type CrossingSpans = ReadonlyMap<Nodes, readonly Span[]>

const holders = new Set(['paragraph', 'heading', 'tableCell'])

/** What is found only in the words of a whole block, such as an amount that is set partly in bold: `£**184**`. */
export function crossingSpans(block: Nodes, find: (text: string) => readonly Span[]): CrossingSpans | null {
  if (!holders.has(block.type)) return null
  const pieces: { node: Nodes & Literal; from: number }[] = []
  let text = ''
  const gather = (node: Nodes): void => {
    if (node.type === 'private' || node.type === 'break') text += '\n'
    else if ('value' in node) {
      pieces.push({ node, from: text.length })
      text += node.value
    } else if ('children' in node) for (const child of node.children) gather(child)
  }
  gather(block)
  if (pieces.length < 2) return null
  const spans = find(text)
  const within = pieces.map(
    ({ node, from }) => [node, spansWithin(spans, { start: from, end: from + node.value.length })] as const,
  )
  return new Map(within.filter(([, found]) => found.length > 0))
}

function spansWithin(spans: readonly Span[], { start, end }: Span): Span[] {
  return spans
    .map(span => ({ start: Math.max(span.start, start) - start, end: Math.min(span.end, end) - start }))
    .filter(span => span.end > span.start)
}
