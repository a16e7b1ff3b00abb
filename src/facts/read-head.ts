import type { Place } from '../findings/place.ts'
import type { Front, FrontMap } from '../notes/front.ts'
import type { Note } from '../notes/note.ts'
import { dateInName, isCalendarDate, mendDate } from './calendar-date.ts'
import type { Words } from './fact.ts'
import { entryOf, scalarOf } from './front-tree.ts'
import { markWhole } from './privacy.ts'
import { quoted, quotedFront } from './quoted.ts'
import { readHours } from './read-hours.ts'
import { readWords } from './read-words.ts'
import { placeOfText } from './scalar-text.ts'
import { report, type Sheet } from './sheet.ts'
import type { SessionHead } from './stated-note.ts'

/** Title, date and hours of a session note. */
export function readSessionHead(sheet: Sheet, note: Note): SessionHead {
  const { id, file, fence, front } = note
  const title = readTitle(sheet, note)
  const { date, datePlace } = readSessionDate(sheet, note)
  return { id, file, fence, title, date, datePlace, by: readWriter(sheet, front), hours: readHoursOf(sheet, front) }
}

/** The title; without one the name of the file stands in, and that is said. */
export function readTitle(sheet: Sheet, { front, fence, id, findings }: Note): Words {
  const title = readWords(sheet, entryOf(front, 'title')?.value)
  if (title !== null) return title.words
  if (!isUnreadable(findings))
    report(sheet, 'no-title', {
      place: fence,
      message: 'Unexpected note without a title, expected `title:`',
      mend: 'title: …',
    })
  return { text: id, marks: [] }
}

/** Who writes: a name, which only an edition that may know people sees, marked or not. */
export function readWriter(sheet: Sheet, front: FrontMap | null): Words | null {
  const by = readWords(sheet, entryOf(front, 'by')?.value)
  return by === null ? null : { ...by.words, marks: [...by.words.marks, ...markWhole(by.words.text, ['people'])] }
}

/** Front matter that could not be read was reported once already. */
const isUnreadable = (findings: Note['findings']): boolean => findings.some(({ rule }) => rule === 'front-matter')

function readSessionDate(
  sheet: Sheet,
  { front, fence, id, findings }: Note,
): { date: string | null; datePlace: Place } {
  const written = entryOf(front, 'date')?.value
  const inName = dateInName(id)
  if (written !== undefined && written.kind !== 'nothing') {
    const date = readDate(sheet, written, 'date')
    const stands = inName !== null && isCalendarDate(inName) ? inName : null
    return { date: date ?? stands, datePlace: placeOfText(written) }
  }
  if (inName !== null && isCalendarDate(inName)) return { date: inName, datePlace: fence }
  if (inName !== null)
    report(sheet, 'bad-date', {
      place: fence,
      message: `Unexpected \`${inName}\` in the name of the file, expected a day that exists such as \`2026-03-07\``,
    })
  else if (!isUnreadable(findings)) {
    const message = 'Unexpected note without a date, expected `date:` or a file name that begins with one'
    report(sheet, 'no-date', { place: fence, message, mend: 'date: 2026-03-07' })
  }
  return { date: null, datePlace: fence }
}

/** A day that exists in the calendar; null, and reported, for anything else. */
export function readDate(sheet: Sheet, front: Front, key: string): string | null {
  const text = scalarOf(front)?.text.trim() ?? ''
  if (isCalendarDate(text)) return text
  const mend = mendDate(text)
  const expected = mend === null ? 'a day that exists, written as `2026-03-07`' : `\`${mend}\``
  report(sheet, 'bad-date', {
    place: placeOfText(front),
    message: `Unexpected ${quotedFront(front)} for \`${key}\`, expected ${expected}`,
    mend,
  })
  return null
}

function readHoursOf(sheet: Sheet, front: FrontMap | null): SessionHead['hours'] {
  const written = entryOf(front, 'hours')?.value
  if (written === undefined || written.kind === 'nothing') return null
  const place = placeOfText(written)
  const amount = written.kind === 'scalar' ? readHours(written.text, sheet.options) : null
  if (amount !== null) return { amount, place }
  const what = written.kind === 'scalar' ? quoted(written.text) : quotedFront(written)
  report(sheet, 'not-a-quantity', {
    place,
    message: `Unexpected ${what} for \`hours\`, expected hours such as \`6.5\` or \`6 h 30\``,
  })
  return null
}
