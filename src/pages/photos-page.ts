import type { Part } from '../record/record.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { partPhotos } from './part-photo.ts'
import { photoGallery } from './photo-gallery.ts'
import type { ShownPhoto } from './shown-photos.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { heading, words } from './tables.ts'

/** All photographs, by the session that shows them. */
export function makePhotosPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('photos'))
  const shown = allShown(scope)
  const notes = [null, ...atlas.sessions.keys()].filter(note => shown.some(({ session }) => session === note))
  return simplePage(scope, {
    title: 'Photographs',
    section: 'photos',
    gutter: [{ term: 'Photographs', words: [plain(String(new Set(shown.map(({ photo }) => photo.file)).size))] }],
    rows: [
      textRow(
        words(
          'lede',
          'As the notes show them, in the order of the sessions. Each opens large, and leads to its words.',
        ),
      ),
      ...notes.map(session =>
        wideRow(
          heading(titleOf(scope, session), `s${scope.balloon(session).text}`),
          photoGallery(
            scope,
            shown.filter(one => one.session === session),
          ),
        ),
      ),
    ],
  })
}

function titleOf(scope: PageScope, session: string | null): string {
  if (session === null) return 'The build'
  return `${scope.balloon(session).text}, ${scope.atlas.sessions.get(session)?.title.text ?? ''}`
}

/** What notes show, and what only the entries of parts name. */
function allShown(scope: PageScope): ShownPhoto[] {
  const inNotes = scope.atlas.shown
  const files = new Set(inNotes.map(({ photo }) => photo.file))
  const named = scope.record.parts
    .flatMap(part => partPhotos(scope, part))
    .filter(({ photo }) => !files.has(photo.file))
  return [...inNotes, ...new Map(named.map(one => [one.photo.file, one])).values()]
}

/** The pictures that a part's own entries name. */
export function photosNamed(scope: PageScope, part: Part): PartOfPage[] {
  const photos = partPhotos(scope, part)
  return photos.length === 0 ? [] : [heading('Photographs', 'photos'), photoGallery(scope, photos)]
}
