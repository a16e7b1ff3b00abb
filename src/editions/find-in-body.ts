import type { Nodes } from 'mdast'
import type { Place } from '../findings/place.ts'
import { type Around, findInFields, findInText, type NameHit } from './find-in-fields.ts'

const holders = new Set(['paragraph', 'heading', 'tableCell'])

/** Withheld words in a body: in the words of its blocks, and in every other string of its nodes. */
export function findInBody(node: Nodes, around: Around): NameHit[] {
  const here = node.position === undefined ? around : { ...around, place: placeOf(node, around.file) }
  if (holders.has(node.type)) return [...inRun(node, here), ...attributesWithin(node, here)]
  const own = 'value' in node ? findInText(node.value, here) : inAttributes(node, here)
  return 'children' in node ? [...own, ...node.children.flatMap(child => findInBody(child, here))] : own
}

function attributesWithin(node: Nodes, around: Around): NameHit[] {
  const here = node.position === undefined ? around : { ...around, place: placeOf(node, around.file) }
  const own = inAttributes(node, here)
  return 'children' in node ? [...own, ...node.children.flatMap(child => attributesWithin(child, here))] : own
}

/** Every string of a node but its type and its words: addresses, alternatives, titles, identifiers. */
function inAttributes(node: Nodes, around: Around): NameHit[] {
  if (node.type === 'listItem') return node.data?.job?.explicit === true ? findInText(node.data.job.id, around) : [] // Its words are below it.
  const notWords = new Set(['type', 'position', 'children', 'value', 'quantity'])
  return Object.entries(node).flatMap(([key, value]) => (notWords.has(key) ? [] : findInFields(value, around, key)))
}

interface Piece {
  readonly from: number
  readonly node: Nodes
}

/** Words of one block on one string, so that a name set partly in bold is found too. */
function inRun(node: Nodes, around: Around): NameHit[] {
  const pieces: Piece[] = []
  let text = ''
  const gather = (one: Nodes): void => {
    if (one.type === 'break') text += '\n'
    else if ('value' in one) {
      pieces.push({ from: text.length, node: one })
      text += one.value
    } else if ('children' in one) one.children.forEach(gather)
  }
  gather(node)
  return around
    .find(text)
    .map(found => ({ ...found, place: placeInRun(text, pieces, { ...found, place: around.place }) }))
}

function placeInRun(text: string, pieces: readonly Piece[], { start, end, place }: NameHit): Place {
  const piece = pieces.findLast(({ from }) => from <= start)
  const position = piece?.node.position
  if (piece === undefined || position === undefined) return place
  const before = text.slice(piece.from, start).split('\n')
  const indent = before.length === 1 ? position.start.column : place.column
  const line = position.start.line + before.length - 1
  const column = indent + (before.at(-1)?.length ?? 0)
  return { file: place.file, line, column, endLine: line, endColumn: column + end - start }
}

function placeOf(node: Nodes, file: string): Place {
  const { start, end } = node.position ?? { start: { line: 1, column: 1 }, end: { line: 1, column: 1 } }
  return { file, line: start.line, column: start.column, endLine: end.line, endColumn: end.column }
}
