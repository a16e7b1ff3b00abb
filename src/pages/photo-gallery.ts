import { plain } from './inline.ts'
import { longDate } from './page-dates.ts'
import type { PagePicture, PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { pictureSources } from './picture-sources.ts'
import type { ShownPhoto } from './shown-photos.ts'
import { noteAddress } from './thing-addresses.ts'

/** Pictures side by side, each with its caption, the day on which it was taken, and the words beside which it stands. */
export function photoGallery(scope: PageScope, shown: readonly ShownPhoto[]): PartOfPage {
  return { kind: 'pictures', pictures: shown.map(one => pictureIn(scope, one)) }
}

function pictureIn(scope: PageScope, { photo, alternative, caption, session, line }: ShownPhoto): PagePicture {
  const note = noteAddress(session)
  const taken = photo.taken == null ? [] : [plain(` Taken ${longDate(photo.taken)}.`)]
  return {
    href: scope.to(photo.address),
    sources: pictureSources(photo, scope.to, 'gallery'),
    width: photo.width,
    height: photo.height,
    alternative,
    caption: [
      plain(caption ?? alternative),
      ...taken,
      plain(' '),
      scope.link(`In ${scope.balloon(session).says}`, line === null ? note : `${note}#b-${line}`),
    ],
    id: null,
  }
}
