import { fileURLToPath } from 'node:url'
import type { Check } from './checker/check.ts'
import { whatIf } from './checker/circuit-choices.ts'
import { dipTable } from './checker/derived/dip-table.ts'
import { loadChecks } from './checker/load-checks.ts'
import { measureNext } from './checker/measure-next.ts'
import { runChecks } from './checker/run-checks.ts'
import { weighInspection } from './checker/weigh-inspection.ts'
import type { StatedBuild } from './editions/edition-notes.ts'
import type { Publication } from './editions/publication.ts'
import { type Folding, redact } from './editions/redact.ts'
import { type FileSum, manifestFiles, sumOf } from './exports/manifest.ts'
import type { PublishedFile } from './exports/publish-folder.ts'
import { markedWords, writtenKeys } from './facts/marked-words.ts'
import { readSettings } from './facts/read-settings.ts'
import { stateNote } from './facts/state-note.ts'
import { comparePlaces } from './findings/place.ts'
import { ruleTexts } from './findings/rule-texts.ts'
import { makeNoteMemory, type NoteMemory } from './notes/note-memory.ts'
import { readContent } from './notes/read-content.ts'
import type { Before } from './pages/atlas.ts'
import { recordAddresses } from './pages/record-addresses.ts'
import type { PhotoMemory, PreparedPhoto } from './pictures/prepare-photos.ts'
import type { ReadOptions } from './quantities/quantity.ts'
import { foldFacts, type Notes } from './record/fold-facts.ts'
import type { Session } from './record/record.ts'
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

interface PublishingOptions {
  readonly edition: string
  /** While serving, pages ask their server whether they have changed. */
  readonly serve: boolean
  readonly photoMemory?: PhotoMemory
  /** The last session of the state that the record is compared with; without one, the last but one. */
  readonly since?: Session | null
}

const mostChoices = 150 // circuits: each asks its checks of eight other sizes, some 50 ms

/** The whole way out: every file of a published edition. */
export async function publishFiles(built: Built, options: PublishingOptions): Promise<PublishedFile[]> {
  const [{ preparePhotos }, { makeSiteData }, { printSite }, { csvPath, exportFiles }, { recordTables }] =
    await loadPrinters()
  const [{ placeWiring }, { readWiring }, { wiringCsv }] = await loadDrawers()
  const publication = publicationOf(built, options.edition)
  const photos = await preparePhotos(built.folder, publication.photos, options.photoMemory ?? new Map())
  const { record, verdicts, findings, inspection } = publication
  const next = measureNext(verdicts)
  const tables = recordTables(publication)
  const exports = [...(await exportFiles(publication, tables)), ...wiringCsv(record)]
  const wiring = await placeWiring(readWiring(record))
  const asked = record.circuits.length > mostChoices ? [] : record.circuits
  const choices = new Map(asked.map(circuit => [circuit.id, whatIf(record, built.checks, circuit)]))
  const tanks = record.parts.filter(({ partKind }) => partKind === 'tank')
  const dips = new Map(tanks.map(({ id }) => [id, dipTable(record, id, 10)])) // mm from mark to mark
  const data = makeSiteData(record, verdicts, {
    findings,
    inspection,
    checks: built.checks,
    measureNext: next,
    photos,
    tables: tables.map(table => ({
      path: csvPath(table),
      rows: table.rows.length,
      columns: table.columns.map(({ name }) => name),
    })),
    date: null,
    sum: sumOf(exports.find(({ path }) => path === 'record.json')?.content ?? ''),
    before: publicationBefore(built, options),
    wiring,
    choices,
    dips,
    serve: options.serve,
    scripts: [],
  })
  const pages = await printSite(data)
  const { searchFiles } = await import('./exports/search-files.ts')
  const search = await searchFiles(searchIndexOf(publication))
  return withManifest([...pages, ...search, ...shownOnly(photos, pages), ...exports], built, publication)
}

/** The files and their manifest, with the sums of the notes that the edition may tell. */
function withManifest(files: PublishedFile[], { sums }: Built, { record, wholeNotes }: Publication): PublishedFile[] {
  const notes = sums.filter(({ path }) => wholeNotes.includes(path))
  return [...files, ...manifestFiles(files, { edition: record.edition, notes })]
}

/** The record as it stood when `since` was written, as the same edition sees it; null where there is nothing to compare. */
function publicationBefore(built: Built, { edition, since }: PublishingOptions): Before | null {
  const { sessions } = built.record
  const last = since === undefined ? (sessions.at(-2) ?? null) : since
  if (sessions.length < 2 && since === undefined) return null
  const kept = new Set(sessions.slice(0, last?.number ?? 0).map(({ id }) => id))
  const { record, verdicts } = publicationOf(
    builtUpTo(built, session => kept.has(session)),
    edition,
  )
  return { session: last?.id ?? null, record, verdicts }
}

/** The record, its schema and its tables without the pages. */
export async function publishExports(built: Built, edition: string): Promise<PublishedFile[]> {
  const { exportFiles } = await import('./exports/export-files.ts')
  const publication = publicationOf(built, edition)
  return withManifest(await exportFiles(publication), built, publication)
}

/** What makes pages and pictures is loaded only to publish: a check starts without it. */
function loadPrinters() {
  return Promise.all([
    import('./pictures/prepare-photos.ts'),
    import('./pages/make-site-data.ts'),
    import('../site/print-site.ts'),
    import('./exports/export-files.ts'),
    import('./exports/tables/record-tables.ts'),
  ])
}

/** What places the boxes and lines of drawings, likewise. */
function loadDrawers() {
  return Promise.all([
    import('./wiring/place-wiring.ts'),
    import('./wiring/wiring.ts'),
    import('./exports/wiring-csv.ts'),
  ])
}

/** A picture that no page shows is not published. */
function shownOnly(photos: readonly PreparedPhoto[], pages: readonly PublishedFile[]): PublishedFile[] {
  const texts = pages.flatMap(({ content }) => (typeof content === 'string' ? [content] : []))
  return photos
    .filter(({ address }) => texts.some(text => text.includes(address)))
    .map(({ address, content }) => ({ path: address, content }))
}
