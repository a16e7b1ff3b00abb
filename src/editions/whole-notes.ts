import type { StatedNote } from '../facts/stated-note.ts'
import type { StatedBuild } from './edition-notes.ts'
import type { RedactedNotes } from './redact-notes.ts'

/**
 * Files of which an edition withholds nothing at all. Only their sums may be told: with the sum of another, whoever guesses
 * what was taken out could find out whether the guess is right.
 */
export function wholeNotes({ notes }: StatedBuild, redacted: RedactedNotes): string[] {
  const seen = redacted.notes
  const pairs: [string, StatedNote | null, StatedNote | null | undefined][] = [
    [notes.build.build?.file ?? '', notes.build, seen.build],
    ...notes.sessions.map((note, at): [string, StatedNote, StatedNote | undefined] => [
      note.session?.file ?? '',
      note,
      seen.sessions[at],
    ]),
    ['content/inspection.yaml', notes.inspection, seen.inspection],
  ]
  const touched = new Set(redacted.taken.map(({ place }) => place.file))
  return pairs.flatMap(([file, before, after]) => {
    if (before === null || touched.has(file) || before.findings.length > 0) return []
    return plain(before) === plain(after) ? [file] : []
  })
}

/** All that a note says, without what covering it leaves behind in any case. */
const plain = (note: StatedNote | null | undefined): string =>
  JSON.stringify(note, (key, value: unknown) => (leftBehind.has(key) ? undefined : value))

const leftBehind = new Set(['offset', 'position', 'beforePosition', 'attributePositions', 'privacy', 'findings'])
