import type { SessionHead, StatedNote } from '../facts/stated-note.ts'
import type { Session } from './record.ts'

export interface SessionNote extends StatedNote {
  readonly session: SessionHead
}

/** Session notes by date, then by file name, both by code unit; a note without a date comes last. */
export function orderSessions(notes: readonly StatedNote[]): SessionNote[] {
  return notes.filter(isSession).sort((one, other) => {
    const [a, b] = [one.session, other.session]
    return (
      compareText(a.date ?? noDate, b.date ?? noDate) ||
      compareText(baseName(a.file), baseName(b.file)) ||
      compareText(a.file, b.file)
    )
  })
}

interface SessionGround {
  /** Gives a figure's path when all notes are known. */
  readonly pathOf: (session: string, figure: string) => string | null
  /** Who writes the notes that name nobody. */
  readonly by: Session['by']
}

/** The record's sessions, numbered from 1. */
export function listSessions(notes: readonly SessionNote[], { pathOf, by }: SessionGround): Session[] {
  return notes.map(({ session, body, figures }, index) => ({
    id: session.id,
    number: index + 1,
    date: session.date ?? '',
    title: session.title,
    by: session.by ?? by,
    hours: session.hours?.amount ?? null,
    file: session.file,
    body,
    figures: figures.map(figure => ({ ...figure, path: pathOf(session.id, figure.id) ?? figure.path })),
  }))
}

/** Order by UTF-16 code unit: the same on every machine. */
export function compareText(one: string, other: string): number {
  return one === other ? 0 : one < other ? -1 : 1
}

const noDate = '~' // sorts behind every digit
const baseName = (file: string): string => file.slice(file.lastIndexOf('/') + 1)
const isSession = (note: StatedNote): note is SessionNote => note.session !== null
