import type { Nodes } from 'mdast'

/** The name of what `[](part:fuel-tank)` leads to. */
export type NameOf = (scheme: string, path: string) => string

/** A run of words of one node: where it stands in the whole text, and where in the file. */
export interface Piece {
  readonly value: string
  readonly from: number
  readonly to: number
  readonly place: { readonly line: number; readonly column: number } | null
  /** `q-4` where the piece is a figure. */
  readonly figure: string | null
}

/** The words of one block. `column`: where its later lines begin. */
export interface Pieces {
  /** On one line: line ends are blanks, so that places stay. */
  readonly text: string
  readonly pieces: readonly Piece[]
  readonly column: number
}

const holders = new Set(['paragraph', 'heading', 'tableRow', 'code', 'html', 'figure'])

/** The words that a block holds itself; null for a block that holds other blocks. */
export function piecesOf(node: Nodes, nameOf: NameOf): Pieces | null {
  if (!holders.has(node.type) && !('value' in node)) return null
  const pieces: Piece[] = []
  gather(node, { pieces, nameOf })
  return {
    text: pieces
      .map(({ value }) => value)
      .join('')
      .replace(/\s/gu, ' '),
    pieces,
    column: node.position?.start.column ?? 1,
  }
}

interface Gathering {
  readonly pieces: Piece[]
  readonly nameOf: NameOf
}

function gather(node: Nodes, gathering: Gathering): void {
  if ('children' in node) {
    const before = gathering.pieces.length
    for (const [index, child] of node.children.entries()) {
      if (node.type === 'tableRow' && index > 0) add(gathering, ' · ', node, false)
      gather(child, gathering)
    }
    if (node.type === 'link' && gathering.pieces.length === before)
      add(gathering, linkName(node, gathering.nameOf), node)
    if (node.type === 'figure' && node.caption !== null) add(gathering, `. ${node.caption}`, node, false)
  } else add(gathering, ownWords(node), node)
}

/** The words of a node without children. The blank for a break keeps words apart. */
function ownWords(node: Nodes): string {
  if (node.type === 'image' || node.type === 'imageReference') return node.alt ?? ''
  if (node.type === 'break') return ' '
  return 'value' in node ? node.value : ''
}

function linkName(link: Extract<Nodes, { type: 'link' }>, nameOf: NameOf): string {
  const thing = link.data?.thing
  return thing === undefined ? link.url : nameOf(thing.scheme, thing.path)
}

function add({ pieces }: Gathering, value: string, node: Nodes, hasPlace = true): void {
  if (value === '') return
  const from = pieces.at(-1)?.to ?? 0
  const figure = node.type === 'quantity' ? (node.id ?? null) : null
  pieces.push({ value, from, to: from + value.length, place: hasPlace ? (node.position?.start ?? null) : null, figure })
}
