import { relative, resolve } from 'node:path'
import { publishFiles } from '../build.ts'
import { PublishError, publishFolder } from '../exports/publish-folder.ts'
import { countAll, countWords, statusOf } from './counts.ts'
import { CannotRun, type PublishOptions } from './options.ts'
import { readBuild, requireEdition } from './read-build.ts'
import { reportFindings, showsColour } from './report-findings.ts'

/** `oddleg build`: publishes nothing and gives 1 where a note has an error, unless forced; a failed check gives 1 only with strict. */
export async function build(options: PublishOptions): Promise<number> {
  const built = await readBuild(options)
  requireEdition(built, options.edition)
  const counts = countAll(built.findings, built.verdicts)
  if (counts.error > 0 && !options.force) return refuse(built.findings, options)
  const out = resolve(options.build, options.out)
  const files = await publishFiles(built, { edition: options.edition, serve: false })
  try {
    publishFolder(out, files)
  } catch (cause) {
    if (cause instanceof PublishError) throw new CannotRun(cause.message, { cause })
    throw cause
  }
  const shown = relative(process.cwd(), out) || '.'
  const start = `${shown}/index.html`
  if (options.json) process.stdout.write(`${JSON.stringify({ out: shown, start, files: files.length, counts })}\n`)
  else process.stdout.write(`${start}\n`)
  process.stderr.write(`${files.length} files published to ${shown}: ${countWords(counts)}\n`)
  return options.strict ? statusOf(counts, true) : 0
}

function refuse(findings: Awaited<ReturnType<typeof readBuild>>['findings'], { json }: PublishOptions): number {
  const errors = findings.filter(({ severity }) => severity === 'error')
  if (json) process.stdout.write(`${JSON.stringify({ out: null, findings: errors }, null, 2)}\n`)
  else process.stdout.write(`${reportFindings(errors, showsColour(process.stdout))}\n`)
  const many = errors.length === 1 ? 'an error' : `${errors.length} errors`
  process.stderr.write(
    `\nNothing was published: the notes have ${many}. Mend ${errors.length === 1 ? 'it' : 'them'}, or publish all the same with --force.\n`,
  )
  return 1
}
