import { XmlDocument } from 'libxml2-wasm'
import { describe, expect, test } from 'vitest'
import { sitemapFiles } from '../../src/exports/sitemap.ts'

// sitemaps.org protocol 0.9: whole addresses below the sitemap's own folder, escaped, under 2,048 characters, 50,000 a file.

const base = 'https://example.org/a&b/'

/** The addresses that a sitemap lists, read by libxml2. */
function addressesIn(xml: string | Uint8Array, entry: string): string[] {
  const document = XmlDocument.fromString(String(xml))
  const found = document
    .find(`//s:${entry}/s:loc`, { s: 'http://www.sitemaps.org/schemas/sitemap/0.9' })
    .map(node => node.content)
  document.dispose()
  return found
}

describe('sitemap.xml', () => {
  test('lists every page by its whole address', () => {
    const [map, ...others] = sitemapFiles(['index.html', 'parts/a b/index.html', "parts/ü'#/index.html"], base)
    expect([map?.path, others]).toEqual(['sitemap.xml', []])
    expect(addressesIn(map?.content ?? '', 'url')).toEqual([
      'https://example.org/a&b/index.html',
      'https://example.org/a&b/parts/a%20b/index.html',
      "https://example.org/a&b/parts/%C3%BC'%23/index.html",
    ])
  })

  test('is split behind an index where one file may not hold all', () => {
    const pages = Array.from({ length: 50_001 }, (_, at) => `parts/${at}/index.html`)
    const files = sitemapFiles(pages, base)
    expect(files.map(({ path }) => path)).toEqual(['sitemap.xml', 'sitemap-1.xml', 'sitemap-2.xml'])
    expect(addressesIn(files[0]?.content ?? '', 'sitemap')).toEqual([`${base}sitemap-1.xml`, `${base}sitemap-2.xml`])
    expect(files.slice(1).map(({ content }) => addressesIn(content, 'url').length)).toEqual([50_000, 1])
  })

  // RFC 9309, section 2.3: robots.txt is looked for at the top of a host and nowhere else.
  test.each([
    ['https://example.org/', 'User-agent: *\nAllow: /\n\nSitemap: https://example.org/sitemap.xml\n'],
    ['https://example.org/sandpiper/', null],
  ])('is named by robots.txt at %s only where the record has the host to itself', (address, expected) => {
    const robots = sitemapFiles(['index.html'], address).find(({ path }) => path === 'robots.txt')
    expect(robots?.content ?? null).toBe(expected)
  })
})
