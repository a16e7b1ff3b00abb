import { fileURLToPath } from 'node:url'
import type { Check } from './checker/check.ts'
import { loadChecks } from './checker/load-checks.ts'
import { runChecks } from './checker/run-checks.ts'
import { weighInspection } from './checker/weigh-inspection.ts'
import type { StatedBuild } from './editions/edition-notes.ts'
import type { Publication } from './editions/publication.ts'
import { type Folding, redact } from './editions/redact.ts'
import type { FileSum } from './exports/manifest.ts'
import { markedWords, writtenKeys } from './facts/marked-words.ts'
import { readSettings } from './facts/read-settings.ts'
import { stateNote } from './facts/state-note.ts'
import { comparePlaces } from './findings/place.ts'
import { ruleTexts } from './findings/rule-texts.ts'
import { makeNoteMemory, type NoteMemory } from './notes/note-memory.ts'
import { readContent } from './notes/read-content.ts'
import { recordAddresses } from './pages/record-addresses.ts'
import type { ReadOptions } from './quantities/quantity.ts'
import { foldFacts, type Notes } from './record/fold-facts.ts'
import { indexRecord } from './search/index-record.ts'
import type { SearchIndex } from './search/search-index.ts'

/** A build read, folded and checked: everything that there is to say about it, nothing withheld yet. */
export interface Built extends Folding {
  readonly folder: string
  readonly checks: readonly Check[]
  /** Pictures under `content/`, relative to the build folder. */
  readonly photos: readonly string[]
  /** What each note states by itself, of which an edition sees its part. */
  readonly stated: StatedBuild
  /** The sums of the notes' bytes. */
  readonly sums: readonly FileSum[]
  /** How build.md wants figures read. */
  readonly settings: ReadOptions
  /** Folds and checks notes as these were. */
  readonly fold: (notes: Notes) => Folding
}

interface ReadingOptions {
  /** ISO 8601: what counts as today. */
  readonly today: string
  /** Remembers notes between readings, so that an edit re-reads one note. */
  readonly memory?: NoteMemory
}

/** The whole way in: notes, facts, record, checks. Where there is no build, a sentence that says what is missing. */
export async function readBuildFolder(
  folder: string,
  options: ReadingOptions,
): Promise<Built | { readonly trouble: string }> {
  const content = readContent(folder, options.memory ?? makeNoteMemory())
  if (content.build === null) return { trouble: noBuild(folder, content.missing) }
  const settings = readSettings(content.build)
  const build = stateNote(content.build, settings)
  const sessions = content.sessions.map(note => stateNote(note, settings))
  const inspection = content.inspection === null ? null : stateNote(content.inspection, settings)
  const checks = await loadChecks(fileURLToPath(new URL('./checks', import.meta.url)))
  const notes: Notes = { build, sessions, inspection }
  const surroundings = { photos: content.photos, today: options.today, checks }
  const fold = (some: Notes): Folding => foldNotes(some, surroundings)
  const folded = fold(notes)
  const own = [build, ...sessions, ...(inspection === null ? [] : [inspection])].flatMap(note => note.findings)
  const findings = [...content.findings, ...own, ...folded.findings].sort(comparePlaces)
  const { editions, ledger } = folded.record
  const read = [content.build, ...content.sessions, ...(content.inspection === null ? [] : [content.inspection])]
  const stated = {
    notes,
    marked: read.flatMap(markedWords),
    keys: read.flatMap(writtenKeys),
    editions,
    donorsTotal: ledger,
  }
  const sums = read.map(({ file, sum }) => ({ path: file, sum }))
  return { folder, ...folded, findings, checks, photos: content.photos, stated, sums, fold, settings }
}

interface Surrounding {
  readonly photos: readonly string[]
  readonly today: string
  readonly checks: readonly Check[]
}

/** Notes folded into the record, the checks asked of it, the inspection points held against both. */
function foldNotes(notes: Notes, { photos, today, checks }: Surrounding): Folding {
  const { record, findings } = foldFacts(notes, { photos, today, checks: checks.map(({ id }) => id) })
  const verdicts = runChecks(record, checks)
  return { record, verdicts, inspection: weighInspection(record, verdicts, photos), findings }
}

function noBuild(folder: string, missing: string | null): string {
  const lead = `Unexpected folder \`${folder}\` without \`${missing ?? 'content'}\``
  return `${lead}, expected a folder that holds content/build.md and content/sessions/. \`oddleg init DIR\` makes one; --build names another.`
}

/** The build as it stood after some of its sessions; build.md and inspection.yaml count as they are now. */
export function builtUpTo(built: Built, isKept: (session: string) => boolean): Built {
  const { notes } = built.stated
  const sessions = notes.sessions.filter(({ session }) => session !== null && isKept(session.id))
  const fewer = { ...notes, sessions }
  return { ...built, ...built.fold(fewer), stated: { ...built.stated, notes: fewer } }
}

/** What an edition may see of a build. */
export function publicationOf(built: Built, edition: string): Publication {
  return redact(built, { edition, fold: built.fold, meaningOf: rule => ruleTexts[rule].means })
}

/** All that can be found in what an edition may see of a build. */
export function searchIndexOf({ record }: Publication): SearchIndex {
  return indexRecord(record, recordAddresses)
}
