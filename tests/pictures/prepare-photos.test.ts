import ExifReader from 'exifreader'
import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { type PreparedPhoto, preparePhotos } from '../../src/pictures/prepare-photos.ts'
import { folderWith, halves, heic, noise, orange } from './sample-pictures.ts'

const secret = 'Zqmetadata'

/** What cameras and phones write, of which nothing may come out. */
const metadata = {
  IFD0: { Artist: secret, ImageDescription: secret, Make: secret, Copyright: secret },
  IFD2: { DateTimeOriginal: '2026:03:07 14:02:11', BodySerialNumber: secret },
  IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '0/1 7/1 0/1' },
}

const prepare = async (name: string, bytes: Uint8Array, tellsDates = true): Promise<PreparedPhoto> => {
  const file = `content/photos/${name}`
  const { photos, troubles } = await preparePhotos(folderWith({ [file]: bytes }), [file], { tellsDates })
  expect(troubles).toEqual([])
  const [photo] = photos
  if (photo === undefined) throw new Error('Unexpected picture left out')
  return photo
}

const sizesOf = ({ sizes }: PreparedPhoto): string[] =>
  sizes.map(({ format, width, height }) => `${format} ${width}x${height}`)

describe('sizes and formats', () => {
  const cases: [what: string, bytes: () => Promise<Uint8Array>, sizes: string[]][] = [
    [
      'a large photograph',
      () => halves(2400, 1800).jpeg().toBuffer(),
      ['webp 480x360', 'jpeg 480x360', 'webp 960x720', 'jpeg 960x720', 'webp 1600x1200', 'jpeg 1600x1200'],
    ],
    ['one that stands upright', () => halves(1000, 3200).jpeg().toBuffer(), ['webp 500x1600', 'jpeg 500x1600']],
    [
      'one hardly wider than a size',
      () => halves(1000, 500).jpeg().toBuffer(),
      ['webp 480x240', 'jpeg 480x240', 'webp 1000x500', 'jpeg 1000x500'],
    ],
    ['a small one, which is not made larger', () => halves(64, 48).jpeg().toBuffer(), ['webp 64x48', 'jpeg 64x48']],
    [
      'a drawing in PNG, which stays one',
      () => halves(600, 300).png().toBuffer(),
      ['webp 480x240', 'png 480x240', 'webp 600x300', 'png 600x300'],
    ],
    ['a photograph in PNG', () => noise(200, 100).png().toBuffer(), ['webp 200x100', 'jpeg 200x100']],
    ['WebP', () => halves(64, 48).webp().toBuffer(), ['webp 64x48', 'jpeg 64x48']],
    ['AVIF', () => halves(64, 48).avif({ effort: 0 }).toBuffer(), ['webp 64x48', 'jpeg 64x48']],
    ['TIFF', () => halves(64, 48).tiff().toBuffer(), ['webp 64x48', 'jpeg 64x48']],
    ['HEIC, by its reader', async () => heic, ['webp 64x48', 'jpeg 64x48']],
  ]
  test.each(cases)('%s', async (_, bytes, sizes) => {
    expect(sizesOf(await prepare('p', await bytes()))).toEqual(sizes)
  })

  test('an SVG is drawn as large as the largest size, in pixels', async () => {
    const photo = await prepare(
      'p.svg',
      Buffer.from(
        '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"><rect width="40" height="20" fill="red"/></svg>',
      ),
    )
    expect(sizesOf(photo)).toEqual([
      'webp 480x240',
      'png 480x240',
      'webp 960x480',
      'png 960x480',
      'webp 1600x800',
      'png 1600x800',
    ])
  })

  test('a drawing without ground is put on white, so that it is readable in the dark', async () => {
    const clear = await sharp({ create: { width: 20, height: 10, channels: 4, background: '#0000' } })
      .png()
      .toBuffer()
    const { sizes } = await prepare('p.png', clear)
    const pixels = await sharp(sizes.at(-1)?.content).raw().toBuffer({ resolveWithObject: true })
    expect([pixels.info.channels, ...pixels.data.subarray(0, 3)]).toEqual([3, 255, 255, 255])
  })

  test('a JPEG in the four colours of print comes out in three, near enough the same', async () => {
    const { sizes } = await prepare('p.jpg', await halves(64, 48).toColourspace('cmyk').jpeg().toBuffer())
    const { data, info } = await sharp(sizes.at(-1)?.content).raw().toBuffer({ resolveWithObject: true })
    expect(info.channels).toBe(3)
    const right = data.subarray(60 * 3)
    const off = [orange.r, orange.g, orange.b].map((level, at) => Math.abs(level - (right[at] ?? 0)))
    expect(Math.max(...off)).toBeLessThan(60) // of 255: ink has fewer colours than a screen
  })

  test('of an animation the first frame is published', async () => {
    const frames = Buffer.concat([Buffer.alloc(30 * 20 * 3, 250), Buffer.alloc(30 * 20 * 3, 10)])
    const gif = await sharp(frames, { raw: { width: 30, height: 40, channels: 3, pageHeight: 20 } })
      .gif({ delay: [100, 100] })
      .toBuffer()
    expect((await sharp(gif).metadata()).pages).toBe(2)
    const { sizes } = await prepare('p.gif', gif)
    const { data, info } = await sharp(sizes.at(-1)?.content).raw().toBuffer({ resolveWithObject: true })
    expect([info.height, data[0]]).toEqual([20, 250])
  })
})

describe('metadata', () => {
  const photographs: [kind: string, bytes: () => Promise<Uint8Array>][] = [
    [
      'JPEG',
      () =>
        halves(600, 300)
          .withExif(metadata)
          .withXmp(`<x:xmpmeta xmlns:x="adobe:ns:meta/">${secret}</x:xmpmeta>`)
          .withIccProfile('p3')
          .jpeg()
          .toBuffer(),
    ],
    ['PNG', () => halves(600, 300).withExif(metadata).png().toBuffer()],
    ['WebP', () => halves(600, 300).withExif(metadata).webp().toBuffer()],
  ]
  test.each(photographs)('of a %s none is left in any size', async (_, bytes) => {
    const original = await bytes()
    expect(Buffer.from(original).includes(secret)).toBe(true)
    for (const { content } of (await prepare('p', original)).sizes) {
      const { exif, iptc, xmp, gps, icc } = await ExifReader.load(Buffer.from(content), { expanded: true })
      expect({ exif, iptc, xmp, gps, icc }).toEqual({})
      expect(Buffer.from(content).includes(secret)).toBe(false)
    }
  })

  test('a picture lying on its side is turned upright, and says so no more', async () => {
    // EXIF orientation 6: the right side of what is stored is the top of what was seen (CIPA DC-008, tag 0112).
    const { sizes } = await prepare('p.jpg', await halves(80, 40).withMetadata({ orientation: 6 }).jpeg().toBuffer())
    const { data, info } = await sharp(sizes.at(-1)?.content).raw().toBuffer({ resolveWithObject: true })
    const top = [...data.subarray(0, 3)]
    expect([info.width, info.height]).toEqual([40, 80])
    expect(top[2]).toBeGreaterThan(top[0] ?? 0) // what was left is above now
    expect((await sharp(sizes.at(-1)?.content).metadata()).orientation).toBeUndefined()
  })

  test('pictures that differ in their metadata only are published under one name, the same to the byte', async () => {
    const one = await prepare('p.jpg', await halves(600, 300).withExif(metadata).jpeg().toBuffer())
    const other = await prepare(
      'p.jpg',
      await halves(600, 300)
        .withExif({ IFD0: { Artist: 'somebody else' } })
        .jpeg()
        .toBuffer(),
    )
    expect(other.sizes.map(({ address }) => address)).toEqual(one.sizes.map(({ address }) => address))
    expect(other.sizes.map(({ content }) => Buffer.from(content))).toEqual(
      one.sizes.map(({ content }) => Buffer.from(content)),
    )
  })

  test('a name is made of the original’s name, the width and the sum of what is published', async () => {
    const { address, sizes } = await prepare('Tank, während.JPG', await halves(64, 48).jpeg().toBuffer())
    expect(address).toMatch(/^photos\/tank-wahrend-64-[0-9a-f]{8}\.jpg$/)
    expect(sizes.map(({ address: one }) => one.replace(/[0-9a-f]{8}/, 'sum'))).toEqual([
      'photos/tank-wahrend-64-sum.webp',
      'photos/tank-wahrend-64-sum.jpg',
    ])
  })
})

describe('the day on which a picture was taken', () => {
  const dated = (date: string) =>
    halves(64, 48)
      .withExif({ IFD0: { Artist: secret }, IFD2: { DateTimeOriginal: date } })
      .jpeg()
      .toBuffer()
  test.each([
    ['2026:03:07 14:02:11', '2026-03-07'],
    ['2026:02:30 14:02:11', null],
    ['0000:00:00 00:00:00', null],
    ['1970:01:01 00:00:00', null],
    [secret, null],
  ])('of `%s` is %s', async (written, day) => {
    expect((await prepare('p.jpg', await dated(written))).taken).toBe(day)
  })

  test('is read of HEIC too', async () => {
    expect((await prepare('p.heic', heic)).taken).toBe('2026-03-07')
  })

  test('is not there where the edition may not know it', async () => {
    expect((await prepare('p.jpg', await dated('2026:03:07 14:02:11'), false)).taken).toBeNull()
  })
})

test('progress is told after each picture, and the order is that of the list', async () => {
  const names = ['c', 'a', 'b', 'd', 'e'].map(name => `content/photos/${name}.jpg`)
  const bytes = await halves(64, 48).jpeg().toBuffer()
  const folder = folderWith(Object.fromEntries(names.map(name => [name, bytes])))
  const told: [number, number][] = []
  const { photos } = await preparePhotos(folder, names, {
    tellsDates: true,
    onProgress: (done, total) => told.push([done, total]),
  })
  expect(photos.map(({ file }) => file)).toEqual(names)
  expect(told).toEqual([
    [1, 5],
    [2, 5],
    [3, 5],
    [4, 5],
    [5, 5],
  ])
})
