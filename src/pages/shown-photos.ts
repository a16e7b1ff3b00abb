import { posix } from 'node:path'
import type { Nodes, Root } from 'mdast'
import { visit } from 'unist-util-visit'
import type { FigureNode } from '../../plugins/figures/node.ts'
import type { AsBuiltRecord } from '../record/record.ts'

/** A picture that was prepared for publishing. */
export interface PublishedPhoto {
  /** As it lies in the build folder: `content/photos/tank.jpg`. */
  readonly file: string
  /** Where it is published within the record: `photos/tank-960.jpg`. */
  readonly address: string
  readonly width: number | null
  readonly height: number | null
  /** It in each format, the smallest size first; none where it has one size only. */
  readonly sizes?: readonly { readonly format: string; readonly address: string; readonly width: number }[]
  /** ISO 8601: the day on which it was taken, where the edition may know it. */
  readonly taken?: string | null
}

/** A picture as a note shows it. */
export interface ShownPhoto {
  readonly photo: PublishedPhoto
  readonly alternative: string
  readonly caption: string | null
  /** Null: build.md shows it. */
  readonly session: string | null
  /** The line on which the block that shows it begins; null where an entry names it, no block. */
  readonly line: number | null
}

interface Album {
  readonly record: AsBuiltRecord
  readonly extras: { readonly photos: readonly PublishedPhoto[] }
}

/** Every picture that a note shows, in the order of the notes. */
export function shownPhotos(album: Album): ShownPhoto[] {
  const { build, sessions } = album.record
  const notes = [{ id: null, file: build.file, body: build.body }, ...sessions]
  return notes.flatMap(({ id, file, body }) =>
    picturesOf(body).flatMap(({ url, ...words }) => {
      const photo = findPhoto(album, file, url)
      return photo === null ? [] : [{ photo, ...words, session: id }]
    }),
  )
}

/** A picture of the record by its address in a note: named from the note, or from `content/`. */
export function findPhoto({ record, extras }: Album, file: string, url: string): PublishedPhoto | null {
  const fromContent = posix.normalize(posix.join(posix.dirname(record.build.file), url))
  const wanted = [beside(file, url), fromContent]
  return extras.photos.find(photo => wanted.includes(photo.file)) ?? null
}

/** The file that an address in a note names, relative to the build folder. */
export function beside(file: string, url: string): string {
  return posix.normalize(posix.join(posix.dirname(file), url))
}

interface FoundPicture {
  readonly url: string
  readonly alternative: string
  readonly caption: string | null
  readonly line: number | null
}

function picturesOf(body: Root): FoundPicture[] {
  return body.children.flatMap(block => {
    const pictures: FoundPicture[] = []
    visit(block, (node: Nodes, _index, parent) => {
      if (node.type !== 'image') return
      const caption = block === node || parent?.type !== 'figure' ? null : (parent as FigureNode).caption
      const line = block.position?.start.line ?? null
      pictures.push({ url: node.url, alternative: node.alt ?? '', caption: caption ?? node.title ?? null, line })
    })
    return pictures
  })
}
