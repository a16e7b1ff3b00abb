import type { Browser, BrowserServer, BrowserType } from 'playwright-core'
import { bindRecord } from './bind-record.ts'
import { findBrowser } from './find-browser.ts'
import { finishPdf, pagesOfAnchors } from './finish-pdf.ts'
import type { Folder } from './folder.ts'
import { PaperError } from './paper-error.ts'
import { printHtml, reasonOf } from './print-html.ts'

/** Prints documents with a browser that it holds open. */
export interface Press {
  /** An edition as one PDF; a PaperError where the browser fails or takes too long. */
  readonly print: (folder: Folder) => Promise<Uint8Array>
  readonly close: () => Promise<void>
}

interface PressOptions {
  /** The program of a browser. */
  readonly browser: string | undefined
  readonly environment: Readonly<Record<string, string | undefined>>
  /** Seconds for one document; a browser that takes longer is ended. */
  readonly limit?: number
  readonly load?: () => Promise<{ readonly chromium: BrowserType }>
}

const usualLimit = 600 // s: a record of 500 pages takes some 100 on two cores
const launchLimit = 60 // s

/** Opens the browser; a PaperError says what is missing. */
export async function openPress(options: PressOptions): Promise<Press> {
  const { browser, environment, limit = usualLimit, load = () => import('playwright-core') } = options
  const launcher = await loadLauncher(load)
  const program = await findBrowser({ named: browser, environment })
  const server = await launch(launcher, program)
  const connected = await launcher.connect(server.wsEndpoint())
  return {
    print: folder => withinTime(printRecord(connected, folder), { server, limit }),
    close: () => server.kill(),
  }
}

async function loadLauncher(load: NonNullable<PressOptions['load']>): Promise<BrowserType> {
  try {
    return (await load()).chromium
  } catch (cause) {
    throw new PaperError(
      'The package playwright-core is not installed, which --pdf needs to work a browser. Run `npm install playwright-core` beside oddleg.',
      { cause },
    )
  }
}

const switches = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-component-update',
  '--disable-sync',
  '--disable-background-networking',
  '--font-render-hinting=none',
  '--host-resolver-rules=MAP * ~NOTFOUND',
]

/** It is ended when this program exits, and its profile is removed. */
async function launch(launcher: BrowserType, program: string): Promise<BrowserServer> {
  try {
    return await launcher.launchServer({
      executablePath: program,
      headless: true,
      args: switches,
      timeout: launchLimit * 1000,
      handleSIGINT: false, // it would wait for a browser that never starts
      handleSIGTERM: false,
      handleSIGHUP: false,
    })
  } catch (cause) {
    throw new PaperError(
      `The browser \`${program}\` did not start (${reasonOf(cause)}). Name another with --browser PATH.`,
      { cause },
    )
  }
}

interface Watch {
  readonly server: BrowserServer
  readonly limit: number
}

async function withinTime<Result>(work: Promise<Result>, { server, limit }: Watch): Promise<Result> {
  let timer: NodeJS.Timeout | undefined
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => {
      void server.kill()
      reject(new PaperError(`The browser did not finish the document within ${limit} s and was ended.`))
    }, limit * 1000)
  })
  try {
    return await Promise.race([work, late])
  } finally {
    clearTimeout(timer)
  }
}

const mostPasses = 4 // the second settles it; more only where a longer number moved a line

/** Prints until the numbers of the contents are those of the pages. */
async function printRecord(browser: Browser, folder: Folder): Promise<Uint8Array> {
  const bound = bindRecord(folder)
  let numbers: ReadonlyMap<string, number> = new Map()
  for (let pass = 1; pass <= mostPasses; pass++) {
    const pdf = await printHtml(browser, { ...folder, html: bound.html(numbers), isTagged: pass > 1 })
    const found = await pagesOfAnchors(pdf)
    if (bound.entries.every(({ anchor }) => numbers.has(anchor) && numbers.get(anchor) === found.get(anchor)))
      return finishPdf(pdf, { ...folder, headings: bound.headings })
    numbers = found
  }
  throw new PaperError('The page numbers of the contents did not settle.')
}
