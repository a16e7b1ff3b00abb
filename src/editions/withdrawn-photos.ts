import type { StatedNote } from '../facts/stated-note.ts'
import { photoName } from './photo-name.ts'

/** Pictures that notes show or list and that none shows any more once it is covered: as evidence they are named no more either. */
export function withdrawnPhotos(notes: readonly StatedNote[], covered: readonly StatedNote[]): ReadonlySet<string> {
  const left = photosNamed(covered)
  return new Set([...photosNamed(notes)].filter(name => !left.has(name)))
}

function photosNamed(notes: readonly StatedNote[]): Set<string> {
  const facts = notes.flatMap(note => note.facts)
  return new Set(
    facts.flatMap(fact => (fact.type === 'reference' && fact.to === 'photo' ? [photoName(fact.name)] : [])),
  )
}
