import { folderName } from '../record/folder-name.ts'

/** The address of a session's page within the record, `build/index.html` for build.md. */
export function noteUrl(session: string | null): string {
  return session === null ? 'build/index.html' : `sessions/${encodeURIComponent(folderName(session))}/index.html`
}

/** The address of the very words in which a figure was written. */
export function figureUrl(session: string | null, figure: string | null): string {
  return figure === null ? noteUrl(session) : `${noteUrl(session)}#${figure}`
}
