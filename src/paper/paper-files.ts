import type { Publication } from '../editions/publication.ts'
import type { PublishedFile } from '../exports/publish-folder.ts'
import type { Folder } from './folder.ts'

/** Where the document is published, beside the overview. */
export const paperName = 'record.pdf'

interface Printing {
  /** Pages, styles and pictures of the edition. */
  readonly files: readonly PublishedFile[]
  /** SHA-256 of record.json. */
  readonly sum: string
  readonly blankSum: string
  /** Undefined: no document was asked for. */
  readonly print: ((folder: Folder) => Promise<Uint8Array>) | undefined
}

/** The document of an edition as a published file, made of its printed pages and of nothing else. */
export async function paperFiles(
  { record }: Publication,
  { files, sum, blankSum, print }: Printing,
): Promise<PublishedFile[]> {
  if (print === undefined) return []
  const date =
    record.sessions
      .map(session => session.date)
      .filter(day => day !== '')
      .at(-1) ?? null
  const folder = { files, sum, blankSum, date, title: record.build.title.text, edition: record.edition }
  return [{ path: paperName, content: await print(folder) }]
}
