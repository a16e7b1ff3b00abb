import { readSettings } from '../../src/facts/read-settings.ts'
import { stateNote } from '../../src/facts/state-note.ts'
import type { Finding } from '../../src/findings/finding.ts'
import { comparePlaces } from '../../src/findings/place.ts'
import { noteOptionsOf, readNote } from '../../src/notes/read-note.ts'
import { foldFacts } from '../../src/record/fold-facts.ts'
import type { AsBuiltRecord } from '../../src/record/record.ts'

export interface Texts {
  readonly build: string
  /** By file name, `2026-03-07-tank.md`. */
  readonly sessions: Readonly<Record<string, string>>
  readonly inspection?: string
  readonly photos?: readonly string[]
}

/** Folds the texts of a small build; the findings are those of reading, of stating and of folding. */
export function foldTexts({ build, sessions, inspection, photos = [] }: Texts): {
  record: AsBuiltRecord
  findings: Finding[]
} {
  const first = readNote(
    { file: 'content/build.md', bytes: bytesOf(build) },
    { gallon: null, mil: null, decimal: 'point' },
  )
  const [reading, settings] = [noteOptionsOf(first.front), readSettings(first)]
  const stated = (file: string, text: string) => stateNote(readNote({ file, bytes: bytesOf(text) }, reading), settings)
  const notes = {
    build: stateNote(first, settings),
    sessions: Object.entries(sessions).map(([name, text]) => stated(`content/sessions/${name}`, text)),
    inspection: inspection === undefined ? null : stated('content/inspection.yaml', inspection),
  }
  const folded = foldFacts(notes, {
    photos: photos.map(name => `content/photos/${name}`),
    today: null,
    checks: ['voltage-drop'],
  })
  const all = [notes.build, ...notes.sessions, ...(notes.inspection === null ? [] : [notes.inspection])].flatMap(
    note => note.findings,
  )
  return { record: folded.record, findings: [...all, ...folded.findings].sort(comparePlaces) }
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text)

/** The words that a place holds, one line. */
export function wordsAtPlace(
  texts: Texts,
  place: { file: string; line: number; column: number; endColumn: number },
): string {
  const name = place.file.split('/').at(-1) ?? ''
  const text = place.file.includes('/sessions/')
    ? texts.sessions[name]
    : name === 'build.md'
      ? texts.build
      : texts.inspection
  return text?.split('\n')[place.line - 1]?.slice(place.column - 1, place.endColumn - 1) ?? ''
}
