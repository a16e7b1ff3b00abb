import { createHash } from 'node:crypto'
import { availableParallelism } from 'node:os'
import { basename, extname } from 'node:path'
import sharp from 'sharp'
import { captureDate } from './capture-date.ts'
import { type EncodedSize, encodePicture, settings } from './encode-picture.ts'
import { inParallel } from './in-parallel.ts'
import { lookAtPicture } from './look-at-picture.ts'
import { type MadePicture, openPictureCache, type PictureCache } from './picture-cache.ts'
import { bytesOf, type PictureFile, pictureFile } from './picture-file.ts'
import { TroubledPicture, troubleWords } from './troubled-picture.ts'

/** A picture in one size and format, as it is published. */
export interface PhotoSize {
  readonly format: 'webp' | 'jpeg' | 'png'
  /** Named by its own bytes: `photos/tank-960-1f3a09c2.webp`. */
  readonly address: string
  readonly width: number
  readonly height: number
  /** Made anew from its pixels: nothing of the original's metadata is in it. */
  readonly content: Uint8Array
}

export interface PreparedPhoto {
  /** As it lies in the build folder: `content/photos/tank.jpg`. */
  readonly file: string
  /** The largest size in the format that opens everywhere. */
  readonly address: string
  readonly width: number
  readonly height: number
  /** Of each format the smallest first. */
  readonly sizes: readonly PhotoSize[]
  /** ISO 8601: the day on which it was taken; null where it is not known, or not asked for. */
  readonly taken: string | null
}

/** Pictures made before by this process, by the sum of their bytes. */
export type PhotoMemory = Map<string, MadePicture>

interface Preparing {
  readonly memory?: PhotoMemory
  /** Whether the days on which pictures were taken may be told. */
  readonly tellsDates: boolean
  /** Told after each picture. */
  readonly onProgress?: (done: number, total: number) => void
}

export interface PreparedPhotos {
  readonly photos: readonly PreparedPhoto[]
  /** Of each picture that is left out why, as a sentence with its mend. */
  readonly troubles: readonly string[]
}

const atOnce = Math.min(4, availableParallelism()) // pictures: each takes up to 250 MB while it is read

/** Turns, sizes and re-encodes pictures, or remembers them. One that cannot be read, or lies outside `content/`, is left out and told. */
export async function preparePhotos(
  buildFolder: string,
  files: readonly string[],
  { memory = new Map(), tellsDates, onProgress }: Preparing,
): Promise<PreparedPhotos> {
  const troubles: string[] = []
  if (files.length === 0) return { photos: [], troubles }
  const cache = openPictureCache(buildFolder)
  let done = 0
  const made = await inParallel(files, atOnce, async file => {
    const picture = pictureFile(buildFolder, file)
    const one = picture === null ? null : await makeOrRemember(picture, { memory, cache }).catch(troubleOf)
    onProgress?.(++done, files.length)
    return { file, one }
  })
  const photos = made.flatMap(({ file, one }) => {
    if (!(one instanceof TroubledPicture)) return one === null ? [] : [published(file, one, tellsDates)]
    const { message, mend } = troubleWords(file, one)
    troubles.push(`${message} To mend it, ${mend}.`)
    return []
  })
  return { photos, troubles }
}

function troubleOf(cause: unknown): TroubledPicture {
  if (cause instanceof TroubledPicture) return cause
  throw cause
}

interface Remembering {
  readonly memory: PhotoMemory
  readonly cache: PictureCache
}

async function makeOrRemember(picture: PictureFile, { memory, cache }: Remembering): Promise<MadePicture> {
  const { kind } = await lookAtPicture(picture)
  const bytes = bytesOf(picture)
  if (bytes === null) throw new TroubledPicture('damaged')
  const key = keyOf(bytes)
  const known = memory.get(key) ?? cache.read(key)
  const made = known ?? { taken: await captureDate(bytes, kind), sizes: await encodePicture(bytes, kind) }
  if (known === null) cache.write(key, made)
  memory.set(key, made)
  return made
}

const maker = JSON.stringify([settings, sharp.versions.sharp, sharp.versions.vips])

/** What comes out depends on the bytes, on how they are made and by what. */
function keyOf(bytes: Uint8Array): string {
  return createHash('sha256').update(maker).update('\n').update(bytes).digest('hex')
}

function published(file: string, { sizes, taken }: MadePicture, tellsDates: boolean): PreparedPhoto {
  const named = sizes.map(({ sum, ...size }) => ({ ...size, address: addressOf(file, { sum, ...size }) }))
  const largest = named.findLast(({ format }) => format !== 'webp')
  if (largest === undefined) throw new Error(`Unexpected picture \`${file}\` without a size`)
  const { address, width, height } = largest
  return { file, address, width, height, sizes: named, taken: tellsDates ? taken : null }
}

const endings = { webp: 'webp', jpeg: 'jpg', png: 'png' } as const

/** By the name of the original and the sum of what is published: the original's own sum would tell its metadata apart. */
function addressOf(file: string, { sum, width, format }: Omit<EncodedSize, 'content'>): string {
  const name = basename(file, extname(file))
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
  return `photos/${name === '' ? 'photo' : name}-${width}-${sum.slice(0, 8)}.${endings[format]}`
}
