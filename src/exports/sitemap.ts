import { escapeXml } from './escape-xml.ts'
import type { PublishedFile } from './publish-folder.ts'

const mostAddresses = 50_000 // of one sitemap, sitemaps.org protocol
const schema = 'http://www.sitemaps.org/schemas/sitemap/0.9'

/**
 * The addresses of all pages by the sitemaps.org protocol; more than one file may hold are split behind an index. Where the
 * record has a host to itself, robots.txt says where the sitemap is: a crawler looks for that nowhere else (RFC 9309 section 2.3).
 */
export function sitemapFiles(pages: readonly string[], base: string): PublishedFile[] {
  const addresses = pages.map(path => absoluteAddress(base, path))
  const chunks = Array.from({ length: Math.ceil(addresses.length / mostAddresses) }, (_, at) =>
    addresses.slice(at * mostAddresses, (at + 1) * mostAddresses),
  )
  const [only] = chunks
  const maps =
    chunks.length === 1 && only !== undefined
      ? [{ path: 'sitemap.xml', content: listing('urlset', 'url', only) }]
      : splitMaps(chunks, base)
  return [...maps, ...robots(base)]
}

/** The address of a published file, given by its path. */
export function absoluteAddress(base: string, path: string): string {
  return `${base}${path.split('/').map(encodeURIComponent).join('/')}`
}

function splitMaps(chunks: readonly (readonly string[])[], base: string): PublishedFile[] {
  const maps = chunks.map((chunk, at) => ({
    path: `sitemap-${at + 1}.xml`,
    content: listing('urlset', 'url', chunk),
  }))
  const addresses = maps.map(({ path }) => absoluteAddress(base, path))
  return [{ path: 'sitemap.xml', content: listing('sitemapindex', 'sitemap', addresses) }, ...maps]
}

/** Without `lastmod`: a page changes with the record, and no note says when it was published. */
function listing(root: string, entry: string, addresses: readonly string[]): string {
  const lines = addresses.map(address => `  <${entry}><loc>${escapeXml(address)}</loc></${entry}>`)
  return `<?xml version="1.0" encoding="utf-8"?>\n<${root} xmlns="${schema}">\n${lines.join('\n')}\n</${root}>\n`
}

function robots(base: string): PublishedFile[] {
  if (new URL(base).pathname !== '/') return []
  return [
    { path: 'robots.txt', content: `User-agent: *\nAllow: /\n\nSitemap: ${absoluteAddress(base, 'sitemap.xml')}\n` },
  ]
}
