import type { Nodes, Parents } from 'mdast'
import { positionAt, type Source, type Span, spanOf } from './source.ts'
import { textOf } from './text-of.ts'
import { placeOf, textOffsets } from './text-offsets.ts'
import { isParent, walk } from './walk.ts'

/** Gives places to texts and links that an extension made without (addresses found after parsing), where the file tells them. */
export function fillPositions(tree: Nodes, source: Source): void {
  walk(tree, (node, { ancestors }) => {
    if (!isParent(node) || spanOf(node) === null || node.children.every(child => spanOf(child) !== null))
      return undefined
    fillChildren(node, { source, quotes: quotesIn(ancestors) })
    return undefined
  })
}

export function quotesIn(ancestors: readonly Parents[]): number {
  return ancestors.filter(ancestor => ancestor.type === 'blockquote').length
}

interface Surroundings {
  readonly source: Source
  readonly quotes: number
}

function fillChildren(parent: Parents, around: Surroundings): void {
  const children: readonly Nodes[] = parent.children
  for (let first = 0; first < children.length; first++) {
    if (spanOf(children[first] ?? parent) !== null) continue
    let last = first
    while (last + 1 < children.length && spanOf(children[last + 1] ?? parent) === null) last++
    const span = spanBetween(parent, { first, last })
    if (span !== null) placeRun(children.slice(first, last + 1), span, around)
    first = last
  }
}

function spanBetween(parent: Parents, run: { first: number; last: number }): Span | null {
  const whole = spanOf(parent)
  const before = parent.children[run.first - 1]
  const after = parent.children[run.last + 1]
  if (whole === null) return null
  return { start: (before && spanOf(before)?.end) ?? whole.start, end: (after && spanOf(after)?.start) ?? whole.end }
}

const longestOpening = 8 // characters before a parent's first word, such as `###### ` or `**`

function placeRun(run: readonly Nodes[], span: Span, { source, quotes }: Surroundings): void {
  const value = run.map(textOf).join('')
  for (let start = span.start; start <= span.start + longestOpening; start++) {
    const offsets = textOffsets({ value, source: source.text, span: { start, end: span.end }, quotes })
    if (offsets === null) continue
    let from = 0
    for (const node of run) {
      const to = from + textOf(node).length
      place(node, source, placeOf(offsets, { start: from, end: to }))
      from = to
    }
    return
  }
}

function place(node: Nodes, source: Source, span: Span): void {
  node.position = positionAt(source, span)
  if (isParent(node)) for (const child of node.children) child.position ??= positionAt(source, span)
}
