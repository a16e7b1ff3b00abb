import type { Nodes, Parents, Root } from 'mdast'
import { isBareAddress } from '../tree/inline-run.ts'
import { type DirectiveNode, isDirective } from '../tree/private-mark.ts'
import { type Source, type Span, spanOf } from '../tree/source.ts'
import { type Path, walk } from '../tree/walk.ts'
import { type BlockRange, blockOf } from '../tree/withhold-blocks.ts'
import { isLeftOpen, judgeDirective } from './judge-directive.ts'
import { scanHidden } from './scan-hidden.ts'
import { scanText, type TextMark } from './scan-text.ts'

/** A mark in the text of a note, the block in which it stands, and its node where the parser took it for a directive. */
export interface FoundMark {
  readonly mark: TextMark
  readonly block: BlockRange
  readonly directive: Nodes | null
  /** What stands around it, the root first. */
  readonly ancestors: readonly Parents[]
}

/** Every failed mark and every fence that is plain text, in the order of the file. */
export function findMarks(tree: Root, source: Source): FoundMark[] {
  const found: FoundMark[] = []
  walk(tree, (node, path) => {
    const block = blockOf(path)
    if (block === null) return undefined
    const failed = isDirective(node) ? judgeDirective(node, source.text) : null
    const marks = textMarks(node, path, source)
    if (failed === null && marks.length === 0) return undefined
    const ancestors = [...path.ancestors]
    if (failed !== null) found.push({ mark: { kind: 'failed', ...failed }, block, directive: node, ancestors })
    if (failed !== null && isDirective(node) && isLeftOpen(node, source.text))
      found.push(shorterFence(node, failed.span))
    for (const mark of marks) found.push({ mark, block, directive: null, ancestors })
    return undefined
  })
  return found
}

/** What a container left open holds may end with a fence too short for it: that is the same mistake. */
function shorterFence(node: DirectiveNode, span: Span): FoundMark {
  const within = { parent: node, first: 0, last: 0 }
  return { mark: { kind: 'word-opening', span }, block: within, directive: null, ancestors: [] }
}

function textMarks(node: Nodes, path: Path, source: Source): TextMark[] {
  const span = spanOf(node)
  if (span === null) return []
  if (node.type !== 'text') return scanHidden(node, source.text, span)
  const parent = path.ancestors.at(-1)
  if (parent?.type === 'link' && isBareAddress(parent)) return []
  return scanText(source.text, span, opensLine(path, source, span))
}

/** Whether a text begins its block or a line of it. */
function opensLine({ ancestors, indexes }: Path, { text }: Source, span: Span): boolean {
  const before = ancestors.at(-1)?.children[(indexes.at(-1) ?? 0) - 1]
  if (before?.type === 'break') return true
  return (
    before === undefined &&
    ['paragraph', 'tableCell', 'heading'].includes(ancestors.at(-1)?.type ?? '') &&
    text.charAt(span.start) === ':'
  )
}
