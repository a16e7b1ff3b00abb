import { readFileSync, statSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join } from 'node:path'
import jsQR from 'jsqr'
import { parseHTML } from 'linkedom'
import { PDFDocument } from 'pdf-lib'
import type { Browser } from 'playwright-core'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { checkLinks } from './link-check.ts'
import { publish, writeBuild } from './published.ts'
import { readFolder } from './read-folder.ts'

// A record published for an address, served below a folder of a host as any static host serves it, and read by a browser.

const notes = {
  'build.md': `---
title: Punt
currency: GBP
electrical: { nominal: 12 V }
looms: { stern: { name: Stern loom } }
earth-points: { keel: { name: On the keel, count: 4 } }
editions: { public: { withhold: [cost, people] } }
---
A punt.
`,
  'sessions/2026-03-07-first.md': `---
title: First day
date: 2026-03-07
parts:
  box: { name: Fuse box, kind: fuse-box, ways: 4, action: fitted }
  seat: { name: "Seat of :private[Bob Smith]{as=people}", action: fitted, cost: £40 }
  ghost: { name: Cracked lamp, action: rejected, why: cracked }
circuits:
  pump: { use: pump, load: 5 A, fuse: { box: box, way: 2, rating: 10 A }, cable: 1.5 mm² red, length: 3 m, return: chassis, earth: keel, loom: stern, state: live }
  old-horn: { use: signal, load: 4 A, state: removed }
connectors: { plug: { name: Stern plug, pins: { 1: { wire: 1.5 mm² red, circuit: pump } } } }
---
The seat is :measure[400 mm]{of="seat/width"} wide.
`,
}

const base = 'https://example.org/club/punt/'
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.xml': 'application/xml',
}

let browser: Browser
let server: Server
let site = ''
let root = ''

beforeAll(async () => {
  site = publish(writeBuild(notes), ['--edition', 'public', '--base', 'https://example.org/club/punt'])
  server = createServer(({ url = '' }, response) => {
    const path = decodeURIComponent(new URL(url, 'http://x').pathname)
    const file = join(site, path.replace(/^\/club\/punt\//, ''))
    if (!path.startsWith('/club/punt/') || !statSync(file, { throwIfNoEntry: false })?.isFile()) {
      response.writeHead(404).end()
      return
    }
    response
      .writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' })
      .end(readFileSync(file))
  }).listen(0, '127.0.0.1')
  await new Promise(resolve => server.once('listening', resolve))
  root = `http://127.0.0.1:${(server.address() as AddressInfo).port}/club/punt/`
  browser = await openBrowser()
}, 60_000)

afterAll(async () => {
  server.close()
  await browser.close()
})

const read = (path: string): string => readFileSync(join(site, path), 'utf8')
const pages = (): string[] =>
  readFolder(site)
    .map(({ path }) => path)
    .filter(path => path.endsWith('.html'))

describe('a record below a folder of a host', () => {
  test('asks for nothing of another origin, finds all it asks for, and keeps to its policy', async () => {
    const page = await browser.newPage()
    const faults: string[] = []
    page.on('request', request => {
      if (!request.url().startsWith(root)) faults.push(request.url())
    })
    page.on('response', response => {
      if (response.status() !== 200) faults.push(`${response.status()} ${response.url()}`)
    })
    page.on('console', message => faults.push(message.text()))
    page.on('pageerror', error => faults.push(error.message))
    for (const path of pages()) await page.goto(`${root}${path.split('/').map(encodeURIComponent).join('/')}`)
    expect(faults.filter(fault => !fault.endsWith('/favicon.ico'))).toEqual([])
    await page.close()
  }, 60_000)

  test('leads from page to page', async () => {
    const page = await browser.newPage()
    await page.goto(`${root}index.html`)
    await page.locator('footer a', { hasText: 'Labels' }).click()
    await page.locator('a', { hasText: 'small labels' }).click()
    await page.locator('a.name').click()
    expect(page.url()).toBe(`${root}index.html`)
    await page.close()
  })

  test('says of each page where it is, and names the feed', () => {
    const told = pages().map(path => {
      const { document } = parseHTML(read(path))
      const href = (rel: string): string | null =>
        document.querySelector(`link[rel=${rel}]`)?.getAttribute('href') ?? null
      return [href('canonical'), href('alternate')]
    })
    expect(told).toEqual(
      pages().map(path => [
        `${base}${path.split('/').map(encodeURIComponent).join('/')}`,
        `${'../'.repeat(path.split('/').length - 1)}feed.xml`,
      ]),
    )
  })

  test('lists the same pages in its sitemap', () => {
    const listed = [...read('sitemap.xml').matchAll(/<loc>(.*?)<\/loc>/g)].map(([, address = '']) => address)
    expect(listed).toEqual(pages().map(path => `${base}${path.split('/').map(encodeURIComponent).join('/')}`))
  })
})

/** The labels of a page: what each says, and what a reader of codes makes of its code. */
async function labelsOf(
  html: string,
): Promise<{ says: string[]; code: string | undefined; alternative: string | null }[]> {
  const { document } = parseHTML(html)
  return Promise.all(
    [...document.querySelectorAll('section.labels li')].map(async label => ({
      says: [...label.querySelectorAll('strong, span span')].map(({ textContent }) => textContent ?? ''),
      code: await decode(label.querySelector('svg')?.outerHTML ?? ''),
      alternative: label.querySelector('svg')?.getAttribute('aria-label') ?? null,
    })),
  )
}

/** Drawn by sharp at some 8 pixels a module, black on white, and read by jsQR. */
async function decode(svg: string): Promise<string | undefined> {
  const drawn = svg.replace('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400" ')
  const { data, info } = await sharp(Buffer.from(drawn))
    .flatten({ background: 'white' })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true })
  return jsQR.default(new Uint8ClampedArray(data), info.width, info.height)?.data
}

const expected: readonly (readonly [string, string, string])[] = [
  ['Seat of [withheld]', 'part:seat', 'parts/seat/index.html'],
  ['Fuse box', 'part:box', 'wiring/index.html#f-box'],
  ['Stern plug', 'connector:plug', 'connectors/plug/index.html'],
  ['pump', 'circuit:pump', 'circuits/pump/index.html'],
  ['Stern loom', 'loom:stern', 'wiring/index.html#l-stern'],
  ['On the keel', 'earth-point:keel', 'wiring/index.html#e-keel'],
]

describe('the labels', () => {
  test.each(['labels/index.html', 'labels/small/index.html'])(
    'of %s name each thing and lead to its page',
    async path => {
      expect(await labelsOf(read(path))).toEqual(
        expected.map(([name, identifier, address]) => ({
          says: [name, identifier, 'Punt, edition public'],
          code: `${base}${address}`,
          alternative: `QR code: ${base}${address}`,
        })),
      )
      const links = expected.map(([, , address]) => `<a href="${address}">x</a>`).join('')
      expect(checkLinks([...readFolder(site), { path: 'all.html', content: links }])).toEqual([])
    },
  )

  test('hold the identifier where no address is known, and say so', async () => {
    const here = publish(writeBuild(notes))
    const html = readFileSync(join(here, 'labels/index.html'), 'utf8')
    const labels = await labelsOf(html)
    expect(labels.map(({ code }) => code)).toEqual(expected.map(([, identifier]) => identifier))
    expect(labels[0]?.says).toEqual(['Seat of Bob Smith', 'part:seat', 'Punt, edition full'])
    expect(html).toContain(
      'The address of this record is not known, so each code holds the identifier that stands beside it',
    )
    expect(
      readFolder(here)
        .map(({ path }) => path)
        .filter(path => /^(?:sitemap|robots|feed)/.test(path)),
    ).toEqual(['feed.xml'])
  }, 30_000)

  // A4 is 210 mm × 297 mm (ISO 216), in points of 1/72 inch.
  test.each([
    ['labels/index.html', 6],
    ['labels/index.html#circuits', 1],
    ['labels/small/index.html#parts', 1],
  ])('of %s print on %i sheets of A4, one kind alone where it was chosen', async (path, sheets) => {
    const page = await browser.newPage()
    await page.goto(`${root}${path}`)
    const printed = (await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }))).getPages()
    const size = [(210 / 25.4) * 72, (297 / 25.4) * 72]
    expect(printed).toHaveLength(sheets)
    for (const sheet of printed) {
      expect(sheet.getWidth()).toBeCloseTo(size[0] ?? 0, -0.5)
      expect(sheet.getHeight()).toBeCloseTo(size[1] ?? 0, -0.5)
    }
    await page.close()
  })

  // The sheets that are sold: 24 labels of 70 mm × 37 mm, 65 of 38.1 mm × 21.2 mm; common sizes, from memory.
  test.each([
    ['labels/index.html', 70, 37],
    ['labels/small/index.html', 38.1, 21.2],
  ])('of %s are %f mm × %f mm, and no word of them is cut off', async (path, width, height) => {
    const page = await browser.newPage()
    await page.emulateMedia({ media: 'print' })
    await page.goto(`${root}${path}`)
    const sizes = (await page.evaluate(
      '[...document.querySelectorAll("section.labels li")].map(one => [one.offsetWidth, one.offsetHeight, one.scrollHeight - one.clientHeight])',
    )) as number[][]
    const pixels = (mm: number): number => Math.round((mm / 25.4) * 96) // CSS: 96 px an inch
    expect(sizes).toEqual(sizes.map(() => [pixels(width), pixels(height), 0]))
    await page.close()
  })
})
