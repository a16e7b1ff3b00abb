import type { Root } from 'mdast'
import type { PublishableRecord } from '../editions/publishable.ts'
import type { Session } from '../record/record.ts'
import { linkedName } from '../search/linked-thing.ts'
import { noteSentences } from '../search/note-sentences.ts'
import { noteUrl } from './addresses.ts'
import { escapeXml } from './escape-xml.ts'
import { nameUuid } from './name-uuid.ts'

export const feedName = 'feed.xml'

const records = '0d9c1b1e-6f0a-4f0e-9d57-3b1f6a2c7e41' // namespace of our names, drawn once
const summaryLength = 280 // characters after which no further sentence begins

/**
 * The sessions as an Atom feed (RFC 4287), newest first; null where no session has a date. Without a base its links are
 * relative to the feed's own address; its identifiers are the same with and without one, so that a record that moves stays the same.
 */
export function atomFeed(record: PublishableRecord, base: string | null): string | null {
  const dated = record.sessions.filter(({ date }) => date !== '').toReversed()
  const last = dated[0]
  if (last === undefined) return null
  const title = record.build.title.text
  const lines = [
    '<?xml version="1.0" encoding="utf-8"?>',
    '<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en-GB">',
    `  <id>${idOf(record, '')}</id>`,
    `  <title>${escapeXml(`${title}, as built: sessions`)}</title>`,
    ...(record.build.summary === null ? [] : [`  <subtitle>${escapeXml(record.build.summary.text)}</subtitle>`]),
    `  <updated>${timeOf(last)}</updated>`,
    `  <author><name>${escapeXml(`The builder of ${title}`)}</name></author>`,
    '  <generator>oddleg</generator>',
    linkLine('alternate', 'index.html', base),
    ...(base === null ? [] : [linkLine('self', feedName, base)]),
    ...dated.flatMap(session => entryLines(record, session, base)),
    '</feed>',
  ]
  return `${lines.join('\n')}\n`
}

function entryLines(record: PublishableRecord, session: Session, base: string | null): string[] {
  const summary = summaryOf(record, session.body)
  return [
    '  <entry>',
    `    <id>${idOf(record, session.id)}</id>`,
    `    <title>${escapeXml(`${session.number}. ${session.title.text}`)}</title>`,
    `    <published>${timeOf(session)}</published>`,
    `    <updated>${timeOf(session)}</updated>`,
    `  ${linkLine('alternate', noteUrl(session.id), base)}`,
    ...(summary === '' ? [] : [`    <summary>${escapeXml(summary)}</summary>`]),
    '  </entry>',
  ]
}

function linkLine(rel: 'alternate' | 'self', address: string, base: string | null): string {
  const type = rel === 'self' ? 'application/atom+xml' : 'text/html'
  return `  <link rel="${rel}" type="${type}" href="${escapeXml(`${base ?? ''}${address}`)}"/>`
}

/** Of the edition, the build's title and the session's name as the edition shows them. */
function idOf({ edition, build }: PublishableRecord, session: string): string {
  return `urn:uuid:${nameUuid(records, JSON.stringify([edition, build.title.text, session]))}`
}

/** A note has a day and no hour: its first moment stands for it, so that the clock has no part in it. */
const timeOf = ({ date }: Session): string => `${date}T00:00:00Z`

/** The first sentences of a note's own paragraphs, whole. */
function summaryOf(record: PublishableRecord, body: Root): string {
  const paragraphs: Root = { type: 'root', children: body.children.filter(({ type }) => type === 'paragraph') }
  let summary = ''
  for (const { text } of noteSentences(paragraphs, (scheme, path) => linkedName(record, scheme, path))) {
    if (summary.length > summaryLength) break
    summary += `${summary === '' ? '' : ' '}${text.replace(/\s+/g, ' ')}`
  }
  return summary
}
