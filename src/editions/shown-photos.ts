import type { Notes } from '../record/fold-facts.ts'

/** Pictures that the notes, as the edition may see them, still name. */
export function shownPhotos({ build, sessions, inspection }: Notes, photos: readonly string[]): string[] {
  const named = new Set<string>()
  for (const note of [build, ...sessions, ...(inspection === null ? [] : [inspection])])
    for (const fact of note.facts) if (fact.type === 'reference' && fact.to === 'photo') named.add(plain(fact.name))
  return photos.filter(file =>
    [...named].some(name => plain(file) === `content/${name}` || plain(file).endsWith(`/${name}`)),
  )
}

const plain = (name: string): string => name.replace(/^\.?\//, '').normalize('NFC')
