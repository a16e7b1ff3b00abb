import sharp from 'sharp'
import { beforeAll, describe, expect, test } from 'vitest'
import type { Built } from '../../src/build.ts'
import { privateEvidence } from '../../src/editions/private-photos.ts'
import { takenOut } from '../../src/editions/withheld-names.ts'
import { filesWith, type PublishedText, publishedTexts, readBuild } from './published-bytes.ts'

/** Each picture has a colour and a day of its own. */
async function picture(level: number, day: string): Promise<Uint8Array> {
  return sharp({ create: { width: 640, height: 320, channels: 3, background: { r: level, g: 80, b: 40 } } })
    .withExif({ IFD0: { Artist: 'Zqartist' }, IFD2: { DateTimeOriginal: `2026:03:${day} 14:02:11` } })
    .jpeg()
    .toBuffer()
}

const note = `---
title: Pictures
date: 2026-03-07
parts:
  fuel-tank: { name: Tank, photos: [ photos/open.jpg, photos/part.jpg ] }
---
![Zqaltopen tank](../photos/open.jpg "Zqcaptionopen")

The strap :mark[1]{at="31.71%,12%"} is near. :private[The lamp :mark[2]{at="41.72%,13%"} is his]{as=people}.

# Gate

:::private{as=place}
![Zqaltgate gate](../photos/gate.jpg "Zqcaptiongate")

Its latch :mark[3]{at="51.73%,14%"}.
:::

The hinge :mark[4]{at="61.74%,15%"} is loose, as is the latch :mark[3].
`

const files = async (): Promise<Record<string, string | Uint8Array>> => ({
  'content/build.md':
    '---\ntitle: Build\ncurrency: GBP\neditions: { public: { withhold: [cost, source, people, place, identity] }, inspector: { withhold: [cost] }, place: { withhold: [place] } }\n---\nWords.\n',
  'content/inspection.yaml':
    'points:\n  gate: { ask: Is it shut, evidence: [ "photo:gate.jpg" ] }\n  tank: { ask: Is it in, evidence: [ "photo:open.jpg" ] }\n',
  'content/sessions/a.md': note,
  'content/photos/open.jpg': await picture(200, '01'),
  'content/photos/gate.jpg': await picture(90, '02'),
  'content/photos/part.jpg': await picture(30, '03'),
  'content/photos/unnamed.jpg': await picture(10, '04'),
})

let built: Built
const texts = new Map<string, readonly PublishedText[]>()
const holds = (edition: string, word: string): boolean => filesWith(texts.get(edition) ?? [], word).length > 0
const page = (edition: string, path: string): string => texts.get(edition)?.find(one => one.path === path)?.text ?? ''

beforeAll(async () => {
  built = await readBuild(await files())
  for (const edition of ['full', 'inspector', 'place', 'public'])
    texts.set(edition, await publishedTexts(built, edition))
}, 120_000)

describe('marked places in an edition', () => {
  test.each([
    ['full', ['31.71', '41.72', '51.73', '61.74']],
    ['inspector', ['31.71', '41.72', '51.73', '61.74']],
    ['place', ['31.71', '41.72']],
    ['public', ['31.71']],
  ])('%s holds the points %j', (edition, points) => {
    expect(['31.71', '41.72', '51.73', '61.74'].filter(point => holds(edition, point))).toEqual(points)
  })

  test('a number whose picture is withheld is withheld with it, and its words stay', () => {
    expect(page('public', 'sessions/a/index.html')).toContain(
      'The hinge [withheld] is loose, as is the latch [withheld].',
    )
  })

  test('anchors count only what is shown', () => {
    const ids = (edition: string) =>
      [...page(edition, 'sessions/a/index.html').matchAll(/ id="(p[tm]-[^"]+)"/g)].map(([, id]) => id)
    expect(ids('public')).toEqual(['pt-1-1', 'pm-1-1'])
    expect(ids('full')).toEqual(['pt-1-1', 'pt-1-2', 'pm-1-1', 'pm-1-2', 'pt-2-3', 'pt-2-4', 'pm-2-3', 'pm-2-4'])
  })

  test('what is taken out is told to the builder with its place', () => {
    const marks = takenOut(built.stated, 'public').filter(
      ({ place }) => place.file.endsWith('a.md') && place.line === 19,
    )
    expect(marks.map(({ place: { line, column } }) => `${line}:${column}`)).toEqual(['19:11', '19:63'])
  })
})

describe('pictures in an edition', () => {
  test.each([
    ['full', ['gate', 'open', 'part']],
    ['inspector', ['gate', 'open', 'part']],
    ['place', ['open', 'part']],
    ['public', ['open', 'part']],
  ])('%s publishes %j and none that no page shows', (edition, names) => {
    const found = (texts.get(edition) ?? []).flatMap(
      ({ path }) => /^photos\/([a-z]+)-\d+-[0-9a-f]{8}\.(?:jpg|webp)$/.exec(path)?.[1] ?? [],
    )
    expect([...new Set(found)].toSorted()).toEqual(names)
  })

  test.each(['Zqaltgate', 'Zqcaptiongate', 'gate.jpg'])(
    '%s stands in the full edition and not where place is withheld',
    word => {
      expect(['full', 'place', 'public'].map(edition => holds(edition, word))).toEqual([true, false, false])
    },
  )

  test.each(['Zqartist', '14:02'])('%s of the metadata stands nowhere', word => {
    expect(['full', 'inspector', 'place', 'public'].filter(edition => holds(edition, word))).toEqual([])
  })

  test('the day on which one was taken is told where neither people, place nor identity are withheld', () => {
    const told = ['full', 'inspector', 'place', 'public'].filter(edition =>
      page(edition, 'photos/index.html').includes('Taken 1 March 2026.'),
    )
    expect(told).toEqual(['full', 'inspector'])
  })

  test('a private picture that is evidence too is told with the editions that lack it', () => {
    expect(
      privateEvidence(built.stated.notes, built.stated.editions).map(
        ({ rule, file, line, column, message }) => `${file}:${line}:${column} ${rule} ${message}`,
      ),
    ).toEqual([
      'content/inspection.yaml:2:41 private-evidence Unexpected picture `gate.jpg` as evidence, which stands only inside private marks, expected one that stands outside them: each of the editions `public`, `place` shows neither it nor its name.',
    ])
  })
})

describe('the page of all pictures', () => {
  test('leads from each picture to its words, and holds what only a part names', () => {
    const html = page('full', 'photos/index.html')
    const links = [...html.matchAll(/<figcaption>(.*?)<\/figcaption>/gs)].map(([, caption]) =>
      caption?.replace(/\s+/g, ' ').trim(),
    )
    expect(links).toEqual([
      'Zqcaptionopen Taken 1 March 2026. <a href="../sessions/a/index.html#b-7">In session 1</a>',
      'Zqcaptiongate Taken 2 March 2026. <a href="../sessions/a/index.html#b-13">In session 1</a>',
      'Tank, photograph Taken 3 March 2026. <a href="../sessions/a/index.html">In session 1</a>',
    ])
    expect(page('full', 'sessions/a/index.html')).toContain(' id="b-7"')
  })

  test('a part shows its picture small in the bill of materials', () => {
    expect(page('full', 'parts/index.html')).toMatch(
      /<span class="thumb"><picture>.*?alt="" width="640" height="320" loading="lazy" decoding="async"><\/picture><a href="fuel-tank\/index.html#photos">2 pictures<\/a><\/span>/s,
    )
  })
})
