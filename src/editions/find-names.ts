import type { WrittenKey } from '../facts/marked-words.ts'
import type { StatedNote } from '../facts/stated-note.ts'
import type { Place } from '../findings/place.ts'
import { findInBody } from './find-in-body.ts'
import { findInFields, findInText, type NameHit } from './find-in-fields.ts'
import type { NameFinder } from './name-finder.ts'

export interface Search {
  readonly file: string
  readonly find: NameFinder
  readonly keys: readonly WrittenKey[]
}

/** Every withheld word in what an edition would publish of a note: words, names, identifiers, addresses, the file's own name. */
export function findNames(note: StatedNote, { file, find, keys }: Search): NameHit[] {
  const fence = note.session?.fence ?? note.build?.fence ?? startOf(file)
  const { session, build, body } = note
  const around = { place: fence, find, file, keys: keys.filter(({ place }) => place.file === file) }
  const inName = session === null ? [] : findInText(file, around)
  // What the body states is found in its tree, at the very word.
  const bodyLine = body.children[0]?.position?.start.line ?? Number.POSITIVE_INFINITY
  const facts = findInFields(
    { session, build, facts: note.facts.filter(({ place }) => place.line < bodyLine) },
    around,
    '',
  )
  const figures = findInFields(
    note.figures.filter(({ place }) => place.line < bodyLine),
    around,
    '',
  )
  // A figure's path says again what its fact says, where there is one.
  const alone = figures.filter(({ word }) => !facts.some(hit => hit.word === word))
  return onceEach([...inName, ...facts, ...alone, ...findInBody(body, around)])
}

function onceEach(hits: readonly NameHit[]): NameHit[] {
  const keyOf = ({ place, word }: NameHit): string => `${place.line}:${place.column} ${word.text}`
  return [...new Map(hits.map(hit => [keyOf(hit), hit])).values()]
}

function startOf(file: string): Place {
  return { file, line: 1, column: 1, endLine: 1, endColumn: 1 }
}
