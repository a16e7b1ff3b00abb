import type { Part } from '../record/record.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { plain } from './inline.ts'
import type { PagePicture, PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope, standing } from './page-scope.ts'
import type { ShownPhoto } from './shown-photos.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { heading, words } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

/** All photographs, by the session that shows them. */
export function makePhotosPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('photos'))
  const { shown } = atlas
  const notes = [...new Set(shown.map(({ session }) => session))]
  return simplePage(scope, {
    title: 'Photographs',
    section: 'photos',
    gutter: [{ term: 'Photographs', words: [plain(String(new Set(shown.map(({ photo }) => photo.file)).size))] }],
    rows: [
      textRow(words('lede', 'As the notes show them, in the order of the sessions.')),
      ...notes.map(session => {
        const title =
          session === null
            ? 'The build'
            : `${scope.balloon(session).text}, ${atlas.sessions.get(session)?.title.text ?? ''}`
        return wideRow(
          heading(title, `s${scope.balloon(session).text}`),
          gallery(
            scope,
            shown.filter(one => one.session === session),
          ),
        )
      }),
    ],
  })
}

/** The pictures that a part's own entries name. */
export function photosNamed(scope: PageScope, part: Part): PartOfPage[] {
  const held = ['photos', 'receipt'].map(key => standing(part.properties, key)).filter(found => found !== null)
  const names = held.flatMap(({ value }) =>
    value.type === 'list'
      ? value.entries.map(entry => entry.words.text)
      : value.type === 'words'
        ? [value.words.text]
        : [],
  )
  const all = scope.atlas.shown
  const photos = names.flatMap((name): ShownPhoto[] => {
    const photo = scope.atlas.extras.photos.find(known => known.file.endsWith(`/${name}`) || known.file === name)
    if (photo === undefined) return []
    return [
      all.find(shown => shown.photo.file === photo.file) ?? {
        photo,
        alternative: `${part.name}, photograph`,
        caption: null,
        session: held[0]?.session ?? null,
      },
    ]
  })
  return photos.length === 0 ? [] : [heading('Photographs', 'photos'), gallery(scope, photos)]
}

/** Pictures side by side, each with its caption and the session that shows it. */
function gallery(scope: PageScope, shown: readonly ShownPhoto[]): PartOfPage {
  return {
    kind: 'pictures',
    pictures: shown.map(
      ({ photo, alternative, caption, session }): PagePicture => ({
        href: scope.to(photo.address),
        width: photo.width,
        height: photo.height,
        alternative,
        caption: [
          plain(caption ?? alternative),
          plain(' '),
          scope.link(scope.balloon(session).says, noteAddress(session)),
        ],
        id: null,
      }),
    ),
  }
}
