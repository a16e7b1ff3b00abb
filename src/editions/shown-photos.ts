import type { Nodes } from 'mdast'
import type { Place } from '../findings/place.ts'
import type { Notes } from '../record/fold-facts.ts'

interface NamedPhoto {
  /** Relative to the build folder. */
  readonly file: string
  /** Where a note names it first. */
  readonly place: Place
}

/** The pictures that notes show or name, in the order of the notes. */
export function namedPhotos({ build, sessions, inspection }: Notes, photos: readonly string[]): NamedPhoto[] {
  const found = new Map<string, NamedPhoto>()
  for (const note of [build, ...sessions, ...(inspection === null ? [] : [inspection])])
    for (const fact of note.facts) {
      const file = fact.type === 'reference' && fact.to === 'photo' ? fileOf(fact.name, photos) : undefined
      if (file !== undefined && !found.has(file)) found.set(file, { file, place: fact.place })
    }
  return [...found.values()]
}

function fileOf(name: string, photos: readonly string[]): string | undefined {
  return photos.find(file => isNamed(file, plain(name)))
}

/** Pictures that the notes, as the edition may see them, still name or link to. */
export function shownPhotos({ build, sessions, inspection }: Notes, photos: readonly string[]): string[] {
  const named = new Set<string>()
  for (const note of [build, ...sessions, ...(inspection === null ? [] : [inspection])]) {
    for (const fact of note.facts) if (fact.type === 'reference' && fact.to === 'photo') named.add(plain(fact.name))
    for (const address of linkedFiles(note.body)) named.add(address)
  }
  return photos.filter(file => [...named].some(name => isNamed(file, name)))
}

function isNamed(file: string, name: string): boolean {
  return plain(file) === `content/${name}` || plain(file).endsWith(`/${name}`)
}

/** The file at the end of each link's address that leads to no other place. */
function linkedFiles(node: Nodes): string[] {
  const own = node.type === 'link' && !/^[a-z][a-z0-9+.-]*:/i.test(node.url) ? [node.url.split('/').at(-1) ?? ''] : []
  const inner: readonly Nodes[] = 'children' in node ? node.children : []
  return [...own.filter(name => name !== '').map(name => plain(decoded(name))), ...inner.flatMap(linkedFiles)]
}

function decoded(name: string): string {
  try {
    return decodeURIComponent(name)
  } catch {
    return name
  }
}

const plain = (name: string): string => name.replace(/^\.?\//, '').normalize('NFC')
