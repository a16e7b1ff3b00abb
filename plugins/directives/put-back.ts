import type { Nodes, Paragraph, Parents, PhrasingContent, Root, Text } from 'mdast'
import { directiveSource } from '../tree/directive-source.ts'
import { type DirectiveNode, isDirective } from '../tree/private-mark.ts'
import { positionAt, type Source, type Span, spanOf } from '../tree/source.ts'
import { rewrite, setChildren } from '../tree/walk.ts'

/** Puts failed directives back as they were typed, fences included; their words stay the nodes that they are. */
export function putBack(tree: Root, source: Source, failed: ReadonlySet<Nodes>): void {
  const changed = new Set<Parents>()
  rewrite(tree, (node, parent) => {
    if (!failed.has(node) || !isDirective(node)) return null
    changed.add(parent)
    return node.type === 'textDirective' ? inLine(node, node.children, source) : asBlocks(node, source)
  })
  for (const parent of changed) joinTexts(parent)
}

/** `:name[` label `]{attributes}` */
function inLine(node: DirectiveNode, label: readonly PhrasingContent[], source: Source): PhrasingContent[] {
  const span = spanOf(node)
  if (span === null) return [...label]
  const head = directiveSource(source.text, span)
  const end = node.type === 'containerDirective' ? head.end : span.end
  const first = label[0] && spanOf(label[0])
  const last = label.at(-1)
  const lastSpan = last && spanOf(last)
  if (!first || !lastSpan) return typed(source, { start: span.start, end })
  return [
    ...typed(source, { start: span.start, end: first.start }),
    ...label,
    ...typed(source, { start: lastSpan.end, end }),
  ]
}

function asBlocks(node: DirectiveNode, source: Source): Nodes[] {
  if (node.type !== 'containerDirective') return [paragraphOf(inLine(node, phrasing(node), source))]
  const label = node.children.find(
    (child): child is Paragraph => child.type === 'paragraph' && child.data?.directiveLabel === true,
  )
  const blocks: Nodes[] = [paragraphOf(inLine(node, label?.children ?? [], source))]
  for (const child of node.children) if (child !== label) blocks.push(child)
  const closing = closingFence(node, source)
  if (closing !== null) blocks.push(paragraphOf(typed(source, closing)))
  return blocks
}

function phrasing(node: DirectiveNode): readonly PhrasingContent[] {
  return node.type === 'containerDirective' ? [] : node.children
}

/** The colons behind the last block, or null where the container was never closed. */
function closingFence(node: DirectiveNode, source: Source): Span | null {
  const span = spanOf(node)
  if (span === null) return null
  const last = node.children.at(-1)
  const from = Math.max(directiveSource(source.text, span).end, (last && spanOf(last)?.end) ?? 0)
  const found = /(:+)[ \t]*$/u.exec(source.text.slice(from, span.end))
  if (found === null) return null
  const start = from + found.index
  return { start, end: start + (found[1]?.length ?? 0) }
}

function paragraphOf(children: PhrasingContent[]): Paragraph {
  const start = children[0]?.position?.start
  const end = children.at(-1)?.position?.end
  const paragraph: Paragraph = { type: 'paragraph', children, ...(start && end && { position: { start, end } }) }
  joinTexts(paragraph)
  return paragraph
}

/** The characters of the file; `\` and `&` in them stand for themselves. */
function typed(source: Source, span: Span): Text[] {
  return span.end > span.start
    ? [{ type: 'text', value: source.text.slice(span.start, span.end), position: positionAt(source, span) }]
    : []
}

function joinTexts(parent: Parents): void {
  const next: Nodes[] = []
  for (const child of parent.children as readonly Nodes[]) {
    const before = next.at(-1)
    if (child.type === 'text' && before?.type === 'text') next[next.length - 1] = joined(before, child)
    else next.push(child)
  }
  setChildren(parent, next)
}

function joined(before: Text, after: Text): Text {
  const start = before.position?.start
  const end = after.position?.end
  return { type: 'text', value: before.value + after.value, ...(start && end && { position: { start, end } }) }
}
