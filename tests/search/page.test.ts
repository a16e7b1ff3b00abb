import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openBrowser } from '../site/browser.ts'
import { publish, root, writeBuild } from '../site/published.ts'

// axe-core holds the page against WCAG 2.0 to 2.2, levels A and AA, and its own best practice.

const tank = `---
title: Tank in for size
date: 2026-03-07
parts:
  fuel-tank: { name: "Stainless tank, made to a drawing", kind: tank, action: trial-fitted, cost: £184 }
measurements:
  fuel-tank: { width: 380 mm ± 2 mm }
---
${'The morning went on other things, none of which is worth a line.\n\n'.repeat(30)}
The tank is :measure[860 mm ± 2 mm]{of="fuel-tank/length"} long, and the new tank took sixty-four litres or so.

Nobody <script>harm()</script> touched the hatch & its "seal".
`

let browser: Browser
let site = ''

beforeAll(async () => {
  site = publish(
    writeBuild({
      'build.md': '---\ntitle: Sandpiper\ncurrency: GBP\n---\nA beach utility.\n',
      'sessions/2026-03-07-tank.md': tank,
    }),
  )
  browser = await openBrowser()
})

afterAll(async () => browser.close())

interface Look {
  readonly width: number
  readonly scheme: 'light' | 'dark'
}

/** The search page from the disk, under its own policy; whatever the browser complains of is kept. */
async function open({ width, scheme }: Look, scripts = true): Promise<{ page: Page; said: string[] }> {
  const context = await browser.newContext({
    viewport: { width, height: 800 },
    colorScheme: scheme,
    javaScriptEnabled: scripts,
    bypassCSP: false,
    reducedMotion: 'reduce',
  })
  const page = await context.newPage()
  const said: string[] = []
  page.on('console', message => said.push(message.text()))
  page.on('pageerror', error => said.push(error.message))
  page.on('request', request => {
    if (!request.url().startsWith('file:')) said.push(request.url())
  })
  await page.goto(pathToFileURL(join(site, 'search/index.html')).href)
  return { page, said }
}

const wide: Look = { width: 1280, scheme: 'light' }

describe('the new tank took sixty-four litres or so', () => {
  test.each(['64 l', '14 imp gal', '62..65 litres', 'about 65 L'])(
    'is found by %s, and the click lands on the words',
    async asked => {
      const { page, said } = await open(wide)
      await page.getByLabel('What to find').pressSequentially(asked)
      expect(await page.getByRole('status').textContent()).toBe('One hit')
      expect(await page.locator('.hits mark').allTextContents()).toEqual(['sixty-four litres or so'])
      expect(await page.locator('.hits .words').textContent()).toBe(
        'The tank is 860 mm ± 2 mm long, and the new tank took sixty-four litres or so.',
      )
      await page.locator('.hits a.lead').click()
      const target = page.locator(':target')
      expect(await target.textContent()).toMatch(/^sixty-four.litres or so$/)
      expect(await target.evaluate(element => element.getBoundingClientRect().top)).toBeGreaterThan(0)
      expect(await target.evaluate(element => element.getBoundingClientRect().bottom)).toBeLessThan(800)
      await page.goBack()
      await expect.poll(() => page.getByLabel('What to find').inputValue()).toBe(asked)
      expect(await page.locator('.hits li').count()).toBe(1)
      expect(said).toEqual([])
      await page.context().close()
    },
  )
})

describe('the search page', () => {
  test.each<Look>([
    wide,
    { width: 1280, scheme: 'dark' },
    { width: 360, scheme: 'light' },
    { width: 320, scheme: 'dark' },
  ])('has nothing that axe finds at $width px, $scheme, with hits, and scrolls nowhere sideways', async look => {
    const { page } = await open(look)
    await page.getByLabel('What to find').fill('tank')
    expect(await page.locator('.hits li').count()).toBeGreaterThan(3)
    // Evaluated by the browser's own debugger, which a page's policy does not bind.
    await page.evaluate(readFileSync(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8'))
    const found = await page.evaluate(
      'axe.run(document, { resultTypes: ["violations"] }).then(run => run.violations.map(({ id, nodes }) => id + " " + nodes[0].html))',
    )
    expect(found).toEqual([])
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(look.width)
    await page.context().close()
  })

  test('begins in its box, and the keys lead from there to each hit', async () => {
    const { page } = await open(wide)
    await page.keyboard.type('fuel tank width')
    expect(await page.getByRole('status').textContent()).toBe('One hit')
    for (
      let presses = 0;
      presses < 12 &&
      !(await page
        .locator('.hits a.lead')
        .first()
        .evaluate(link => link === document.activeElement));
      presses += 1
    )
      await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    await page.waitForURL(/sessions\/2026-03-07-tank\/index\.html#q-\d+$/)
    expect(await page.locator(':target').textContent()).toMatch(/^380\s?mm\s?±\s?2\s?mm$/)
    await page.context().close()
  })

  test('says that there is nothing, and what was looked for', async () => {
    const { page } = await open(wide)
    const told = async (words: string) => {
      await page.getByLabel('What to find').fill(words)
      return page.getByRole('status').textContent()
    }
    expect([await told('99 kg'), await told('tank 99 kg'), await told('zebra'), await told('')]).toEqual([
      'Nothing in the record is 99 kg, in any unit.',
      'Nothing in the record is 99 kg and says tank.',
      'No hit. Fewer words, or others, may find it.',
      '',
    ])
    await page.context().close()
  })

  test('shows the words of a note as words, and leads to their block', async () => {
    const { page, said } = await open(wide)
    await page.getByLabel('What to find').fill('touched hatch')
    expect(await page.locator('.hits .words').textContent()).toBe(
      'Nobody <script>harm()</script> touched the hatch & its "seal".',
    )
    expect(await page.locator('.hits script').count()).toBe(0)
    expect(await page.locator('.hits a.lead').getAttribute('href')).toMatch(
      /^\.\.\/sessions\/2026-03-07-tank\/index\.html#b-72:~:text=Nobody/,
    )
    await page.locator('.hits a.lead').click()
    await page.waitForURL(/#b-72/)
    const isSeen = () => page.locator('#b-72').evaluate(block => block.getBoundingClientRect().bottom <= innerHeight)
    await expect.poll(isSeen).toBe(true)
    expect(said).toEqual([])
    await page.context().close()
  })

  test('says without JavaScript that it needs it, and leads to what lists everything', async () => {
    const { page } = await open(wide, false)
    const instead = page.locator('record-search')
    expect((await instead.textContent())?.replace(/\s+/g, ' ').trim()).toBe(
      'Searching needs JavaScript, which is not running here. Without it these list all that there is: measurements, parts, sessions.',
    )
    for (const name of ['measurements', 'parts', 'sessions']) {
      await page.goto(pathToFileURL(join(site, 'search/index.html')).href)
      await instead.getByRole('link', { name }).click()
      expect(await page.getByRole('heading', { level: 1 }).textContent()).toMatch(new RegExp(name, 'i'))
    }
    await page.context().close()
  })
})

describe('what the search page loads', () => {
  const read = (path: string): string => readFileSync(join(site, path), 'utf8')

  test('holds no eval and asks no network', () => {
    const scripts = read('client/search-query.js') + read('client/search-page.js')
    expect(/\beval\(|new Function|XMLHttpRequest|WebSocket/.exec(scripts)?.[0]).toBeUndefined()
  })

  test('is loaded by the search page only, and is the same each time', () => {
    expect(read('sessions/index.html')).not.toContain('search-index.js')
    expect(read('search/index.html')).toContain('search-index.js')
    const again = publish(
      writeBuild({
        'build.md': '---\ntitle: Sandpiper\ncurrency: GBP\n---\nA beach utility.\n',
        'sessions/2026-03-07-tank.md': tank,
      }),
    )
    for (const file of ['client/search-index.js', 'client/search-query.js', 'search/index.html'])
      expect(readFileSync(join(again, file), 'utf8') === read(file)).toBe(true)
  })
})
