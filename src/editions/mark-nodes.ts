import type { Nodes, Paragraph, Text } from 'mdast'
import { neutralMark } from './withheld.ts'

type Position = NonNullable<Nodes['position']>

/** The neutral mark as words of a line, where what it stands for stood. */
export function markAt(position: Position | undefined): Text {
  const text: Text = { type: 'text', value: neutralMark }
  return position === undefined ? text : { ...text, position: withoutOffsets(position) }
}

/** The same as a block of its own. */
export function markBlock(mark: Text): Paragraph {
  const block: Paragraph = { type: 'paragraph', children: [mark] }
  return mark.position === undefined ? block : { ...block, position: mark.position }
}

/** Two marks side by side become one: their number would count what is withheld. */
export function joinMarks(nodes: readonly Nodes[]): Nodes[] {
  return nodes.filter((node, at) => !isMark(node) || !isMark(nodes[at - 1]))
}

function isMark(node: Nodes | undefined): boolean {
  if (node?.type === 'paragraph') return node.children.length === 1 && isMark(node.children[0])
  return node?.type === 'text' && node.value === neutralMark
}

/** Offsets count every unit of the file before them, the withheld ones too. */
export function withoutOffsets({ start, end }: Position): Position {
  return { start: { line: start.line, column: start.column }, end: { line: end.line, column: end.column } }
}
