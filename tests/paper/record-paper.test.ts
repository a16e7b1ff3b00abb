import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { blankSum, inEights, type Manifest, sumOf } from '../../src/exports/manifest.ts'
import { bindRecord } from '../../src/paper/bind-record.ts'
import type { Folder } from '../../src/paper/folder.ts'
import { publishFiles } from '../../src/publish.ts'
import { readBuild } from '../editions/published-bytes.ts'
import { openTestPress } from './open-press.ts'
import { paperBuild } from './paper-build.ts'
import { bookmarks, pageTexts, readPdf } from './read-pdf.ts'

// Read back with pdfjs-dist, which has no part in making the document.
let document: PDFDocumentProxy
let texts: string[]
let printed: Folder
let bytes: Uint8Array
let manifest: string

beforeAll(async () => {
  const built = await readBuild(paperBuild)
  const press = await openTestPress()
  const files = await publishFiles(built, {
    edition: 'full',
    serve: false,
    paper: folder => {
      printed = folder
      return press.print(folder)
    },
  })
  await press.close()
  const content = files.find(({ path }) => path === 'record.pdf')?.content
  if (!(content instanceof Uint8Array)) throw new Error('Unexpected files without record.pdf')
  bytes = content
  manifest = String(files.find(({ path }) => path === 'manifest.json')?.content)
  document = await readPdf(bytes)
  texts = await pageTexts(document)
}, 120_000)

afterAll(() => document?.destroy())

const holds = (text: string | undefined, words: string): boolean =>
  (text ?? '').toLowerCase().includes(words.toLowerCase()) // a title begins with a capital on paper

describe('the record as one document', () => {
  test('gives each chapter and sheet the number of the page on which it stands', async () => {
    const { entries } = bindRecord(printed)
    const lines = texts.slice(0, 4).join(' ')
    const wrong: string[] = []
    for (const { title, anchor } of entries) {
      const words = title.replaceAll('&#38;', '&').replaceAll('&#60;', '<').replaceAll('&#62;', '>')
      const goal = await document.getDestination(anchor)
      const page = goal === null ? 0 : (await document.getPageIndex(goal[0])) + 1
      if (!holds(lines, `${words} ${page}`)) wrong.push(`${words} ${page} is not in the contents`)
      if (!holds(texts[page - 1], words)) wrong.push(`${words} does not stand on page ${page}`)
    }
    expect(wrong).toEqual([])
    expect(entries.length).toBeGreaterThan(25)
  })

  test('prints the sums of record.json and of the manifest on its cover, and is counted in the manifest all the same', () => {
    const [cover = ''] = texts
    expect(cover).toContain(inEights(printed.sum))
    expect(cover).toContain(inEights(sumOf(manifest)))
    const { own, files } = JSON.parse(manifest) as Manifest
    expect(own).toEqual(['index.html', 'record.pdf'])
    const blank = Buffer.from(
      Buffer.from(bytes)
        .toString('latin1')
        .replace(inEights(sumOf(manifest)), blankSum),
      'latin1',
    )
    expect(files.find(({ path }) => path === 'record.pdf')?.sum).toBe(sumOf(blank))
  })

  test('holds the chapters in the order of a reader, as bookmarks', async () => {
    const titles = await bookmarks(document)
    expect(titles.filter(title => !title.startsWith('>'))).toEqual([
      'Marram & Co <beach cart>',
      'Contents',
      'Read this first',
      'Overview',
      'What the builder says',
      'Sessions',
      'Parts',
      'Systems',
      'Measurements',
      'Wiring',
      'Checks',
      'Open points',
      'Inspection',
      'Cost',
      'Hours',
      'What changed',
      'Findings',
    ])
    expect(titles).toContain('> First wires')
    expect(titles).toContain('> Voltage drop')
    expect(titles).toContain('> > Voltage drop, fuel pump')
  })

  test('is tagged, in its language, with headings and tables among the tags', async () => {
    expect((await document.getMarkInfo())?.Marked).toBe(true)
    const roles = new Set<string>()
    const collect = (node: { role?: string; children?: unknown[] }): void => {
      if (node.role !== undefined) roles.add(node.role)
      for (const child of node.children ?? []) collect(child as typeof node)
    }
    for (let number = 1; number <= document.numPages; number++) {
      const tree = await (await document.getPage(number)).getStructTree()
      if (tree !== null) collect(tree)
    }
    expect([...roles]).toEqual(expect.arrayContaining(['H1', 'H2', 'Table', 'TR', 'TH', 'TD', 'Link', 'L', 'Figure']))
    expect((await document.getMetadata()).info).toMatchObject({ Language: 'en-GB' })
  })

  test('says what it is and by what it was made, dated by its last session and not by the clock', async () => {
    const { info, metadata } = await document.getMetadata()
    expect(info).toMatchObject({
      Title: 'Marram & Co <beach cart>, as built',
      Subject: `As-built record, edition full; SHA-256 of record.json ${printed.sum}`,
      Author: '',
      Creator: 'oddleg',
      Producer: 'oddleg',
      CreationDate: 'D:20260314000000Z',
      ModDate: 'D:20260314000000Z',
    })
    expect(metadata).toBeNull()
  })

  test('numbers every page after the cover, page 2 of all and so on', () => {
    const unnumbered = texts.flatMap((text, at) => (text.includes(`page ${at + 1} of ${texts.length}`) ? [] : [at + 1]))
    expect(unnumbered).toEqual([1])
  })

  test('says on its cover the edition, the sum of the record and that it approves nothing', () => {
    const [cover = ''] = texts
    const sum = printed.sum.replace(/(.{8})(?=.)/g, '$1 ')
    for (const words of ['Marram & Co <beach cart>', 'A cart for the strand', 'Edition full', sum, 'approves nothing'])
      expect(cover).toContain(words)
  })

  test('shows the wiring on wide pages and the rest on upright ones', async () => {
    const wide: number[] = []
    for (let number = 1; number <= document.numPages; number++) {
      const [, , width = 0, height = 0] = (await document.getPage(number)).view
      if (width > height) wide.push(number)
    }
    expect(wide.length).toBeGreaterThan(2)
    expect(wide.filter(number => !texts[number - 1]?.includes('Wiring'))).toEqual([])
  })

  test('leads nowhere outside itself and tells the address of a page elsewhere in words', async () => {
    const outward: string[] = []
    let inward = 0
    for (let number = 1; number <= document.numPages; number++)
      for (const { url, unsafeUrl, dest } of await (await document.getPage(number)).getAnnotations()) {
        if (url !== undefined || unsafeUrl !== undefined) outward.push(String(url ?? unsafeUrl))
        if (typeof dest === 'string' && (await document.getDestination(dest)) !== null) inward += 1
      }
    expect(outward).toEqual([])
    expect(inward).toBeGreaterThan(100)
    expect(texts.join(' ').replaceAll(' ', '')).toContain('apageelsewhere(https://example.org/strand)')
  })

  test('prints the shown workings of a check beneath it', () => {
    const all = texts.join(' ')
    expect(all).toContain('Voltage drop, fuel pump')
    expect(all).toContain('Where the uncertainty comes from')
  })

  test('is the same to the byte from two browser processes', async () => {
    const files = printed.files.filter(({ path }) =>
      /^(index|sessions\/.*|wiring\/index|styles\/.*)\.(html|css)$/.test(path),
    )
    const [one, other] = [await printAlone({ ...printed, files }), await printAlone({ ...printed, files })]
    expect(one.length).toBeGreaterThan(10_000)
    expect(one.equals(other)).toBe(true)
  }, 60_000)
})

async function printAlone(folder: Folder): Promise<Buffer> {
  const press = await openTestPress()
  const pdf = await press.print(folder)
  await press.close()
  return Buffer.from(pdf)
}
