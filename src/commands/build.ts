import { join, relative, resolve } from 'node:path'
import type { Built } from '../build.ts'
import { withheldNames } from '../editions/withheld-names.ts'
import { manifestName, sumOf } from '../exports/manifest.ts'
import { PublishError, publishFolder } from '../exports/publish-folder.ts'
import type { Finding } from '../findings/finding.ts'
import { paperName } from '../paper/paper-files.ts'
import { publishExports } from '../publish.ts'
import { baseAddress } from './base-address.ts'
import { type Counts, countAll, countWords, statusOf } from './counts.ts'
import { openPaper, type Paper } from './open-paper.ts'
import { CannotRun, type PublishOptions } from './options.ts'
import { publishWatched } from './publish-watched.ts'
import { readBuildAndPictures, requireKnown } from './read-build.ts'
import { reportFindings, showsColour } from './report-findings.ts'
import { sessionNamed } from './session-named.ts'

/** `oddleg build`: publishes nothing and gives 1 where a note has an error, unless forced; a failed check gives 1 only with strict. */
export async function build(options: PublishOptions): Promise<number> {
  baseAddress(options.base)
  const built = await readBuildAndPictures(options)
  const editions = options.allEditions ? built.record.editions.map(({ name }) => name) : [options.edition]
  for (const edition of editions) requireKnown(built, edition)
  const counts = countAll(built.findings, built.verdicts)
  if (counts.error > 0 && !options.force) return refuse(built.findings, options)
  const paper = await openPaper(options)
  const rows: Row[] = []
  try {
    for (const edition of editions) rows.push(await publishEdition(built, edition, { ...options, paper }))
  } finally {
    await paper.close()
  }
  tell(rows, options, { counts, ...(options.pdf && { troubles: paper.troubles }) })
  for (const trouble of paper.troubles)
    process.stderr.write(`The pages were published without record.pdf. ${trouble}\n`)
  if (paper.troubles.length > 0) return 2
  if (rows.some(({ out }) => out === null)) return 1
  return options.strict ? statusOf(counts, true) : 0
}

/** How an edition came out; one in which a withheld word stands unmarked is not published, forced or not. */
interface Row {
  readonly edition: string
  readonly out: string | null
  readonly start: string | null
  readonly files: number
  /** The one document of it, where it was printed. */
  readonly pdf: string | null
  /** SHA-256 of the manifest. */
  readonly manifest: string | null
  readonly findings: readonly Finding[]
}

async function publishEdition(
  built: Built,
  edition: string,
  options: PublishOptions & { readonly paper: Paper },
): Promise<Row> {
  const findings = withheldNames(built.stated, [edition])
  if (findings.length > 0) return { edition, out: null, start: null, files: 0, pdf: null, manifest: null, findings }
  const files = options.exportOnly
    ? await publishExports(built, edition)
    : await options.paper.publish(print => {
        const publishing = { edition, serve: false, base: baseAddress(options.base), ...sinceOf(built, options) }
        return publishWatched(built, print === undefined ? publishing : { ...publishing, paper: print }, options)
      })
  const out = resolve(options.build, folderOf(edition, options))
  write(out, files)
  const shown = relative(process.cwd(), out) || '.'
  const start = `${shown}/${options.exportOnly ? 'record.json' : 'index.html'}`
  const manifest = files.find(({ path }) => path === manifestName)?.content ?? ''
  const pdf = files.some(({ path }) => path === paperName) ? `${shown}/${paperName}` : null
  return { edition, out: shown, start, files: files.length, pdf, manifest: sumOf(manifest), findings }
}

/** `_site`, and with all editions `_site-public`, or `public` within the folder that was named. */
function folderOf(edition: string, { out, exportOnly, allEditions }: PublishOptions): string {
  const usual = exportOnly ? '_tables' : '_site'
  if (!allEditions) return out ?? usual
  return out === undefined ? `${usual}-${edition}` : join(out, edition)
}

function write(out: string, files: Parameters<typeof publishFolder>[1]): void {
  try {
    publishFolder(out, files)
  } catch (cause) {
    if (cause instanceof PublishError) throw new CannotRun(cause.message, { cause })
    throw cause
  }
}

interface Outcome {
  readonly counts: Counts
  /** Why documents are missing, where they were asked for. */
  readonly troubles?: readonly string[]
}

function tell(rows: readonly Row[], { json, allEditions }: PublishOptions, outcome: Outcome): void {
  const [first] = rows
  const told = allEditions ? { editions: rows, ...outcome } : { ...first, ...outcome }
  if (json) process.stdout.write(`${JSON.stringify(told, null, 2)}\n`)
  for (const { edition, out, start, files, pdf, manifest, findings } of rows) {
    if (out === null) {
      if (!json) process.stdout.write(`${reportFindings(findings, showsColour(process.stdout))}\n`)
      process.stderr.write(
        `\nThe edition ${edition} was not published: withheld words stand unmarked in it. --force does not publish them.\n`,
      )
      continue
    }
    if (!json) process.stdout.write(`${start}\n${pdf === null ? '' : `${pdf}\n`}`)
    process.stderr.write(`${files} files published to ${out}: ${countWords(outcome.counts)}\nmanifest ${manifest}\n`)
  }
}

function sinceOf(built: Built, { since }: PublishOptions) {
  return since === undefined ? {} : { since: sessionNamed(built.record.sessions, since) }
}

function refuse(findings: readonly Finding[], { json }: PublishOptions): number {
  const errors = findings.filter(({ severity }) => severity === 'error')
  if (json) process.stdout.write(`${JSON.stringify({ out: null, findings: errors }, null, 2)}\n`)
  else process.stdout.write(`${reportFindings(errors, showsColour(process.stdout))}\n`)
  const many = errors.length === 1 ? 'an error' : `${errors.length} errors`
  process.stderr.write(
    `\nNothing was published: the notes have ${many}. Mend ${errors.length === 1 ? 'it' : 'them'}, or publish all the same with --force.\n`,
  )
  return 1
}
