import type { Nodes, Root } from 'mdast'
import { type Cut, cutSentences } from './cut-sentences.ts'
import { type NameOf, type Piece, type Pieces, piecesOf } from './pieces-of.ts'

/** A sentence of a note's body: what it says, where it begins, which figures stand in it. */
export interface Sentence {
  readonly text: string
  readonly line: number
  readonly column: number
  /** Of its block on the note's page, `b-31` by the line where it begins; empty where it has none. */
  readonly anchor: string
  /** The job that the words are, null where they are none. */
  readonly job: string | null
  readonly figures: readonly { readonly id: string; readonly start: number; readonly end: number }[]
}

interface Within {
  readonly anchor: string
  readonly job: string | null
}

/** Every word of a body as sentences, in the order written; a row of a table is one. */
export function noteSentences(body: Root, nameOf: NameOf): Sentence[] {
  const found: Sentence[] = []
  const take = (node: Nodes, within: Within): void => {
    const pieces = piecesOf(node, nameOf)
    if (pieces !== null) found.push(...sentencesOf(pieces, within))
    else if ('children' in node) for (const child of node.children) take(child, inside(child, within))
  }
  for (const [at, block] of body.children.entries())
    take(block, inside(block, { anchor: anchorOf(body.children.slice(at)), job: null }))
  return found
}

/** A heading's own anchor is made of its words: it is reached by the block below it. */
function anchorOf(blocks: readonly Nodes[]): string {
  const block = blocks.find(({ type }) => type !== 'heading')
  if (block?.type === 'footnoteDefinition') return `n-fn-${block.identifier.toLowerCase()}`
  return block?.position === undefined ? '' : `b-${block.position.start.line}`
}

/** An item within a job's item is no part of that job. */
function inside(node: Nodes, within: Within): Within {
  return node.type === 'listItem' ? { ...within, job: node.data?.job?.id ?? null } : within
}

function sentencesOf(pieces: Pieces, within: Within): Sentence[] {
  return cutSentences(pieces).map(cut => {
    const { line, column } = placeOf(pieces, cut.start)
    return { text: pieces.text.slice(cut.start, cut.end), line, column, ...within, figures: figuresIn(pieces, cut) }
  })
}

function figuresIn({ pieces }: Pieces, { start, end }: Cut): Sentence['figures'] {
  return pieces.flatMap(piece => {
    const isHere = piece.figure !== null && piece.from >= start && piece.from < end
    return isHere ? [{ id: piece.figure ?? '', start: piece.from - start, end: Math.min(piece.to, end) - start }] : []
  })
}

/** Counts lines within the piece; a later line begins where the block does. */
function placeOf({ pieces, column }: Pieces, at: number): { line: number; column: number } {
  const piece = pieces.findLast(one => one.place !== null && one.from <= at) ?? pieces.find(one => one.place !== null)
  if (piece?.place === null || piece === undefined) return { line: 1, column: 1 }
  const before = written(piece, at).split('\n')
  const last = before.at(-1) ?? ''
  if (before.length === 1) return { line: piece.place.line, column: piece.place.column + last.length }
  return { line: piece.place.line + before.length - 1, column: column + last.length }
}

function written(piece: Piece, at: number): string {
  return piece.value.slice(0, Math.max(0, at - piece.from))
}
