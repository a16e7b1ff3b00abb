import type { Nodes, Root } from 'mdast'

const segmenter = new Intl.Segmenter('en', { granularity: 'sentence' })

/** The first sentence that a note says, as plain words. */
export function firstSentence(body: Root): string {
  const paragraph = body.children.find(child => child.type === 'paragraph')
  if (paragraph === undefined) return ''
  const [first] = segmenter.segment(plainText(paragraph).replace(/\s+/g, ' ').trim())
  return first?.segment.trim() ?? ''
}

/** The words of a node. An empty link has none yet, a picture stands for its alternative text. */
function plainText(node: Nodes): string {
  if ('value' in node) return node.value
  if (node.type === 'image') return node.alt ?? ''
  if (node.type === 'break') return ' '
  return 'children' in node ? node.children.map(child => plainText(child as Nodes)).join('') : ''
}
