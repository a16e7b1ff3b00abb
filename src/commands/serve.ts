import type { Built } from '../build.ts'
import { makeNoteMemory } from '../notes/note-memory.ts'
import type { PhotoMemory } from '../pictures/prepare-photos.ts'
import { publishFiles } from '../publish.ts'
import { countAll, countWords } from './counts.ts'
import { type BuildOptions, CannotRun } from './options.ts'
import { readBuildAndPictures, requireEdition } from './read-build.ts'
import { reportFindings, showsColour } from './report-findings.ts'
import { type SiteFiles, type SiteServer, serveFolder } from './serve-folder.ts'
import { untilStopped } from './until-stopped.ts'
import { watchContent } from './watch-content.ts'

interface ServeOptions extends BuildOptions {
  readonly edition: string
  readonly port: string
}

/** `oddleg serve`: the record on this machine only; a change to a note re-reads that note and shows every page anew. */
export async function serve(options: ServeOptions): Promise<number> {
  const memory = makeNoteMemory()
  const photoMemory: PhotoMemory = new Map()
  const make = async (): Promise<SiteFiles> => {
    const built = await readBuildAndPictures(options, memory)
    requireEdition(built, options.edition)
    tell(built)
    const onTroubles = (troubles: readonly string[]): void => {
      for (const trouble of troubles) process.stderr.write(`${trouble}\n`)
    }
    const files = await publishFiles(built, { edition: options.edition, serve: true, photoMemory, onTroubles })
    return new Map(files.map(({ path, content }) => [path, content]))
  }
  const site = await listen(await make(), portOf(options.port))
  process.stdout.write(`${site.address}\n`)
  process.stderr.write('Serving on this machine only. Ctrl-C ends it.\n')
  const stop = watchContent(
    options.build,
    inTurn(async () => site.show(await make())),
  )
  await untilStopped()
  stop()
  await site.close()
  return 0
}

/** Runs one at a time; changes that come in meanwhile make one more run. */
function inTurn(work: () => Promise<void>): () => void {
  let running = false
  let again = false
  const run = async (): Promise<void> => {
    running = true
    do {
      again = false
      await work().catch((cause: unknown) =>
        process.stderr.write(`oddleg: ${cause instanceof Error ? cause.message : String(cause)}\n`),
      )
    } while (again)
    running = false
  }
  return () => {
    if (running) again = true
    else void run()
  }
}

function tell({ findings, verdicts }: Built): void {
  const bad = findings.filter(({ severity }) => severity !== 'note')
  if (bad.length > 0) process.stderr.write(`${reportFindings(bad, showsColour(process.stderr))}\n`)
  process.stderr.write(`${new Date().toLocaleTimeString('en-GB')} ${countWords(countAll(findings, verdicts))}\n`)
}

function portOf(text: string): number {
  const port = Number(text)
  if (/^\d+$/.test(text) && port <= 65535) return port
  throw new CannotRun(`Unexpected port \`${text}\`, expected a number from 0 to 65535.`)
}

async function listen(files: SiteFiles, port: number): Promise<SiteServer> {
  try {
    return await serveFolder(files, port)
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? cause.code : null
    if (code === 'EADDRINUSE')
      throw new CannotRun(
        `Port ${port} is in use by another program. Name another with --port, or 0 for any that is free.`,
        { cause },
      )
    if (code === 'EACCES')
      throw new CannotRun(`Port ${port} may not be used without more rights. Name one above 1023 with --port.`, {
        cause,
      })
    throw cause
  }
}
