import type { PublishedFile } from '../exports/publish-folder.ts'

/** The printed pages of one edition, with their styles and pictures, and what the document says of itself. */
export interface Folder {
  readonly files: readonly PublishedFile[]
  readonly title: string
  readonly edition: string
  /** ISO 8601: the day of the last session; null where there is none. The document is dated by it, never by the clock. */
  readonly date: string | null
  /** SHA-256 of record.json, in hexadecimal. */
  readonly sum: string
  /** What stands on the cover in place of the manifest's own sum until it is known. */
  readonly blankSum: string
}

/** A text file of it, or null. */
export function textOf({ files }: Folder, path: string): string | null {
  const content = files.find(file => file.path === path)?.content
  return typeof content === 'string' ? content : null
}
