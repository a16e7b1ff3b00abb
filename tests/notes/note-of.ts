import type { Finding } from '../../src/findings/finding.ts'
import type { Place } from '../../src/findings/place.ts'
import type { Front } from '../../src/notes/front.ts'
import type { Note } from '../../src/notes/note.ts'
import { plainOptions, readNote } from '../../src/notes/read-note.ts'

export const sessionFile = 'content/sessions/2026-03-07-tank.md'

/** Reads a text as a session note; bytes are taken as they are. */
export function noteOf(text: string | Uint8Array, file = sessionFile): Note {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text
  return readNote({ file, bytes }, plainOptions)
}

/** Reads YAML between two fences; its first line is line 2. */
export function frontOf(yaml: string): Note {
  return noteOf(`---\n${yaml}\n---\nThe body.\n`)
}

/** A tree as plain values: mappings as pairs, so that order and odd keys show. */
export function plain(front: Front | null): unknown {
  if (front === null || front.kind === 'nothing') return null
  if (front.kind === 'scalar') return front.text
  if (front.kind === 'list') return front.items.map(plain)
  return front.entries.map(({ key, value }) => [key, plain(value)])
}

/** `rule line:column-line:column message => mend` */
export function told(findings: readonly Finding[]): string[] {
  return findings.map(({ rule, line, column, endLine, endColumn, message, mend }) => {
    const place = `${line}:${column}-${endLine}:${endColumn}`
    return `${rule} ${place} ${message}${mend === null ? '' : ` => ${mend}`}`
  })
}

/** What stands at a place in a file's text, counted in lines and columns as an editor does. */
export function sliceAt(text: string, { line, column, endLine, endColumn }: Omit<Place, 'file'>): string {
  const lines = text.replace(/^\uFEFF/, '').split('\n')
  const before = (count: number): number => lines.slice(0, count).reduce((sum, each) => sum + each.length + 1, 0)
  return lines.join('\n').slice(before(line - 1) + column - 1, before(endLine - 1) + endColumn - 1)
}
