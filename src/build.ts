import { fileURLToPath } from 'node:url'
import type { Check } from './checker/check.ts'
import { loadChecks } from './checker/load-checks.ts'
import { measureNext } from './checker/measure-next.ts'
import { runChecks } from './checker/run-checks.ts'
import type { Verdict } from './checker/verdict.ts'
import { weighInspection } from './checker/weigh-inspection.ts'
import type { Publication } from './editions/publication.ts'
import { redact } from './editions/redact.ts'
import type { PublishedFile } from './exports/publish-folder.ts'
import { recordJson } from './exports/record-json.ts'
import { readSettings } from './facts/read-settings.ts'
import { stateNote } from './facts/state-note.ts'
import type { Finding } from './findings/finding.ts'
import { comparePlaces } from './findings/place.ts'
import { makeNoteMemory, type NoteMemory } from './notes/note-memory.ts'
import { readContent } from './notes/read-content.ts'
import type { PhotoMemory, PreparedPhoto } from './pictures/prepare-photos.ts'
import { foldFacts } from './record/fold-facts.ts'
import type { AsBuiltRecord } from './record/record.ts'

/** A build read, folded and checked: everything that there is to say about it, nothing withheld yet. */
export interface Built {
  readonly folder: string
  readonly record: AsBuiltRecord
  readonly verdicts: readonly Verdict[]
  readonly findings: readonly Finding[]
  readonly checks: readonly Check[]
  /** Pictures under `content/`, relative to the build folder. */
  readonly photos: readonly string[]
}

export interface ReadingOptions {
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
  const surroundings = { photos: content.photos, today: options.today, checks: checks.map(({ id }) => id) }
  const { record, findings } = foldFacts({ build, sessions, inspection }, surroundings)
  const verdicts = runChecks(record, checks)
  const stated = [build, ...sessions, ...(inspection === null ? [] : [inspection])]
  const all = [...content.findings, ...stated.flatMap(note => note.findings), ...findings]
  return { folder, record, verdicts, findings: all.sort(comparePlaces), checks, photos: content.photos }
}

function noBuild(folder: string, missing: string | null): string {
  const lead = `Unexpected folder \`${folder}\` without \`${missing ?? 'content'}\``
  return `${lead}, expected a folder that holds content/build.md and content/sessions/. \`oddleg init DIR\` makes one; --build names another.`
}

/** What an edition may see of a build. */
export function publicationOf(built: Built, edition: string): Publication {
  const record = redact(built.record, edition)
  return {
    record,
    verdicts: built.verdicts,
    inspection: weighInspection(built.record, built.verdicts, built.photos),
    findings: built.findings,
  }
}

export interface PublishingOptions {
  readonly edition: string
  /** While serving, pages ask their server whether they have changed. */
  readonly serve: boolean
  readonly photoMemory?: PhotoMemory
}

/** The whole way out: every file of a published edition. */
export async function publishFiles(built: Built, options: PublishingOptions): Promise<PublishedFile[]> {
  const [{ preparePhotos }, { makeSiteData }, { printSite }] = await loadPrinters()
  const publication = publicationOf(built, options.edition)
  const photos = await preparePhotos(built.folder, built.photos, options.photoMemory ?? new Map())
  const { record, verdicts, findings, inspection } = publication
  const next = measureNext(verdicts)
  const data = makeSiteData(record, verdicts, {
    findings,
    inspection,
    checks: built.checks,
    measureNext: next,
    photos,
    date: null,
    serve: options.serve,
    scripts: [],
  })
  const pages = await printSite(data)
  return [...pages, ...shownOnly(photos, pages), { path: 'record.json', content: recordJson(publication) }]
}

/** What makes pages and pictures is loaded only to publish: a check starts without it. */
function loadPrinters() {
  return Promise.all([
    import('./pictures/prepare-photos.ts'),
    import('./pages/make-site-data.ts'),
    import('../site/print-site.ts'),
  ])
}

/** A picture that no page shows is not published. */
function shownOnly(photos: readonly PreparedPhoto[], pages: readonly PublishedFile[]): PublishedFile[] {
  const texts = pages.flatMap(({ content }) => (typeof content === 'string' ? [content] : []))
  return photos
    .filter(({ address }) => texts.some(text => text.includes(address)))
    .map(({ address, content }) => ({ path: address, content }))
}
