import type { Part } from '../record/record.ts'
import type { Inline } from './cells.ts'
import { type PageScope, standing } from './page-scope.ts'
import { subjectAddress } from './thing-addresses.ts'

/** A link to the pictures that a part's entries name; nothing where they name none that is published. */
export function photoOf(scope: PageScope, part: Part): Inline[] {
  const held = standing(part.properties, 'photos')
  const names =
    held?.value.type === 'list'
      ? held.value.entries.map(({ words }) => words.text)
      : held?.value.type === 'words'
        ? [held.value.words.text]
        : []
  const shown = names.filter(name =>
    scope.atlas.extras.photos.some(({ file }) => file === name || file.endsWith(`/${name}`)),
  )
  if (shown.length === 0) return []
  return [
    scope.link(
      shown.length === 1 ? 'picture' : `${shown.length} pictures`,
      `${subjectAddress({ kind: 'part', id: part.id })}#photos`,
    ),
  ]
}
