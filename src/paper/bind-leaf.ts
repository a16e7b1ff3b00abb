import type { Leaf } from './leaf.ts'
import { escapeWords, rewriteTags, startTag, type Tag } from './tags.ts'

/** Where everything of the record stands within the document. */
export interface Places {
  /** The anchor of a page, or of an anchor on it; null where the document does not hold it. */
  readonly anchorOf: (path: string, id: string) => string | null
}

/** Anchors by the number of the leaf, which say nothing of names. */
export function placesOf(leaves: readonly Leaf[]): Places {
  const numbers = new Map(leaves.map((leaf, index) => [leaf.path, index]))
  const anchors = new Map<string, string>()
  for (const [index, { path, ids }] of leaves.entries())
    for (const [at, id] of [...ids].entries()) anchors.set(`${path}#${id}`, `a${index}-${at}`)
  return {
    anchorOf(path, id) {
      const number = numbers.get(path)
      if (number === undefined) return null
      return anchors.get(`${path}#${id}`) ?? `leaf-${number}`
    },
  }
}

/** A page as a part of the document: anchors made unique, links turned to the place within, headings set deeper. */
export function bindLeaf(leaf: Leaf, depth: number, places: Places): string {
  const binding: Binding = { leaf, depth, places, after: [] }
  const html = rewriteTags(leaf.html, tag => boundTag(tag, binding))
  const look = `leaf deep-${depth}${leaf.look === '' ? '' : ` ${leaf.look}`}`
  return `<section class="${look}"><div class="sheet">${html}</div></section>\n`
}

interface Binding {
  readonly leaf: Leaf
  readonly depth: number
  readonly places: Places
  /** What stands behind each link that is open. */
  readonly after: string[]
}

function boundTag(tag: Tag, binding: Binding): string | null {
  const { name, isEnd, attributes } = tag
  if (name === 'a') return isEnd ? `</a>${binding.after.pop() ?? ''}` : boundLink(tag, binding)
  if (/^h[1-6]$/.test(name)) return boundHeading(tag, binding)
  if (isEnd || attributes.size === 0) return null
  // The JPEG of a picture goes into a document as it is, any other would be unpacked.
  return name === 'source' ? '' : startTag(tag, boundAttributes(tag, binding))
}

/** The class keeps the look of the rank that it had; the title carries the anchor of its page. */
function boundHeading(tag: Tag, binding: Binding): string {
  const name = `h${Math.min(6, Number(tag.name.slice(1)) + binding.depth)}`
  if (tag.isEnd) return `</${name}>`
  const attributes = boundAttributes(tag, binding)
  if (tag.name === 'h1') attributes.set('id', binding.places.anchorOf(binding.leaf.path, '') ?? '')
  const look = [attributes.get('class'), tag.name].filter(one => typeof one === 'string').join(' ')
  return startTag({ name, isAlone: false }, attributes.set('class', look))
}

// What has a use on a screen only.
const dropped = /^(tabindex|loading|srcset|sizes|decoding|target|rel|download)$/

function boundAttributes(tag: Tag, binding: Binding): Map<string, string | null> {
  const kept = [...tag.attributes].filter(([key]) => !dropped.test(key))
  return new Map(kept.map(([key, value]) => [key, value === null ? null : boundValue(tag.name, [key, value], binding)]))
}

const lists = /^(id|aria-\w+by|for|headers|list)$/

function boundValue(name: string, [key, value]: readonly [string, string], { leaf, places }: Binding): string {
  // Shapes that all pages share keep their names.
  const anchor = (id: string): string => (leaf.ids.has(id) ? (places.anchorOf(leaf.path, id) ?? id) : id)
  if (lists.test(key)) return value.split(' ').map(anchor).join(' ')
  if (name === 'use' && key.endsWith('href')) return `#${anchor(value.slice(1))}`
  if (key === 'src') return pathFrom(leaf.path, value)?.path ?? ''
  return value.replace(/url\(#([^)]+)\)/g, (_, id: string) => `url(#${anchor(id)})`)
}

/** A link within the document; of one to another address the words stay, and the address behind them. */
function boundLink(tag: Tag, binding: Binding): string {
  const href = tag.attributes.get('href') ?? null
  const attributes = boundAttributes(tag, binding)
  attributes.delete('href')
  const isOutward = href !== null && /^([a-z][a-z\d+.-]*:|\/\/)/i.test(href)
  binding.after.push(isOutward ? `<span class="address"> (${escapeWords(href.replace(/^mailto:/i, ''))})</span>` : '')
  const goal = href === null || isOutward ? null : goalOf(href, binding)
  return startTag(tag, goal === null ? attributes : attributes.set('href', `#${goal}`))
}

function goalOf(href: string, { leaf, places }: Binding): string | null {
  const goal = pathFrom(leaf.path, href)
  return goal === null ? null : places.anchorOf(goal.path, goal.id)
}

/** An address on a page as a path within the record and an anchor, both decoded; null for one that says nothing. */
function pathFrom(page: string, address: string): { readonly path: string; readonly id: string } | null {
  const from = page.split('/').map(encodeURIComponent).join('/')
  try {
    const url = new URL(address, `http://record.invalid/${from}`)
    return { path: decodeURIComponent(url.pathname.slice(1)), id: decodeURIComponent(url.hash.slice(1)) }
  } catch {
    return null
  }
}
