import { relativeHref } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { Sheet } from './site-data.ts'

/** The page's own address, where the record's is known, and the feed of the sessions, where one is published. */
export function outwardLinks({ record, extras }: Atlas, address: string): Pick<Sheet, 'canonical' | 'feed'> {
  const base = extras.base ?? null
  const isFed = record.sessions.some(({ date }) => date !== '')
  const title = `Sessions of ${record.build.title.text}`
  return {
    ...(base === null ? {} : { canonical: `${base}${relativeHref('index.html', address)}` }),
    ...(isFed ? { feed: { href: relativeHref(address, 'feed.xml'), title } } : {}),
  }
}
