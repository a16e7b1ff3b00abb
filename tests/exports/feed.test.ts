import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseFeed } from '@rowanmanning/feed-parser'
import { RelaxNGValidator, XmlDocument } from 'libxml2-wasm'
import { describe, expect, test } from 'vitest'
import { publicationOf, readBuildFolder } from '../../src/build.ts'
import { atomFeed } from '../../src/exports/atom-feed.ts'
import { nameUuid } from '../../src/exports/name-uuid.ts'
import { root, scratch, writeFiles } from '../commands/run-oddleg.ts'

// RFC 4287 as a RELAX NG schema by libxml2, and a feed reader that is not ours.

const base = 'https://example.org/sandpiper/'

const read = new Map<string, Promise<Awaited<ReturnType<typeof readBuildFolder>>>>()

/** Each folder is read once. */
async function recordOf(folder: string, edition: string) {
  const reading = read.get(folder) ?? readBuildFolder(folder, { today: '2026-12-31' })
  read.set(folder, reading)
  const built = await reading
  if ('trouble' in built) throw new Error(built.trouble)
  return publicationOf(built, edition).record
}

async function feedOf(notes: Readonly<Record<string, string>>, address: string | null = null, edition = 'full') {
  const folder = scratch('feed')
  writeFiles(folder, Object.fromEntries(Object.entries(notes).map(([path, text]) => [`content/${path}`, text])))
  return atomFeed(await recordOf(folder, edition), address)
}

function faultsOf(xml: string): string[] {
  const document = XmlDocument.fromString(xml)
  const schema = XmlDocument.fromString(readFileSync(join(import.meta.dirname, 'atom.rng'), 'utf8'))
  const validator = RelaxNGValidator.fromDoc(schema)
  try {
    validator.validate(document)
    return []
  } catch (cause) {
    return [String(cause)]
  } finally {
    validator.dispose()
    schema.dispose()
    document.dispose()
  }
}

const build =
  '---\ntitle: "Tub & <Co> ]]>"\nsummary: "A tub of :private[Bob Smith]{as=people}"\neditions: { others: { withhold: [people, cost] } }\n---\nWords.\n'
const first =
  '---\ntitle: "First \\"day\\" & <more>"\ndate: 2026-03-07\nparts: { seat: { cost: £40 } }\n---\n## A heading\n\n:private[Bob Smith]{as=people} held the [](part:seat), 860 mm & < wide. It was £45 well spent.\n\n| Measurement | Value |\n|---|---|\n| seat/length | 3 m |\n'
const second = '---\ntitle: Second day\ndate: 2026-03-14\n---\nIt is in.\n'
const notes = { 'build.md': build, 'sessions/2026-03-07-first.md': first, 'sessions/2026-03-14 second #2.md': second }

describe('feed.xml', () => {
  test.each([
    ['the demo, where it has an address', 'public', base],
    ['the demo from a disk', 'public', null],
    ['the demo in full', 'full', base],
  ])(
    'is valid and whole: %s',
    async (_what, edition, address) => {
      const record = await recordOf(root, edition)
      const xml = atomFeed(record, address) ?? ''
      expect(faultsOf(xml)).toEqual([])
      const feed = parseFeed(xml)
      expect(feed.meta).toEqual({ type: 'atom', version: '1.0' })
      expect(feed.items.map(({ id }) => id)).toHaveLength(record.sessions.length)
      expect(new Set([feed.self ?? 'none', ...feed.items.map(({ id }) => id)]).size).toBe(record.sessions.length + 1)
      expect(feed.items.map(({ updated }) => updated?.toISOString().slice(0, 10))).toEqual(
        record.sessions.map(({ date }) => date).toReversed(),
      )
    },
    60_000,
  )

  test('says what each session is, who keeps the record, and where to read on', async () => {
    const xml = (await feedOf(notes, base)) ?? ''
    expect(faultsOf(xml)).toEqual([])
    const { title, description, authors, updated, self, url, items } = parseFeed(xml)
    expect({
      title,
      description,
      authors: authors.map(({ name }) => name),
      updated: updated?.toISOString(),
      self,
      url,
    }).toEqual({
      title: 'Tub & <Co> ]]>, as built: sessions',
      description: 'A tub of Bob Smith',
      authors: ['The builder of Tub & <Co> ]]>'],
      updated: '2026-03-14T00:00:00.000Z',
      self: `${base}feed.xml`,
      url: `${base}index.html`,
    })
    expect(items.map(item => [item.title, item.url, item.description, item.published?.toISOString()])).toEqual([
      [
        '2. Second day',
        `${base}sessions/2026-03-14%20second%20%232/index.html`,
        'It is in.',
        '2026-03-14T00:00:00.000Z',
      ],
      [
        '1. First "day" & <more>',
        `${base}sessions/2026-03-07-first/index.html`,
        'Bob Smith held the seat, 860 mm & < wide. It was £45 well spent.',
        '2026-03-07T00:00:00.000Z',
      ],
    ])
  })

  test('holds nothing that its edition withholds', async () => {
    const xml = (await feedOf(notes, base, 'others')) ?? ''
    expect([xml.includes('Bob'), xml.includes('45')]).toEqual([false, false])
    const { description, items } = parseFeed(xml)
    expect([description, items[1]?.description]).toEqual([
      'A tub of [withheld]',
      '[withheld] held the seat, 860 mm & < wide. It was [withheld] well spent.',
    ])
  })

  test('leads from its own place where no address is known, and names everything as it does where one is', async () => {
    const [here, there] = [(await feedOf(notes)) ?? '', (await feedOf(notes, base)) ?? '']
    const ids = (xml: string) => [...xml.matchAll(/<id>(.*?)<\/id>/g)].map(([, id]) => id)
    expect(ids(here)).toEqual(ids(there))
    expect([...here.matchAll(/href="(.*?)"/g)].map(([, href]) => href)).toEqual([
      'index.html',
      'sessions/2026-03-14%20second%20%232/index.html',
      'sessions/2026-03-07-first/index.html',
    ])
    expect(faultsOf(here)).toEqual([])
  })

  test('is the same to the byte each time', async () => {
    expect(await feedOf(notes, base)).toBe(await feedOf(notes, base))
  })

  test('is not there where no session has a date', async () => {
    expect(await feedOf({ 'build.md': build, 'sessions/first.md': '---\ntitle: One\n---\nx\n' })).toBeNull()
    expect(await feedOf({ 'build.md': build })).toBeNull()
  })

  test('is refused by the schema where a time, an author or an identifier is wanting', async () => {
    const xml = (await feedOf(notes, base)) ?? ''
    const spoilt = [
      xml.replace(/<updated>.*?<\/updated>/, ''),
      xml.replace('T00:00:00Z', ''),
      xml.replace(/<author>.*?<\/author>/, ''),
      xml.replace(/<id>.*?<\/id>/, '<id>here</id>'),
      xml.replace(/<link rel="alternate"[^>]*>\n {4}<summary/, '<summary'),
    ]
    expect(spoilt.map(one => faultsOf(one).length)).toEqual([1, 1, 1, 1, 1])
  })
})

// RFC 9562, appendix A.4: version 5 of `www.example.com` in the namespace of DNS names.
test('a name gives the UUID that RFC 9562 gives for it', () => {
  expect(nameUuid('6ba7b810-9dad-11d1-80b4-00c04fd430c8', 'www.example.com')).toBe(
    '2ed6657d-e927-568b-95e1-2665a8aea6a2',
  )
})
