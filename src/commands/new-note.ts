import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { NextMeasurement } from '../checker/measure-next.ts'
import type { Words } from '../facts/fact.ts'
import { identifierOf } from '../facts/identifier.ts'
import type { AsBuiltRecord } from '../record/record.ts'
import { CannotRun } from './options.ts'

interface NewNote {
  readonly title: string
  /** ISO 8601. */
  readonly date: string
}

/** Writes a dated note with the open jobs and what to measure next as items to tick; gives its path. Never writes over a file. */
export function writeNewNote(
  buildFolder: string,
  note: NewNote,
  ground: { record: AsBuiltRecord; next: readonly NextMeasurement[] },
): string {
  const folder = join(buildFolder, 'content', 'sessions')
  const name = `${note.date}-${nameOf(note.title)}.md`
  const file = join(folder, name)
  if (existsSync(file))
    throw new CannotRun(`\`${file}\` exists already: nothing was written. Give the note another title.`)
  try {
    mkdirSync(folder, { recursive: true })
    writeFileSync(file, newNoteText(note, ground), { flag: 'wx' })
  } catch (cause) {
    throw new CannotRun(
      `\`${file}\` could not be written: ${cause instanceof Error ? cause.message : String(cause)}.`,
      { cause },
    )
  }
  return file
}

/** The text of a new note: front matter ready, then the lists. */
function newNoteText(
  note: NewNote,
  { record, next }: { record: AsBuiltRecord; next: readonly NextMeasurement[] },
): string {
  const open = record.jobs.filter(job => job.open)
  const jobs = open.map(
    job => `- [ ] ${marked(job.words)} :job{#${job.id}${job.before === null ? '' : ` before=${job.before}`}}`,
  )
  const measures = next
    .map(({ path, why }) => `measure ${path}: ${why}`)
    .filter(text => !open.some(job => job.text === text))
  return [
    '---',
    `title: ${JSON.stringify(note.title)}`,
    `date: ${note.date}`,
    'hours: ~',
    'parts: {}',
    'measurements: {}',
    '---',
    'What was done, tried and found.',
    ...list('Open jobs', jobs),
    ...list(
      'To measure',
      measures.map(text => `- [ ] ${text}`),
    ),
    '',
  ].join('\n')
}

/** The words with their private marks on again: a job that is carried over stays as private as it was. */
function marked(words: Words): string {
  let text = words.text
  for (const { start, end, as } of [...words.marks].reverse())
    text = `${text.slice(0, start)}:private[${text.slice(start, end)}]{as=${as}}${text.slice(end)}`
  return text
}

const list = (heading: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', `## ${heading}`, '', ...lines]

/** The title as part of a file name, not too long; `note` where nothing is left. */
export function nameOf(title: string): string {
  return identifierOf(title).slice(0, 60).replace(/-+$/, '') || 'note'
}
