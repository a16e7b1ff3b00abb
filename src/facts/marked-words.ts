import type { Nodes } from 'mdast'
import type { PrivateKind } from '../../plugins/private/node.ts'
import type { Place } from '../findings/place.ts'
import { type Front, type FrontScalar, placeWithin } from '../notes/front.ts'
import type { Note } from '../notes/note.ts'
import { placeOfPosition } from './body-place.ts'
import { wordsOf } from './body-words.ts'
import { entryOf, scalarOf } from './front-tree.ts'
import { unmark } from './unmark.ts'

/** The whole text of an inline private mark, wherever in a note it stands. */
export interface MarkedWords {
  readonly text: string
  /** `broken`: a key of front matter with a mark in it that does not parse; the text is the whole key. */
  readonly as: PrivateKind | 'broken'
  readonly place: Place
  /** In front matter a mark may stand where a name is read, and the name bears no mark any more; in a key none is read at all. */
  readonly within: 'front' | 'key' | 'body'
}

/** Every inline private mark of a note that parsed. */
export function markedWords({ file, front, body }: Note): MarkedWords[] {
  return [...(front === null ? [] : [...ofWriter(front), ...inFront(front, file)]), ...inBody(body, file)]
}

/** The writer of a note is a person, marked or not. */
function ofWriter(front: Front): MarkedWords[] {
  const by = scalarOf(entryOf(front, 'by')?.value)
  const text = by === null ? '' : unmark(by.text).words.text.trim()
  return by === null || text === '' ? [] : [{ text, as: 'people', place: by.place, within: 'front' }]
}

/** A key of front matter and where it is written; facts know of a thing's name only where its properties stand. */
export interface WrittenKey {
  readonly text: string
  readonly place: Place
}

/** Every key of a note's front matter, in the order written. */
export function writtenKeys({ front }: Note): WrittenKey[] {
  return front === null ? [] : keysOf(front)
}

function keysOf(front: Front): WrittenKey[] {
  if (front.kind === 'list') return front.items.flatMap(keysOf)
  if (front.kind !== 'map') return []
  return front.entries.flatMap(({ key, keyPlace, value }) => [{ text: key, place: keyPlace }, ...keysOf(value)])
}

function inFront(front: Front, file: string): MarkedWords[] {
  if (front.kind === 'map')
    return front.entries.flatMap(({ key, keyPlace, value }) => [...inKey(key, keyPlace), ...inFront(value, file)])
  if (front.kind === 'list') return front.items.flatMap(item => inFront(item, file))
  return front.kind === 'scalar' ? inScalar(front, file) : []
}

function inKey(key: string, place: Place): MarkedWords[] {
  const { words, broken } = unmark(key)
  if (broken !== null) return [{ text: key, as: 'broken', place, within: 'key' }]
  return words.marks.map(({ start, end, as }) => ({ text: words.text.slice(start, end), as, place, within: 'key' }))
}

function inScalar({ text, pieces }: FrontScalar, file: string): MarkedWords[] {
  const { words, origin, broken } = unmark(text)
  if (broken !== null) return []
  return words.marks.map(({ start, end, as }) => ({
    text: words.text.slice(start, end),
    as,
    place: placeWithin(pieces, file, { start: origin(start), end: origin(end - 1) + 1 }),
    within: 'front',
  }))
}

function inBody(node: Nodes, file: string): MarkedWords[] {
  const inner = 'children' in node ? node.children.flatMap(child => inBody(child, file)) : []
  if (node.type !== 'private' || node.position === undefined) return inner
  const read = wordsOf([node], { file, privacy: [] })
  if (read === null) return inner
  return [{ text: read.words.text, as: node.as, place: placeOfPosition(node.position, file), within: 'body' }, ...inner]
}
