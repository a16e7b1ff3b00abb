import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { pathToFileURL } from 'node:url'
import { gzipSync } from 'node:zlib'
import MiniSearch from 'minisearch'
import { searchFiles } from '../../src/exports/search-files.ts'
import { recordAddresses } from '../../src/pages/record-addresses.ts'
import { quantitiesOverlap } from '../../src/quantities/quantities-overlap.ts'
import { plainReading, type Quantity } from '../../src/quantities/quantity.ts'
import { readOneQuantity } from '../../src/quantities/read-one-quantity.ts'
import type { Session } from '../../src/record/record.ts'
import { indexRecord } from '../../src/search/index-record.ts'
import { openIndex, search } from '../../src/search/query.ts'
import type { SearchIndex } from '../../src/search/search-index.ts'
import { foldTexts } from '../record/read-texts.ts'
import { openBrowser } from '../site/browser.ts'
import { root } from '../site/published.ts'

const notes = 25
const copies = 10 // of each note under another date: reading as many notes is not what is measured here
const figuresEach = 200
const rounds = 9
const shownHits = 60
const wordQueries = ['bracket length', 'brackot', 'hose clip', 'length']
const sizeQueries = ['10 in', 'about 4 ft', '60..70 mm', '>1.19 m']

/** 50,000 measurements: our query beside MiniSearch alone and beside a scan of all figures, in one run; then ours in a real browser from file://. */
export async function run(): Promise<void> {
  const texts = Object.fromEntries(Array.from({ length: notes }, (_, at) => noteOf(at)))
  const { record } = foldTexts({ build: '---\ntitle: Generated\ncurrency: GBP\n---\nNone.\n', sessions: texts })
  const sessions = Array.from({ length: copies }, (_, copy) => record.sessions.map(one => copyOf(one, copy))).flat()
  const figures = sessions.flatMap(session => session.figures.map(({ quantity }) => quantity))
  const begun = performance.now()
  const index = indexRecord({ ...record, sessions, edition: 'full' }, recordAddresses)
  console.log(`${figures.length} measurements, indexed in ${seconds(performance.now() - begun)} s`)
  const files = await searchFiles(index)
  for (const { path, content } of files)
    console.log(`${path.padEnd(26)} ${kilobytes(content.length)} kB, gzip ${kilobytes(gzipSync(content).length)} kB`)
  compare(index, figures)
  await inBrowser(files.map(({ content }) => String(content)))
}

const things = ['bracket', 'hose', 'sill', 'panel', 'strut', 'loom', 'clip', 'beam', 'tank', 'shaft']
const properties = ['length', 'width', 'height', 'clearance', 'wall']

function copyOf(session: Session, copy: number): Session {
  const id = `${session.id}-${copy}`
  return { ...session, id, number: session.number + copy * notes, file: `content/sessions/${id}.md` }
}

function noteOf(at: number): [string, string] {
  const date = new Date(Date.UTC(2020, 0, 1 + at)).toISOString().slice(0, 10)
  const rows = Array.from({ length: figuresEach }, (_, row) => {
    const number = at * figuresEach + row
    const thing = `${things[number % things.length]}-${things[(number >> 3) % things.length]}-${number % 997}`
    const size = 20 + ((number * 7919) % 11800) / 10
    const value = number % 5 === 0 ? `${(size / 25.4).toFixed(2)} in` : `${size.toFixed(1)} mm ± 1 mm`
    return `| ${thing}/${properties[number % properties.length]} | ${value} | tape | word${number % 3001} |`
  })
  const head = `---\ntitle: Session ${at}\ndate: ${date}\n---\nMeasured all that stands.\n`
  return [
    `${date}-session.md`,
    [head, '| Measurement | Value | With | Note |', '| --- | --- | --- | --- |', ...rows, ''].join('\n'),
  ]
}

/** In turn, so that a machine that drifts slows both. */
function compare(index: SearchIndex, figures: readonly Quantity[]): void {
  const opened = median(() => openIndex(index))
  const mini = new MiniSearch({ fields: ['text'], searchOptions: { combineWith: 'AND', fuzzy: 0.2, prefix: true } })
  mini.addAll(index.saids.map((text, id) => ({ id, text })))
  const kept = JSON.stringify(mini)
  const loaded = median(() => MiniSearch.loadJSON(kept, { fields: ['text'] }))
  console.log(
    `ready, in Node             ${opened.toFixed(1)} ms; MiniSearch alone from its JSON ${loaded.toFixed(1)} ms; ratio ${(opened / loaded).toFixed(3)}`,
  )
  const open = openIndex(index)
  open.vocabulary.prepare()
  for (const query of [...wordQueries, ...sizeQueries, ...wordQueries]) search(open, query, shownHits)
  for (const query of wordQueries)
    print(
      query,
      median(() => search(open, query, shownHits)),
      'MiniSearch alone',
      median(() => mini.search(query)),
    )
  for (const query of sizeQueries) {
    const wanted = readOneQuantity(query.replace('..', ' to '), plainReading)
    if (wanted === null) throw new Error(`Unexpected query \`${query}\`, expected one quantity`)
    print(
      query,
      median(() => search(open, query, shownHits)),
      'a scan of all figures',
      median(() => figures.filter(one => quantitiesOverlap(one, wanted))),
    )
  }
}

function print(query: string, ours: number, what: string, theirs: number): void {
  console.log(
    `${query.padEnd(26)} ${ours.toFixed(2).padStart(7)} ms; ${what} ${theirs.toFixed(1).padStart(7)} ms; ratio ${(ours / theirs).toFixed(3)}`,
  )
}

/** The page's own two scripts under the policy of the site; nothing but the clock is added. */
async function inBrowser([indexScript = '', queryScript = '']: readonly string[]): Promise<void> {
  const folder = join(root, '.tmp', 'bench-search')
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, 'query.js'), queryScript)
  writeFileSync(
    join(folder, 'index.js'),
    `globalThis.begun=performance.now();${indexScript};globalThis.parsed=performance.now()`,
  )
  writeFileSync(
    join(folder, 'page.html'),
    `<!doctype html><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'"><title>b</title><script src="query.js"></script><script src="index.js"></script>`,
  )
  const browser = await openBrowser()
  const page = await browser.newPage()
  await page.goto(pathToFileURL(join(folder, 'page.html')).href)
  const ready = await page.evaluate(
    '(() => { const t = performance.now(); globalThis.open_ = oddlegSearch.openIndex(oddlegIndex); open_.vocabulary.prepare(); const ready = performance.now() - t; for (let i = 0; i < 3; i++) for (const words of ["length", "tape length 1 mm", "tape length"]) oddlegSearch.search(open_, words, 60); return [parsed - begun, ready] })()',
  )
  console.log(
    `in Chromium from file://: index read in ${(ready as number[]).map(one => one.toFixed(1)).join(' ms, made ready in ')} ms`,
  )
  for (const query of [...wordQueries, ...sizeQueries, '25.4 mm hose']) {
    const times = (await page.evaluate(
      `Array.from({ length: ${rounds} }, () => { const t = performance.now(); const { total } = oddlegSearch.search(open_, ${JSON.stringify(query)}, ${shownHits}); return [performance.now() - t, total] })`,
    )) as [number, number][]
    const sorted = times.map(([time]) => time).sort((a, b) => a - b)
    console.log(
      `${query.padEnd(26)} ${(sorted[rounds >> 1] ?? 0).toFixed(1).padStart(7)} ms median, ${(sorted.at(-1) ?? 0).toFixed(1)} ms worst, ${times[0]?.[1]} hits`,
    )
  }
  await browser.close()
}

function median(work: () => unknown): number {
  const times = Array.from({ length: rounds }, () => {
    const begun = performance.now()
    work()
    return performance.now() - begun
  })
  return times.sort((a, b) => a - b)[rounds >> 1] ?? 0
}

const kilobytes = (bytes: number): string =>
  Math.round(bytes / 1000)
    .toString()
    .padStart(6)
const seconds = (milliseconds: number): string => (milliseconds / 1000).toFixed(2)
