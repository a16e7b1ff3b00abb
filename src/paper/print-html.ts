import type { Browser, Page } from 'playwright-core'
import type { Folder } from './folder.ts'
import { PaperError } from './paper-error.ts'

interface Pass extends Folder {
  readonly html: string
  /** Tags take most of the time, and only the last pass needs them. */
  readonly isTagged: boolean
}

const origin = 'http://record.invalid'

/** One pass: no script runs, nothing is asked of the network or the disk. */
export async function printHtml(browser: Browser, { html, files, isTagged }: Pass): Promise<Uint8Array> {
  const context = await browser.newContext({
    javaScriptEnabled: false,
    serviceWorkers: 'block',
    acceptDownloads: false,
  })
  try {
    const page = await context.newPage()
    await serveFrom(
      page,
      new Map([...files.map(({ path, content }) => [path, content] as const), ['record.html', html]]),
    )
    await page.goto(`${origin}/record.html`, { waitUntil: 'load', timeout: 0 })
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: isTagged, outline: isTagged })
    await context.close()
    return pdf
  } catch (cause) {
    throw new PaperError(`The browser did not print the document (${reasonOf(cause)}).`, { cause })
  }
}

const kinds: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  jpg: 'image/jpeg',
  webp: 'image/webp',
  svg: 'image/svg+xml',
  png: 'image/png',
}

async function serveFrom(page: Page, files: ReadonlyMap<string, string | Uint8Array>): Promise<void> {
  await page.route('**/*', async route => {
    const url = new URL(route.request().url())
    const path = decodeURIComponent(url.pathname.slice(1))
    const body = url.origin === origin ? files.get(path) : undefined
    const contentType = kinds[path.split('.').at(-1) ?? '']
    if (body === undefined || contentType === undefined) return route.abort()
    return route.fulfill({ body: typeof body === 'string' ? body : Buffer.from(body), contentType })
  })
}

/** The first line of what went wrong. */
export const reasonOf = (cause: unknown): string =>
  cause instanceof Error ? (cause.message.split('\n')[0] ?? '') : String(cause)
