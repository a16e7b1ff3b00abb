import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openBrowser } from '../site/browser.ts'
import { publish, root, writeBuild } from '../site/published.ts'

let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => browser.close())

// ISO 216: A4 is 210 by 297 mm; the margins of the style sheet leave 178 by 267 mm. CSS: 96 px to 25.4 mm.
const px = (mm: number): number => (mm / 25.4) * 96

/** A tank of this height in millimetres. */
const tankOf = (height: number): string =>
  writeBuild({
    'build.md': '---\ntitle: Small one\ncurrency: GBP\n---\n\nA small build.\n',
    'sessions/2026-03-07-tank.md': `---\ntitle: Tank\ndate: 2026-03-07\nparts:\n  tank: { name: Tank, kind: tank, wall: 2 mm }\nvolumes:\n  tank: { outside: box 600 x 300 x ${height} mm, wall: 2 mm }\n---\n\nA tank.\n`,
  })

test.each([250, 500, 600])(
  'the dip stick of a tank %d mm high prints on one sheet of A4',
  async height => {
    const page = await browser.newPage({ viewport: { width: Math.floor(px(178)), height: 900 } })
    await page.emulateMedia({ media: 'print' })
    await page.goto(pathToFileURL(join(publish(tankOf(height)), 'parts/tank/index.html')).href)
    const read = `(({ height }, { breakBefore, breakInside }) => [height, breakBefore, breakInside])(
    document.querySelector('.beside').getBoundingClientRect(), getComputedStyle(document.querySelector('.beside')))`
    const [tall, before, inside] = (await page.evaluate(read)) as [number, string, string]
    expect([before, inside]).toEqual(['page', 'avoid'])
    expect(tall).toBeLessThan(px(267))
    expect(await page.locator('.beside tbody tr').count()).toBe(Math.ceil((height - 4) / 10) + 1)
    await page.close()
  },
  60_000,
)

test('the demo’s list of what to measure prints on one sheet of A4, rows of the rule apart from what is measured', async () => {
  const file = join(publish(root), 'measure-next/index.html')
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
  await page.goto(pathToFileURL(file).href)
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true })
  expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length).toBe(1)
  const groups = readFileSync(file, 'utf8').split('<tr role="row" class="head">').slice(1)
  expect(groups.map(group => /scope="rowgroup"[^>]*>([^<]*)/.exec(group)?.[1])).toEqual([
    'To measure',
    'To look up in the rule',
  ])
  // Paths are cut by places where a line may break.
  const paths = groups.map(group =>
    [...group.replaceAll(/<wbr\s*\/?>/g, '').matchAll(/class="roomy"><span class="path">([^<]*)/g)].map(
      ([, path]) => path ?? '',
    ),
  )
  expect(paths[0]?.some(path => path.startsWith('limit/'))).toBe(false)
  expect(paths[1]?.every(path => path.startsWith('limit/'))).toBe(true)
  const rows = groups.flatMap(group => group.split('<tr role="row">').slice(1))
  expect(rows.length).toBe(paths.flat().length)
  for (const row of rows) expect(row).toMatch(/<a class="v /)
  await page.close()
}, 120_000)
