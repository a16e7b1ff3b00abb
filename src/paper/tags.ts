/** A start or end tag of HTML that the site printed. */
export interface Tag {
  readonly name: string
  readonly isEnd: boolean
  /** In the order written, decoded; null where an attribute has no value. */
  readonly attributes: ReadonlyMap<string, string | null>
  /** `<path/>` of a drawing has no end tag. */
  readonly isAlone: boolean
}

// The site escapes `<` in words and `"` in attributes: what looks like a tag is one.
const tags = /<(\/?)([a-zA-Z][\w:-]*)((?:"[^"]*"|[^">])*)>/g
const attribute = /([^\s"<>/=]+)(?:="([^"]*)")?/g

/** Writes every tag anew; null leaves it as it is, an empty text takes it out. Words between tags stay. */
export function rewriteTags(html: string, change: (tag: Tag) => string | null): string {
  return html.replace(tags, (written: string, slash: string, name: string, rest: string) => {
    const tag = { name, isEnd: slash !== '', isAlone: rest.endsWith('/'), attributes: attributesOf(rest) }
    return change(tag) ?? written
  })
}

function attributesOf(text: string): ReadonlyMap<string, string | null> {
  if (text === '') return none
  return new Map(
    [...text.matchAll(attribute)].map(([, name = '', value]) => [name, value === undefined ? null : readWords(value)]),
  )
}

const none: ReadonlyMap<string, string | null> = new Map()

/** A start tag like another with these attributes. */
export function startTag(
  { name, isAlone }: Pick<Tag, 'name' | 'isAlone'>,
  attributes: Iterable<readonly [string, string | null]>,
): string {
  const written = [...attributes].map(([key, value]) =>
    value === null ? ` ${key}` : ` ${key}="${escapeWords(value)}"`,
  )
  return `<${name}${written.join('')}${isAlone ? '/' : ''}>`
}

export const escapeWords = (words: string): string => words.replace(/[&<>"']/g, found => `&#${found.charCodeAt(0)};`)

const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }

/** Words of HTML as they are read. */
export function readWords(text: string): string {
  if (!text.includes('&')) return text
  return text.replace(/&(?:#x([\da-f]+)|#(\d+)|(amp|lt|gt|quot|apos));/gi, (_, hex, decimal, name) =>
    name === undefined
      ? String.fromCodePoint(hex === undefined ? Number(decimal) : Number.parseInt(hex, 16))
      : (named[name.toLowerCase()] ?? ''),
  )
}

/** The words of a piece of HTML, still escaped. */
export const wordsOf = (html: string): string => html.replace(tags, '').replace(/\s+/g, ' ').trim()
