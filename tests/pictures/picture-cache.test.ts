import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, utimesSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { openPictureCache } from '../../src/pictures/picture-cache.ts'
import { type PreparedPhoto, preparePhotos } from '../../src/pictures/prepare-photos.ts'
import { folderWith, halves } from './sample-pictures.ts'

const file = 'content/photos/p.jpg'
const build = async (): Promise<string> => folderWith({ [file]: await halves(64, 48).jpeg().toBuffer() })
const cacheOf = (folder: string): string => join(folder, '.oddleg/pictures')

async function prepare(folder: string): Promise<PreparedPhoto | undefined> {
  const { photos, troubles } = await preparePhotos(folder, [file], { tellsDates: true })
  expect(troubles).toEqual([])
  return photos[0]
}

/** Says that an entry was asked for: reading one sets its time. */
function makeOld(path: string, days: number): void {
  const then = new Date(Date.now() - days * 86_400_000)
  utimesSync(path, then, then)
}

describe('the cache of pictures', () => {
  test('holds one file a picture, beside the published folder, and keeps itself out of Git', async () => {
    const folder = await build()
    await prepare(folder)
    expect(readdirSync(cacheOf(folder))).toEqual([expect.stringMatching(/^[0-9a-f]{64}$/)])
    expect(readFileSync(join(folder, '.oddleg/.gitignore'), 'utf8')).toBe('*\n')
  })

  test('gives back what was made, without making it again', async () => {
    const folder = await build()
    const cold = await prepare(folder)
    const [name = ''] = readdirSync(cacheOf(folder))
    // An entry that holds something else shows that it, and not the picture, is read.
    const cache = openPictureCache(folder)
    const made = cache.read(name)
    cache.write(name, { taken: '2026-03-07', sizes: made?.sizes ?? [] })
    expect(await prepare(folder)).toEqual({ ...cold, taken: '2026-03-07' })
  })

  test('warm is cold to the byte', async () => {
    const folder = await build()
    const cold = await prepare(folder)
    const warm = await prepare(folder)
    expect(warm?.sizes.map(({ content }) => Buffer.from(content))).toEqual(
      cold?.sizes.map(({ content }) => Buffer.from(content)),
    )
    expect(warm?.address).toBe(cold?.address)
  })

  test('does not know a picture whose bytes have changed', async () => {
    const folder = await build()
    await prepare(folder)
    writeFileSync(join(folder, file), await halves(65, 48).jpeg().toBuffer())
    expect((await prepare(folder))?.width).toBe(65)
    expect(readdirSync(cacheOf(folder))).toHaveLength(2)
  })

  const damages: [what: string, damaged: (entry: Buffer) => Buffer][] = [
    ['cut short', entry => entry.subarray(0, entry.length - 5)],
    ['empty', () => Buffer.alloc(0)],
    ['words', () => Buffer.from('nothing of the kind')],
    [
      'one byte of a picture changed',
      entry => Buffer.concat([entry.subarray(0, -9), Buffer.from([(entry.at(-9) ?? 0) ^ 1]), entry.subarray(-8)]),
    ],
    ['a head that is no JSON', entry => Buffer.concat([entry.subarray(0, 65), Buffer.from('}'), entry.subarray(66)])],
  ]
  test.each(damages)('makes the picture anew where its entry is damaged: %s', async (_, damaged) => {
    const folder = await build()
    const cold = await prepare(folder)
    const path = join(cacheOf(folder), readdirSync(cacheOf(folder))[0] ?? '')
    const whole = readFileSync(path)
    writeFileSync(path, damaged(whole))
    expect(await prepare(folder)).toEqual(cold)
    expect(readFileSync(path)).toEqual(whole)
  })

  test('that cannot be written is done without', async () => {
    const folder = await build()
    writeFileSync(join(folder, '.oddleg'), 'a file where the folder would be')
    expect((await prepare(folder))?.width).toBe(64)
    expect(readFileSync(join(folder, '.oddleg'), 'utf8')).toBe('a file where the folder would be')
  })

  test('loses what a stopped run left half-written an hour ago, and what nobody asked for in 90 days, and nothing else', async () => {
    const folder = await build()
    mkdirSync(cacheOf(folder), { recursive: true })
    const ages: [name: string, days: number][] = [
      ['a.new-1', 1],
      ['b.new-2', 0],
      ['unused', 91],
      ['used', 89],
    ]
    for (const [name, days] of ages) {
      writeFileSync(join(cacheOf(folder), name), '')
      makeOld(join(cacheOf(folder), name), days)
    }
    openPictureCache(folder)
    expect(readdirSync(cacheOf(folder)).toSorted()).toEqual(['b.new-2', 'used'])
  })

  test('counts an entry that is read as asked for', async () => {
    const folder = await build()
    await prepare(folder)
    const path = join(cacheOf(folder), readdirSync(cacheOf(folder))[0] ?? '')
    makeOld(path, 89)
    await prepare(folder)
    expect(Date.now() - statSync(path).mtimeMs).toBeLessThan(86_400_000) // ms a day
  })

  test('is not made for a build without pictures', async () => {
    const folder = folderWith({ 'content/build.md': '' })
    await preparePhotos(folder, [], { tellsDates: true })
    expect(existsSync(join(folder, '.oddleg'))).toBe(false)
  })
})
