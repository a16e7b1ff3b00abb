import { createHash } from 'node:crypto'
import { readFileSync, realpathSync } from 'node:fs'
import { basename, extname, join, sep } from 'node:path'
import sharp from 'sharp'

export interface PreparedPhoto {
  /** As it lies in the build folder: `content/photos/tank.jpg`. */
  readonly file: string
  /** Where it is published: `photos/tank-1f3a09c2.jpg`. */
  readonly address: string
  readonly width: number
  readonly height: number
  /** Made anew from its pixels: nothing of the original's metadata is in it. */
  readonly content: Uint8Array
}

/** Pictures made before, by the sum of their bytes. */
export type PhotoMemory = Map<string, PreparedPhoto | null>

const widest = 1600 // pixels: fills a sheet of A4 at 190 to the inch

/** Turns, sizes and re-encodes pictures. One that cannot be read, or lies outside `content/`, is left out. */
export async function preparePhotos(
  buildFolder: string,
  files: readonly string[],
  memory: PhotoMemory,
): Promise<PreparedPhoto[]> {
  const prepared: PreparedPhoto[] = []
  for (const file of files) {
    const photo = await prepareOne(buildFolder, file, memory)
    if (photo !== null) prepared.push(photo)
  }
  return prepared
}

async function prepareOne(buildFolder: string, file: string, memory: PhotoMemory): Promise<PreparedPhoto | null> {
  const bytes = readInside(buildFolder, file)
  if (bytes === null) return null
  const sum = createHash('sha256').update(bytes).digest('hex')
  const key = `${file} ${sum}`
  const known = memory.get(key)
  if (known !== undefined) return known
  const made = await encode(bytes, file)
  memory.set(key, made)
  return made
}

async function encode(bytes: Uint8Array, file: string): Promise<PreparedPhoto | null> {
  try {
    const picture = sharp(bytes, { failOn: 'error', limitInputPixels: 120_000_000 })
      .autoOrient()
      .resize({ width: widest, withoutEnlargement: true })
    const isLine = /\.(png|svg|gif)$/i.test(file)
    const encoded = isLine
      ? picture.png({ compressionLevel: 9 })
      : picture.flatten({ background: '#fff' }).jpeg({ quality: 82, mozjpeg: true })
    const { data, info } = await encoded.toBuffer({ resolveWithObject: true })
    // By what is published: the sum of the original would depend on its metadata.
    const sum = createHash('sha256').update(data).digest('hex')
    return {
      file,
      address: addressOf(file, { sum, ending: isLine ? 'png' : 'jpg' }),
      width: info.width,
      height: info.height,
      content: data,
    }
  } catch {
    return null
  }
}

function addressOf(file: string, { sum, ending }: { sum: string; ending: string }): string {
  const name = basename(file, extname(file))
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
  return `photos/${name === '' ? 'photo' : name}-${sum.slice(0, 8)}.${ending}`
}

function readInside(buildFolder: string, file: string): Uint8Array | null {
  try {
    const content = realpathSync(join(buildFolder, 'content'))
    const real = realpathSync(join(buildFolder, file))
    return real.startsWith(content + sep) ? readFileSync(real) : null
  } catch {
    return null
  }
}
