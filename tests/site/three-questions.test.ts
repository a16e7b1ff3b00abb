import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { publish, root } from './published.ts'

// What is in it, what did it cost, what is still to do: read on the screen of a laptop without scrolling.

let browser: Browser
let site = ''

beforeAll(async () => {
  site = publish(root)
  browser = await openBrowser()
}, 120_000)

afterAll(async () => browser.close())

const address = (path: string): string => pathToFileURL(join(site, path)).href

async function open(path: string, height: number, width: number): Promise<Page> {
  const context = await browser.newContext({ viewport: { width, height }, reducedMotion: 'reduce' })
  const page = await context.newPage()
  await page.goto(address(path))
  return page
}

const answers = [
  ['index.html', 'What is in it, what it cost, what is still to do', 7],
  ['parts/index.html', 'What is in it, by system', 20],
  ['cost/index.html', 'Where the money is', 9],
  ['road/index.html', 'What is still to do', 16],
] as const

const answerOf = (page: Page, caption: string) =>
  page
    .locator('table')
    .filter({ has: page.locator('caption', { hasText: caption }) })
    .first()

describe.each([
  [1366, 768],
  [1280, 720],
])('on a screen of %i by %i', (width, height) => {
  test.each(answers)('%s answers in its table “%s” without scrolling', async (path, caption) => {
    const page = await open(path, height, width)
    const box = await answerOf(page, caption).boundingBox()
    expect(box?.height).toBeGreaterThan(100)
    expect(box?.y).toBeGreaterThan(0)
    expect((box?.y ?? 0) + (box?.height ?? height)).toBeLessThanOrEqual(height)
    await page.context().close()
  })
})

describe('each thing in an answer', () => {
  test.each(answers)('of %s, “%s”, leads to its words in one click', async (path, caption, least) => {
    const page = await open(path, 720, 1280)
    const links = await answerOf(page, caption)
      .locator('a')
      .evaluateAll(found => found.map(link => (link as unknown as { href: string }).href))
    expect(links.length).toBeGreaterThanOrEqual(least)
    const figures = links.filter(link => /\/(?:sessions\/[^/]+|build)\/index\.html#/.test(link))
    expect(figures.length).toBeGreaterThanOrEqual(3)
    const lost: string[] = []
    for (const link of links.filter(one => one.includes('#'))) {
      await page.goto(link)
      if ((await page.locator(':target').count()) !== 1) lost.push(link)
    }
    expect(lost).toEqual([])
    await page.context().close()
  })

  test('is a figure that its sentence states', async () => {
    const page = await open('cost/index.html', 720, 1280)
    const link = answerOf(page, 'Where the money is').locator('a', { hasText: 'Stainless tank' }).first()
    const amount = /^£[\d.,]+/.exec((await link.textContent()) ?? '')?.[0] ?? 'an amount'
    await link.click()
    expect(await page.locator(':target').textContent()).toContain(amount.replace(/\.00$/, ''))
    await page.context().close()
  })
})

describe('a drawing', () => {
  test.each(['index.html', 'cost/index.html', 'hours/index.html', 'systems/index.html', 'parts/fuel-tank/index.html'])(
    'of %s is named by its own title and told by its own description',
    async path => {
      const page = await open(path, 720, 1280)
      const told = await page.locator('svg.dwg').evaluateAll(drawings =>
        drawings.map(drawing => {
          const named = (key: string) => drawing.querySelector(`#${drawing.getAttribute(key)}`)
          return [named('aria-labelledby')?.localName, (named('aria-labelledby')?.textContent ?? '').length > 5]
        }),
      )
      expect(told.length).toBeGreaterThan(0)
      expect(told.filter(([name, isLong]) => name !== 'title' || isLong !== true)).toEqual([])
      const plots = await page
        .locator('svg.plot, svg.rule')
        .evaluateAll(drawings =>
          drawings.map(
            drawing => drawing.querySelector(`desc#${drawing.getAttribute('aria-describedby')}`)?.textContent ?? '',
          ),
        )
      expect(plots.filter(words => words.length < 10)).toEqual([])
      await page.context().close()
    },
  )
})
