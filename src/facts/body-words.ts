import type { Nodes } from 'mdast'
import type { PrivateKind } from '../../plugins/private/node.ts'
import { placeOfNodes } from './body-place.ts'
import { markWhole, type Privacy } from './privacy.ts'
import type { WordsRead } from './read-words.ts'

interface Gathered {
  text: string
  readonly marks: { start: number; end: number; as: PrivateKind }[]
  /** The first and the last node that hold a word. */
  first: Nodes | null
  last: Nodes | null
}

/** The words of nodes on one line, blanks joined and trimmed, with the private marks in and around them; null where there are none. */
export function wordsOf(
  nodes: readonly Nodes[],
  { file, privacy }: { file: string; privacy: Privacy },
): WordsRead | null {
  const gathered: Gathered = { text: '', marks: [], first: null, last: null }
  for (const node of nodes) gather(node, gathered)
  const text = gathered.text.trimEnd()
  const { first, last } = gathered
  const place = first === null || last === null ? null : placeOfNodes([first, last], file)
  if (text === '' || place === null) return null
  const inner = gathered.marks
    .map(mark => ({ ...mark, end: Math.min(mark.end, text.length) }))
    .filter(({ start, end }) => end > start)
  return { words: { text, marks: [...markWhole(text, privacy), ...inner] }, place }
}

function gather(node: Nodes, gathered: Gathered): void {
  const start = gathered.text.length
  if (node.type === 'break') add(gathered, ' ')
  else if ('value' in node && node.type !== 'html') {
    add(gathered, node.value)
    if (node.value.trim() !== '') gathered.last = node
    gathered.first ??= gathered.last
  }
  if ('children' in node) for (const child of node.children) gather(child, gathered)
  if (node.type === 'private') gathered.marks.push({ start, end: gathered.text.length, as: node.as })
}

function add(gathered: Gathered, text: string): void {
  const line = text.replace(/\s+/g, ' ')
  const isBlankTwice = line.startsWith(' ') && (gathered.text === '' || gathered.text.endsWith(' '))
  gathered.text += isBlankTwice ? line.slice(1) : line
}
