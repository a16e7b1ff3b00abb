import { readFileSync } from 'node:fs'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { widthOf, wrap } from '../../src/wiring/lettering.ts'
import { openBrowser } from '../site/browser.ts'

const texts = [
  'W23, 2.5 mm² green/purple, 4.6 m',
  'Auxiliary fuse box, eight way',
  'MAIN BEAM, LEFT',
  'illicit till, filling',
  'Wwwmm @ 100 % ± Ω',
  'Stalk plug, eight way, Ostrel colours',
  '1234567890',
  'Éclairage arrière gauche',
  '⌀ 12 mm',
  'Фара левая',
]

describe('the room that is kept for lettering', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await openBrowser()
  })
  afterAll(() => browser.close())

  test('is enough for what a browser draws with the site’s own styles', async () => {
    const page = await browser.newPage()
    const styles = ['tokens', 'drawings', 'wiring']
      .map(name => readFileSync(`site/styles/${name}.css`, 'utf8'))
      .join('\n')
    const lines = texts.map((text, at) => `<text x="0" y="${20 + at * 20}">${text}</text>`).join('')
    await page.setContent(`<style>${styles}</style><svg class="dwg wd" width="900" height="400">${lines}</svg>`)
    const widths = await page.$$eval('text', found =>
      found.map(text => (text as unknown as SVGGraphicsElement).getBBox().width),
    )
    expect(texts.filter((text, at) => (widths[at] ?? 0) > widthOf(text))).toEqual([])
    expect(texts.filter((text, at) => (widths[at] ?? 0) < widthOf(text) / 1.6)).toEqual([])
  })
})

describe('words are broken into lines', () => {
  test.each([
    ['Left rear lamp', 70, ['Left rear', 'lamp']],
    ['2.5 mm² red', 60, ['2.5\u00a0mm²', 'red']],
    ['Motorhauptsicherung', 60, ['Motorh', 'auptsic', 'herung']],
    ['', 60, ['']],
    ['  a   b ', 60, ['a b']],
  ])('%j within %d', (text, width, expected) => {
    expect(wrap(text, width)).toEqual(expected)
  })
})
