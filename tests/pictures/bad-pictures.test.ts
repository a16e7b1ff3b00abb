import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { decodeHeic } from '../../src/pictures/decode-heic.ts'
import { pictureFindings } from '../../src/pictures/picture-findings.ts'
import { preparePhotos } from '../../src/pictures/prepare-photos.ts'
import { TroubledPicture, troubleWords } from '../../src/pictures/troubled-picture.ts'
import { folderWith, halves, heic } from './sample-pictures.ts'

const place = { file: 'content/sessions/a.md', line: 7, column: 3, endLine: 7, endColumn: 30 }
const out = 'it is not published, its alternative text stands in its place.'
const kinds = 'JPEG, PNG, WebP, GIF, SVG, TIFF, AVIF or HEIC'

/** What `check` and `build` say of one picture, and whether a good one beside it is published. */
async function tell(name: string, bytes: Uint8Array | string) {
  const files = [`content/photos/${name}`, 'content/photos/good.jpg']
  const folder = folderWith({ [files[0] ?? '']: bytes, [files[1] ?? '']: await halves(64, 48).jpeg().toBuffer() })
  const findings = await pictureFindings(
    folder,
    files.map(file => ({ file, place })),
  )
  const { photos, troubles } = await preparePhotos(folder, files, { tellsDates: true })
  return {
    found: findings.map(({ rule, message }) => `${rule} ${message}`),
    troubles,
    published: photos.map(({ file }) => file),
  }
}

const good = 'content/photos/good.jpg'
const whole = () => halves(400, 300).jpeg().toBuffer()

/** A GIF whose head says 65535 × 65535 pixels (GIF89a 18: logical screen, then the image's own descriptor). */
async function bomb(): Promise<Buffer> {
  const gif = await sharp({ create: { width: 4, height: 4, channels: 3, background: '#fff' } })
    .gif()
    .toBuffer()
  const descriptor = gif.indexOf(Buffer.from([0x2c, 0, 0, 0, 0, 4, 0, 4, 0]))
  for (const at of [6, 8, descriptor + 5, descriptor + 7]) gif.writeUInt16LE(65535, at)
  return gif
}

describe('a picture that cannot be published is told, and the rest goes on', () => {
  const cases: [
    what: string,
    name: string,
    bytes: () => Promise<Uint8Array | string> | Uint8Array | string,
    message: string,
    mend: string,
  ][] = [
    [
      'no bytes',
      'a.jpg',
      () => '',
      'picture `content/photos/a.jpg` of no bytes, expected a picture',
      'copy it anew from where it was taken',
    ],
    [
      'words',
      'a.jpg',
      () => 'Dear diary',
      `content of \`content/photos/a.jpg\`, which begins like no picture, expected ${kinds}`,
      'save it as JPEG or PNG',
    ],
    [
      'a page',
      'a.svg',
      () => '<html><svg></svg></html>',
      `content of \`content/photos/a.svg\`, which begins like no picture, expected ${kinds}`,
      'save it as JPEG or PNG',
    ],
    [
      'a BMP',
      'a.bmp',
      () => Buffer.concat([Buffer.from('BM'), Buffer.alloc(60)]),
      `kind of picture in \`content/photos/a.bmp\`, expected ${kinds}`,
      'save it as JPEG or PNG',
    ],
    [
      'the head of a JPEG alone',
      'a.jpg',
      async () => (await whole()).subarray(0, 20),
      'damage in picture `content/photos/a.jpg`, expected a file that is whole',
      'copy it anew from where it was taken, or save it as JPEG',
    ],
    [
      '80 megapixels',
      'a.png',
      () =>
        sharp({ create: { width: 10_000, height: 8000, channels: 3, background: '#fff' } })
          .png({ compressionLevel: 1 })
          .toBuffer(),
      'picture `content/photos/a.png` of 80 megapixels (10000 × 8000), expected at most 64 megapixels',
      'save a copy of 4000 pixels or fewer across',
    ],
    [
      'a head that says 4295 megapixels',
      'a.gif',
      bomb,
      'picture `content/photos/a.gif` of 4295 megapixels (65535 × 65535), expected at most 64 megapixels',
      'save a copy of 4000 pixels or fewer across',
    ],
    [
      'an SVG of a mile',
      'a.svg',
      () => '<svg xmlns="http://www.w3.org/2000/svg" width="30000" height="30000"/>',
      'picture `content/photos/a.svg` of 900 megapixels (30000 × 30000), expected at most 64 megapixels',
      'save a copy of 4000 pixels or fewer across',
    ],
    [
      'half a HEIC',
      'a.heic',
      () => heic.subarray(0, 500),
      'damage in picture `content/photos/a.heic`, expected a file that is whole',
      'copy it anew from where it was taken, or save it as JPEG',
    ],
  ]
  test.each(cases)('%s', async (_, name, bytes, message, mend) => {
    const told = await tell(name, await bytes())
    const sentence = `Unexpected ${message}: ${out}`
    expect(told.troubles).toEqual([`${sentence} To mend it, ${mend}.`])
    expect(told.published).toEqual([good])
    // Half a HEIC has a whole head.
    expect(told.found).toEqual(name === 'a.heic' ? [] : [`unreadable-picture ${sentence}`])
  })

  test('one that breaks off is told when it is made, since its head is whole', async () => {
    const bytes = await whole()
    const { found, troubles, published } = await tell('a.jpg', bytes.subarray(0, bytes.length / 2))
    expect(found).toEqual([])
    expect(troubles).toEqual([
      `Unexpected damage in picture \`content/photos/a.jpg\`, expected a file that is whole: ${out} To mend it, copy it anew from where it was taken, or save it as JPEG.`,
    ])
    expect(published).toEqual([good])
  })

  test('HEIC without its reader is told with the command that installs it', async () => {
    const refused = await decodeHeic(heic, 1e6, () => Promise.reject(new Error('not installed'))).catch(cause => cause)
    expect(refused).toBeInstanceOf(TroubledPicture)
    expect(troubleWords('content/photos/a.heic', refused)).toEqual({
      message: `Unexpected HEIC picture \`content/photos/a.heic\`, which needs a reader that is not installed: ${out}`,
      mend: '`npm install heic-decode` where oddleg is installed (`--global` if it is so), or save the picture as JPEG',
    })
  })

  test('HEIC of more pixels than any picture may have is refused before it is decoded', async () => {
    const refused = await decodeHeic(heic, 64 * 48 - 1).catch(cause => cause)
    expect([refused.trouble, refused.size?.width, refused.size?.height]).toEqual(['large', 64, 48])
  })

  test('one through a symbolic link out of content/ is neither read nor published', async () => {
    const folder = folderWith({ 'outside.jpg': await whole(), 'content/build.md': '' })
    mkdirSync(join(folder, 'content/photos'))
    symlinkSync('../../outside.jpg', join(folder, 'content/photos/in.jpg'))
    const file = 'content/photos/in.jpg'
    expect(await preparePhotos(folder, [file], { tellsDates: true })).toEqual({ photos: [], troubles: [] })
    expect(await pictureFindings(folder, [{ file, place }])).toEqual([])
  })
})

describe('a picture that is not what it seems is published as pixels, and told', () => {
  const cases: [what: string, name: string, bytes: () => Promise<Uint8Array> | string, told: string][] = [
    [
      'a PNG by the name of a JPEG',
      'a.jpg',
      () => halves(64, 48).png().toBuffer(),
      'Unexpected PNG in `content/photos/a.jpg`, expected a name that says so: it is published as what it is.',
    ],
    [
      'an SVG with a script',
      'a.svg',
      () => '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>alert(1)</script></svg>',
      'Unexpected a script in `content/photos/a.svg`, expected a drawing alone: only its pixels are published.',
    ],
    [
      'an SVG with a handler',
      'a.svg',
      () => '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9" onload="alert(1)"></svg>',
      'Unexpected a script in `content/photos/a.svg`, expected a drawing alone: only its pixels are published.',
    ],
    [
      'an SVG that asks for another file',
      'a.svg',
      () =>
        '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><image href="https://example.org/a.png"/></svg>',
      'Unexpected an address of another file in `content/photos/a.svg`, expected a drawing alone: only its pixels are published.',
    ],
  ]
  test.each(cases)('%s', async (_, name, bytes, message) => {
    expect(await tell(name, await bytes())).toEqual({
      found: [`odd-picture ${message}`],
      troubles: [],
      published: [`content/photos/${name}`, good],
    })
  })

  test.each([
    [
      'a drawing of its own shapes',
      '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><path id="p" d="M0 0h9"/><use href="#p"/></svg>',
    ],
    [
      'one behind a declaration and a comment',
      '<?xml version="1.0"?><!-- drawn by hand --><svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>',
    ],
  ])('%s is told of in nothing', async (_, svg) => {
    expect((await tell('a.svg', svg)).found).toEqual([])
  })
})

describe('an SVG fetches nothing', () => {
  const lines = [
    '<image href="file://FOLDER/red.png" width="9" height="9"/>',
    '<image href="red.png" width="9" height="9"/>',
    '<image href="content/photos/red.png" width="9" height="9"/>',
    '<foreignObject width="9" height="9"><img xmlns="http://www.w3.org/1999/xhtml" src="file://FOLDER/red.png"/></foreignObject>',
    '<text y="9"><xi:include xmlns:xi="http://www.w3.org/2001/XInclude" href="FOLDER/words.txt" parse="text"/></text>',
    '<rect width="9" height="9" fill="url(file://FOLDER/red.svg#g)"/>',
  ]
  test.each(lines)('%s', async line => {
    const folder = folderWith({ 'words.txt': 'MMMM' })
    const red = await sharp({ create: { width: 9, height: 9, channels: 3, background: 'red' } })
      .png()
      .toBuffer()
    mkdirSync(join(folder, 'content/photos'), { recursive: true })
    for (const at of ['red.png', 'content/photos/red.png']) writeFileSync(join(folder, at), red)
    const file = 'content/photos/a.svg'
    writeFileSync(
      join(folder, file),
      `<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9">${line.replaceAll('FOLDER', folder)}</svg>`,
    )
    const { photos } = await preparePhotos(folder, [file], { tellsDates: true })
    const { data } = await sharp(photos[0]?.sizes.at(-1)?.content).raw().toBuffer({ resolveWithObject: true })
    expect(new Set(data)).toEqual(new Set([255]))
  })

  test('entities that grow without end are refused', async () => {
    const grown = Array.from({ length: 9 }, (_, at) => `<!ENTITY e${at + 1} "${`&e${at};`.repeat(10)}">`).join('')
    const svg = `<!DOCTYPE svg [<!ENTITY e0 "grow">${grown}]><svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><text>&e9;</text></svg>`
    const { troubles, published } = await tell('a.svg', svg)
    expect(troubles).toHaveLength(1)
    expect(published).toEqual([good])
  })
})
