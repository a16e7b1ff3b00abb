import { beforeAll, describe, expect, test } from 'vitest'
import { filesWith, type PublishedText, publishedTexts, readBuild } from '../editions/published-bytes.ts'

const marked = ':private[Zqword]{as=source}'
const note = `---
title: Crimped
date: 2026-03-07
parts:
  box: { kind: fuse-box, ways: 4, terminal: "6.3 mm blade, ${marked} pattern" }
  plug: { kind: connector, ways: 2, terminal: "2.8 mm tab by ${marked}" }
circuits:
  rear:
    feeds: a lamp
    use: lighting
    fuse: { box: box, way: 1, rating: 5 A }
    cable: { area: 1 mm², colour: red }
    length: 2 m
    return: { area: 1 mm², length: 1 m }
    earth: tail
    terminals: { to: "4 mm bullet, ${marked} crimp" }
---
Crimped all of it.

:::connector{#plug}

| Pin | Wire | Circuit | Terminal |
|---|---|---|---|
| 1 | 1 mm² red | rear | |
| 2 | 1 mm² blue | | 4.8 mm tab of ${marked} |

:::
`

let full: PublishedText[]
let buyer: PublishedText[]
beforeAll(async () => {
  const built = await readBuild({
    'content/build.md': `---\ntitle: Test\ncurrency: GBP\nelectrical: { nominal: 12 V }\nearth-points: { tail: { name: Tail, terminal: "M6 ring, ${marked} plated" } }\neditions: { buyer: { withhold: [source] } }\n---\nWords.\n`,
    'content/sessions/2026-03-07-crimped.md': note,
  })
  full = await publishedTexts(built, 'full')
  buyer = await publishedTexts(built, 'buyer')
}, 60_000)

const sheetOf = (texts: readonly PublishedText[]): string =>
  (texts.find(({ path }) => path === 'wiring/cut-list/index.html')?.text ?? '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/[\s\u00a0\u202f]+/g, ' ')

describe('a name within the words for a terminal', () => {
  test('stands in the full edition, on the cut list too', () => {
    expect(sheetOf(full)).toMatch(/6\.3 mm blade, Zqword pattern/)
  })

  test('stands in no file of an edition that withholds it', () => {
    expect(filesWith(buyer, 'zqword')).toEqual([])
  })

  test.each([
    '6.3 mm blade, [withheld] pattern',
    '4 mm bullet, [withheld] crimp',
    'M6 ring, [withheld] plated',
    '2.8 mm tab by [withheld]',
    '4.8 mm tab of [withheld]',
  ])('leaves the rest of the terminal on the cut list: %s', words => {
    expect(sheetOf(buyer)).toContain(words)
  })
})
