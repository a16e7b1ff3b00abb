import type { Nodes } from 'mdast'

/** Every word that a reader of the tree can meet: text, code, HTML, figures, alternatives, in their order, without blanks. */
export function wordsOf(node: Nodes): string {
  const own = 'value' in node ? node.value : 'alt' in node ? (node.alt ?? '') : ''
  const inner: readonly Nodes[] = 'children' in node ? node.children : []
  return (own + inner.map(wordsOf).join('')).replace(/\s+/gu, '')
}
