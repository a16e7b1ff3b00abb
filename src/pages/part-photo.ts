import type { Part } from '../record/record.ts'
import type { Cell } from './cells.ts'
import { wordsCell } from './inline.ts'
import { type PageScope, standing } from './page-scope.ts'
import { pictureSources } from './picture-sources.ts'
import type { PublishedPhoto, ShownPhoto } from './shown-photos.ts'
import { subjectAddress } from './thing-addresses.ts'

/** The first picture that a part's entries name, small, and a link to all of them; empty where they name none that is published. */
export function photoCell(scope: PageScope, part: Part): Cell {
  const [first, ...others] = photosUnder(scope, part, ['photos'])
  if (first === undefined) return wordsCell('')
  const words = others.length === 0 ? 'picture' : `${others.length + 1} pictures`
  return {
    kind: 'thumb',
    picture: {
      src: scope.to(first.address),
      sources: pictureSources(first, scope.to, 'thumb'),
      width: first.width,
      height: first.height,
    },
    words: [scope.link(words, `${subjectAddress({ kind: 'part', id: part.id })}#photos`)],
  }
}

/** The pictures that a part's entries name, as a note shows them, or by the part's name where none does. */
export function partPhotos(scope: PageScope, part: Part): ShownPhoto[] {
  const session = (standing(part.properties, 'photos') ?? standing(part.properties, 'receipt'))?.session ?? null
  return photosUnder(scope, part, ['photos', 'receipt']).map(
    photo =>
      scope.atlas.shown.find(shown => shown.photo.file === photo.file) ?? {
        photo,
        alternative: `${part.name}, photograph`,
        caption: null,
        session,
        line: null,
      },
  )
}

function photosUnder(scope: PageScope, part: Part, keys: readonly string[]): PublishedPhoto[] {
  const names = keys.flatMap((key): string[] => {
    const value = standing(part.properties, key)?.value
    if (value?.type === 'list') return value.entries.map(({ words }) => words.text)
    return value?.type === 'words' ? [value.words.text] : []
  })
  return names.flatMap(
    name => scope.atlas.extras.photos.find(({ file }) => file === name || file.endsWith(`/${name}`)) ?? [],
  )
}
