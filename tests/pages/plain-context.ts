import type { NoteContext } from '../../src/pages/note-context.ts'

/** A note that stands alone: links of the world stay, other addresses too; pictures are as named; nothing used a figure. */
export const plainContext: NoteContext = {
  thing: () => null,
  address: url => (/^(?!https?:|mailto:|tel:)[a-z][a-z0-9+.-]*:/i.test(url) ? null : url),
  picture: href => ({ href, width: null, height: null }),
  use: () => null,
  job: () => null,
}
