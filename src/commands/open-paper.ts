import type { PublishedFile } from '../exports/publish-folder.ts'
import type { Folder } from '../paper/folder.ts'
import { PaperError } from '../paper/paper-error.ts'
import type { Press } from '../paper/press.ts'
import { CannotRun, type PublishOptions } from './options.ts'

type Print = (folder: Folder) => Promise<Uint8Array>

/** What prints the document of each edition. */
export interface Paper {
  /** Makes the files of an edition with its document; without it where it could not be printed. */
  readonly publish: (make: (print: Print | undefined) => Promise<PublishedFile[]>) => Promise<PublishedFile[]>
  /** Why documents are missing, each in a sentence with its mend. */
  readonly troubles: string[]
  readonly close: () => Promise<void>
}

/** Opens the browser where a document is asked for; where that fails the pages are published all the same. */
export async function openPaper({ pdf, browser, exportOnly, json }: PublishOptions): Promise<Paper> {
  if (!pdf && browser === undefined) return noPaper([])
  if (!pdf) throw new CannotRun('Unexpected --browser without --pdf: it names the browser that prints the document.')
  if (exportOnly) throw new CannotRun('Unexpected --pdf with --export-only: the document is made of the pages.')
  const { openPress } = await import('../paper/press.ts')
  const free = exitWhenStopped()
  try {
    return paperOf(await openPress({ browser, environment: process.env }), { json, free })
  } catch (cause) {
    free()
    if (cause instanceof PaperError) return noPaper([cause.message])
    throw cause
  }
}

const noPaper = (troubles: string[]): Paper => ({
  publish: make => make(undefined),
  troubles,
  close: async () => {},
})

const signals = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const // 128 and the number of the signal, as shells give it

/** Ctrl-C ends the program by its exit, with which the browser ends too; gives what undoes this. */
function exitWhenStopped(): () => void {
  const listeners = Object.entries(signals).map(([signal, status]) => [signal, () => process.exit(status)] as const)
  for (const [signal, exit] of listeners) process.once(signal, exit)
  return () => {
    for (const [signal, exit] of listeners) process.off(signal, exit)
  }
}

interface Surrounding {
  readonly json: boolean
  readonly free: () => void
}

function paperOf(press: Press, { json, free }: Surrounding): Paper {
  const troubles: string[] = []
  const print: Print = async folder => {
    const isShown = process.stderr.isTTY && !json
    if (isShown) process.stderr.write('printing the record as one document …')
    try {
      return await press.print(folder)
    } finally {
      if (isShown) process.stderr.write('\r\u001b[K')
    }
  }
  return {
    async publish(make) {
      try {
        return await make(print)
      } catch (cause) {
        if (!(cause instanceof PaperError)) throw cause
        troubles.push(cause.message)
        return make(undefined)
      }
    },
    troubles,
    async close() {
      await press.close()
      free()
    },
  }
}
