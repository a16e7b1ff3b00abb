import ExifReader from 'exifreader'
import { beforeAll, describe, expect, test } from 'vitest'
import type { Built } from '../../src/build.ts'
import { withheldNames } from '../../src/editions/withheld-names.ts'
import { publishFiles } from '../../src/publish.ts'
import type { Canary } from './canaries.ts'
import { canaryBuild, editionLists, inPhoto, photoNames } from './canary-build.ts'
import { filesWith, type PublishedText, publishedTexts, readBuild } from './published-bytes.ts'

type EditionName = keyof typeof editionLists
const editions = Object.keys(editionLists) as EditionName[]

let built: Built
let canaries: readonly Canary[]
const texts = new Map<string, readonly PublishedText[]>()
const textsOf = (edition: string): readonly PublishedText[] => texts.get(edition) ?? []

beforeAll(async () => {
  const made = await canaryBuild()
  canaries = made.canaries
  built = await readBuild(made.files)
  for (const edition of [...editions, 'full']) texts.set(edition, await publishedTexts(built, edition))
}, 240_000)

const isHidden = ({ as }: Canary, edition: EditionName): boolean =>
  as.some(kind => kind === 'broken' || (editionLists[edition] as readonly string[]).includes(kind))

describe('every byte of every edition', () => {
  test('no withheld word of the test build stands unmarked', () => {
    expect(withheldNames(built.stated, editions)).toEqual([])
  })

  test('the full edition holds every canary', () => {
    const lost = canaries.filter(({ word }) => filesWith(textsOf('full'), word).length === 0)
    expect(lost.map(({ where }) => where)).toEqual([])
  })

  test.each(editions)('holds nothing that the edition %s withholds', edition => {
    const found = canaries
      .filter(canary => isHidden(canary, edition))
      .flatMap(({ word, where }) => filesWith(textsOf(edition), word).map(file => `${where}: ${word} in ${file}`))
    expect(found).toEqual([])
  })

  test.each(editions)('holds everything that the edition %s does not withhold', edition => {
    const lost = canaries
      .filter(canary => !isHidden(canary, edition))
      .filter(({ word }) => filesWith(textsOf(edition), word).length === 0)
    expect(lost.map(({ word, where }) => `${where}: ${word}`)).toEqual([])
  })

  test.each(editions)('holds no sum of money in the edition %s where cost is withheld', edition => {
    const { donors, parts, spend, total, onVehicle, bySystem, bySession, lines } = built.record.ledger
    const sums = [
      donors,
      parts,
      spend,
      total,
      onVehicle,
      ...Object.values(bySystem),
      ...Object.values(bySession),
      ...lines.map(({ amount }) => amount),
    ]
    const forms = new Set(sums.map(sum => sum.replace(/\.\d+$/, '')).filter(sum => sum.length > 3))
    const grouped = [...forms].map(sum => Number(sum).toLocaleString('en-GB'))
    const found = [...forms, ...grouped].filter(sum => filesWith(textsOf(edition), sum).length > 0)
    const withholdsCost = (editionLists[edition] as readonly string[]).includes('cost')
    if (withholdsCost) expect(found).toEqual([])
    else expect(found.length).toBeGreaterThan(0)
  })

  test('publishes only photographs that the edition may show', () => {
    const published = (edition: string): string[] =>
      photoNames.filter(name => textsOf(edition).some(({ path }) => path.startsWith(`photos/${name}-`)))
    expect(Object.fromEntries([...editions, 'full'].map(edition => [edition, published(edition)]))).toEqual({
      public: ['shown', 'part'],
      buyer: ['shown', 'part'],
      inspector: ['shown', 'part', 'secret', 'linked'],
      sources: ['shown', 'part', 'secret', 'linked'],
      people: ['shown', 'part', 'receipt', 'secret'],
      place: ['shown', 'part', 'linked'],
      identity: ['shown', 'part', 'receipt', 'secret', 'linked'],
      club: ['shown', 'part', 'receipt', 'secret', 'linked'],
      full: ['shown', 'part', 'receipt', 'secret', 'linked', 'alone'],
    })
  })

  test('no photograph keeps anything of its metadata, in the full edition neither', async () => {
    const files = await publishFiles(built, { edition: 'full', serve: false })
    const photos = files.filter(({ path }) => /^photos\/.*\.(?:jpg|webp)$/.test(path))
    expect(photos).toHaveLength(2 * photoNames.length)
    for (const { content } of photos) {
      if (typeof content === 'string') throw new Error('Unexpected text, expected a photograph')
      const { exif, iptc, xmp, gps } = await ExifReader.load(Buffer.from(content), { expanded: true })
      expect({ exif, iptc, xmp, gps }).toEqual({})
    }
    expect(filesWith(textsOf('full'), inPhoto)).toEqual([])
  })

  test('the photographs of the test build hold the metadata that must go', async () => {
    const { files } = await canaryBuild()
    const { exif, gps } = await ExifReader.load(Buffer.from(files['content/photos/shown.jpg'] ?? ''), {
      expanded: true,
    })
    expect([exif?.Artist?.description, gps?.Latitude]).toEqual([`${inPhoto} artist`, 51.5])
  })
})
