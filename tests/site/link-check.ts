import { posix } from 'node:path'

export interface SiteFile {
  readonly path: string
  readonly content: string | Uint8Array
}

/** Every link, picture, style sheet and script of a site that leads nowhere, and every anchor that stands twice: one sentence each. */
export function checkLinks(files: readonly SiteFile[]): string[] {
  const pages = new Map(
    files.map(({ path, content }) => [
      path,
      path.endsWith('.html') && typeof content === 'string' ? idsOf(content) : [],
    ]),
  )
  return files.flatMap(({ path, content }) => {
    if (!path.endsWith('.html') || typeof content !== 'string') return []
    return [
      ...repeated(pages.get(path) ?? []).map(id => `${path}: the anchor ${id} stands twice`),
      ...targetsOf(content).flatMap(target => faultOf(path, target, pages)),
    ]
  })
}

function idsOf(html: string): string[] {
  return [...html.matchAll(/<[a-zA-Z][^<>]*?\sid="([^"]*)"/g)].map(([, id]) => plain(id ?? ''))
}

function targetsOf(html: string): string[] {
  const linked = [...html.matchAll(/<[a-zA-Z][^<>]*?\s(?:href|src)="([^"]*)"/g)].map(([, target]) =>
    plain(target ?? ''),
  )
  const named = [...html.matchAll(/\saria-(?:describedby|labelledby|controls)="([^"]*)"/g)].flatMap(([, ids]) =>
    (ids ?? '').split(' ').map(id => `#${id}`),
  )
  const sized = [...html.matchAll(/\ssrcset="([^"]*)"/g)].flatMap(([, sizes]) =>
    plain(sizes ?? '')
      .split(/,\s+/)
      .map(size => size.split(' ')[0] ?? ''),
  )
  return [...linked, ...named, ...sized]
}

function faultOf(page: string, target: string, pages: ReadonlyMap<string, readonly string[]>): string[] {
  if (/^(https?|mailto|tel):/.test(target)) return []
  if (/^[a-z][a-z0-9+.-]*:|^\//i.test(target)) return [`${page}: ${target} leads out of the record`]
  const [address = '', anchor] = target.split('#', 2)
  const path = address === '' ? page : posix.join(posix.dirname(page), decodeURIComponent(address))
  const ids = pages.get(path)
  if (ids === undefined) return [`${page}: ${target} leads to no file`]
  return anchor === undefined || ids.includes(decodeURIComponent(anchor))
    ? []
    : [`${page}: ${target} leads to no anchor of its page`]
}

function repeated(ids: readonly string[]): string[] {
  return [...new Set(ids.filter((id, index) => ids.indexOf(id) !== index))]
}

const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' }

function plain(text: string): string {
  return text.replace(
    /&(?:#x([0-9a-f]+)|#(\d+)|(amp|lt|gt|quot));/gi,
    (_, hex: string | undefined, decimal: string | undefined, name: string | undefined) =>
      name === undefined
        ? String.fromCodePoint(Number.parseInt(hex ?? decimal ?? '0', hex === undefined ? 10 : 16))
        : (named[name.toLowerCase()] ?? ''),
  )
}
