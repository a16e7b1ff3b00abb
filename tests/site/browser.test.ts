import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { oneOfEach, publish, root } from './published.ts'
import { readFolder } from './read-folder.ts'
import { smallBuild } from './small-build.ts'

// axe-core holds pages against WCAG 2.0 to 2.2, levels A and AA, and its own best practice.

const axe = readFileSync(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8')
let browser: Browser
let site = ''
/** One page of each kind. */
let kinds: string[] = []
let all: string[] = []

beforeAll(async () => {
  site = publish(root)
  all = readFolder(site)
    .map(({ path }) => path)
    .filter(path => path.endsWith('.html'))
  kinds = oneOfEach(all)
  browser = await openBrowser()
})

afterAll(async () => browser.close())

const address = (path: string): string => pathToFileURL(join(site, path)).href

interface Look {
  readonly width: number
  readonly scheme: 'light' | 'dark'
  readonly scripts?: boolean
}

async function open({ width, scheme, scripts = true }: Look): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width, height: 900 },
    colorScheme: scheme,
    javaScriptEnabled: scripts,
    bypassCSP: false,
    reducedMotion: 'reduce',
  })
  return context.newPage()
}

describe('each kind of page', () => {
  test.each<Look>([
    { width: 1280, scheme: 'light' },
    { width: 1280, scheme: 'dark' },
    { width: 360, scheme: 'light' },
    { width: 360, scheme: 'dark' },
    { width: 320, scheme: 'light' },
  ])(
    'has nothing that axe finds at $width px, $scheme',
    async look => {
      const page = await open(look)
      const faults: string[] = []
      for (const path of kinds) {
        await page.goto(address(path))
        // Evaluated by the browser's own debugger, which a page's policy does not bind.
        await page.evaluate(axe)
        const found = await page.evaluate(
          // biome-ignore lint/suspicious/noTemplateCurlyInString: the browser fills it in
          'axe.run(document, { resultTypes: ["violations"] }).then(run => run.violations.map(({ id, nodes }) => `${id}: ${nodes[0].target} ${nodes[0].html.slice(0, 160)} ${nodes[0].failureSummary}`))',
        )
        for (const fault of found as string[]) faults.push(`${path} ${fault}`)
      }
      expect(faults).toEqual([])
      await page.context().close()
    },
    300_000,
  )
})

describe('all pages', () => {
  test.each([
    { width: 1280, which: 'one of each kind' },
    { width: 768, which: 'one of each kind' },
    { width: 360, which: 'one of each kind' },
    { width: 320, which: 'every one' },
  ])(
    'scroll nowhere sideways at $width px, $which',
    async ({ width, which }) => {
      const page = await open({ width, scheme: 'light' })
      const wide: string[] = []
      for (const path of which === 'every one' ? all : kinds) {
        await page.goto(address(path), { waitUntil: 'domcontentloaded' })
        const size = Number(await page.evaluate('document.documentElement.scrollWidth'))
        if (size > width) wide.push(`${path} is ${size} px wide`)
      }
      expect(wide).toEqual([])
      await page.context().close()
    },
    300_000,
  )

  test('keep to their policy: nothing is refused, nothing is asked of a network', async () => {
    const page = await open({ width: 1280, scheme: 'light' })
    const said: string[] = []
    page.on('console', message => said.push(message.text()))
    page.on('pageerror', error => said.push(error.message))
    page.on('request', request => {
      if (!request.url().startsWith('file:')) said.push(request.url())
    })
    for (const path of kinds) await page.goto(address(path))
    expect(said).toEqual([])
    await page.context().close()
  }, 300_000)

  test('refuse a script that is not of the record', async () => {
    const page = await open({ width: 1280, scheme: 'light' })
    await page.goto(address('index.html'))
    await page.evaluate(
      `document.body.append(Object.assign(document.createElement('script'), { textContent: 'window.harm = true' }))`,
    )
    expect(await page.evaluate('window.harm === undefined')).toBe(true)
    await page.context().close()
  })
})

describe('a reader', () => {
  test('follows a figure to its sentence, which is washed, and back to what used it, without scripts', async () => {
    const page = await open({ width: 1280, scheme: 'light', scripts: false })
    await page.goto(address('measurements/index.html'))
    const link = page.locator('a.lead[href*="sessions/"]').first()
    const number = await link.locator('.num').textContent()
    await link.click()
    const target = page.locator('.q:target')
    expect(await target.textContent()).toContain(number ?? 'a figure')
    const washed = () =>
      page.evaluate('getComputedStyle(document.querySelector(":is(.s, td, th):has(:target)")).backgroundColor')
    await expect.poll(washed).toBe('rgb(217, 226, 251)')
    await page.context().close()
  })

  test('filters and sorts a table by keyboard, from a disk', async () => {
    const page = await open({ width: 1280, scheme: 'light' })
    await page.goto(address('measurements/index.html'))
    const rows = page.locator('tbody tr:not(.head):visible')
    const before = await rows.count()
    await page.getByLabel('Show only rows with').fill('wheelbase')
    const after = await rows.count()
    expect(after).toBeGreaterThan(0)
    expect(after).toBeLessThan(before)
    await page.getByRole('button', { name: 'What' }).focus()
    await page.keyboard.press('Enter')
    expect(await page.locator('thead th').first().getAttribute('aria-sort')).toBe('ascending')
    await page.context().close()
  })

  test('reaches the record by the first key and sees where the focus is', async () => {
    const page = await open({ width: 1280, scheme: 'light' })
    await page.goto(address('index.html'))
    await page.keyboard.press('Tab')
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Skip to the record')
    await page.keyboard.press('Enter')
    await page.keyboard.press('Tab')
    expect(await page.evaluate('document.activeElement.closest("main") !== null')).toBe(true)
    expect(await page.evaluate('getComputedStyle(document.activeElement).outlineStyle')).toBe('solid')
    await page.context().close()
  })

  test.each(['inspection/index.html', 'measure-next/index.html'])(
    'prints %s of a small build on one page of A4',
    async path => {
      const page = await open({ width: 1280, scheme: 'light' })
      await page.goto(pathToFileURL(join(publish(smallBuild()), path)).href)
      const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true })
      expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length).toBe(1)
      await page.context().close()
    },
  )
})
