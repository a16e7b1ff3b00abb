import type { Nodes } from 'mdast'
import { walk } from './walk.ts'

/** The words of a node: text, code and figures, not the alternatives of pictures. A hard break is a line break. */
export function textOf(node: Nodes): string {
  const words: string[] = []
  walk(node, inner => {
    if (inner.type === 'break') words.push('\n')
    else if ('value' in inner && inner.type !== 'html') words.push(inner.value)
    return undefined
  })
  return words.join('')
}

/** The words of a node on one line, blanks joined and trimmed. */
export function lineOf(node: Nodes): string {
  return textOf(node).replace(/\s+/gu, ' ').trim()
}
