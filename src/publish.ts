import { type Built, builtUpTo, publicationOf, searchIndexOf } from './build.ts'
import { whatIfEach } from './checker/circuit-choices.ts'
import { circuitVoltages } from './checker/circuit-voltages.ts'
import { dipTable } from './checker/derived/dip-table.ts'
import { measureNext } from './checker/measure-next.ts'
import type { Publication } from './editions/publication.ts'
import { tellsCaptureDates } from './editions/tells-capture-dates.ts'
import { blankSum, sumOf, withManifest } from './exports/manifest.ts'
import type { PublishedFile } from './exports/publish-folder.ts'
import { csvPath, type ExportTable } from './exports/tables/export-table.ts'
import type { Before } from './pages/atlas.ts'
import type { Folder } from './paper/folder.ts'
import type { PhotoMemory } from './pictures/prepare-photos.ts'
import type { Session } from './record/record.ts'

interface PublishingOptions {
  readonly edition: string
  /** While serving, pages ask their server whether they have changed. */
  readonly serve: boolean
  readonly photoMemory?: PhotoMemory
  /** Told after each picture. */
  readonly onPicture?: (done: number, total: number) => void
  /** Told why pictures are left out, each in a sentence with its mend. */
  readonly onTroubles?: (troubles: readonly string[]) => void
  /** The last session of the state that the record is compared with; without one, the last but one. */
  readonly since?: Session | null
  /** The address at which it will be published, with a slash at its end; null: nobody knows. */
  readonly base?: string | null
  /** Prints the pages as one document, which is published with them. */
  readonly paper?: (folder: Folder) => Promise<Uint8Array>
}

/** The whole way out: every file of a published edition. */
export async function publishFiles(built: Built, options: PublishingOptions): Promise<PublishedFile[]> {
  const [{ shownSizes }, { makeSiteData }, { printSite }, { exportFiles }, { recordTables }, { searchFiles }] =
    await loadPrinters()
  const publication = publicationOf(built, options.edition)
  const photos = await picturesOf(built, publication, options)
  const tables = recordTables(publication)
  const exports = await exportFiles(publication, tables)
  const sum = sumOf(exports.find(({ path }) => path === 'record.json')?.content ?? '')
  const data = makeSiteData(publication.record, publication.verdicts, {
    ...(await workedOut(built, publication)),
    ...tellExtras(built, options),
    photos,
    tables: tables.map(describeTable),
    sum,
  })
  const pages = await printSite(data)
  const search = await searchFiles(searchIndexOf(publication))
  const shown = [...pages, ...shownSizes(photos, pages)]
  const leading = await leadingFiles(publication, { pages, shown, sum, options })
  return summed([...shown, ...search, ...exports, ...leading], built, publication)
}

async function picturesOf(built: Built, { photos }: Publication, options: PublishingOptions) {
  const { preparePhotos } = await import('./pictures/prepare-photos.ts')
  const prepared = await preparePhotos(built.folder, photos, {
    ...(options.photoMemory !== undefined && { memory: options.photoMemory }),
    ...(options.onPicture !== undefined && { onProgress: options.onPicture }),
    tellsDates: tellsCaptureDates(built.stated.editions, options.edition),
  })
  options.onTroubles?.(prepared.troubles)
  return prepared.photos
}

const mark = 10 // mm from one mark of a dip-stick to the next

/** What the pages show that is reckoned from the record beside its verdicts. */
async function workedOut({ checks }: Built, { record, verdicts, findings, inspection }: Publication) {
  const [{ placeWiring }, { readWiring }] = await loadDrawers()
  const tanks = record.parts.filter(({ partKind }) => partKind === 'tank')
  return {
    findings,
    inspection,
    checks,
    measureNext: measureNext(verdicts),
    wiring: await placeWiring(readWiring(record)),
    choices: whatIfEach(record, checks, verdicts),
    voltages: new Map(record.circuits.map(circuit => [circuit.id, circuitVoltages(record, circuit)])),
    dips: new Map(tanks.map(({ id }) => [id, dipTable(record, id, mark)])),
  }
}

/** What the pages are told of how they are published. */
function tellExtras(built: Built, options: PublishingOptions) {
  return {
    date: null,
    before: publicationBefore(built, options),
    serve: options.serve,
    scripts: [],
    base: options.base ?? null,
    paper: options.paper !== undefined,
    manifestSum: blankSum,
  }
}

interface Leading {
  readonly pages: readonly PublishedFile[]
  readonly shown: readonly PublishedFile[]
  readonly sum: string
  readonly options: PublishingOptions
}

/** What leads to the pages, the feed and the sitemap, and the document that is printed from them. */
async function leadingFiles(publication: Publication, { pages, shown, sum, options }: Leading) {
  const [{ outwardFiles }, { paperFiles }] = await Promise.all([
    import('./exports/outward-files.ts'),
    import('./paper/paper-files.ts'),
  ])
  const outward = outwardFiles(publication.record, pages, options.base ?? null)
  return [...outward, ...(await paperFiles(publication, { files: shown, sum, blankSum, print: options.paper }))]
}

const describeTable = (table: ExportTable) => ({
  path: csvPath(table),
  rows: table.rows.length,
  columns: table.columns.map(({ name }) => name),
})

/** The files and their manifest, with the sums of the notes that the edition may tell. */
function summed(files: PublishedFile[], { sums }: Built, { record, wholeNotes }: Publication): PublishedFile[] {
  const notes = sums.filter(({ path }) => wholeNotes.includes(path))
  return withManifest(files, { edition: record.edition, notes })
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
  return summed(await exportFiles(publication), built, publication)
}

/** What makes pages and pictures is loaded only to publish: a check starts without it. */
function loadPrinters() {
  return Promise.all([
    import('./pictures/shown-sizes.ts'),
    import('./pages/make-site-data.ts'),
    import('../site/print-site.ts'),
    import('./exports/export-files.ts'),
    import('./exports/tables/record-tables.ts'),
    import('./exports/search-files.ts'),
  ])
}

/** What places the boxes and lines of drawings, likewise. */
function loadDrawers() {
  return Promise.all([import('./wiring/place-wiring.ts'), import('./wiring/wiring.ts')])
}
