import { createHash } from 'node:crypto'
import sharp, { type Sharp } from 'sharp'
import { decodeHeic } from './decode-heic.ts'
import type { PictureKind } from './picture-kind.ts'
import { mostPixels, TroubledPicture } from './troubled-picture.ts'

/** One size of a picture in one format, made from pixels alone. */
export interface EncodedSize {
  readonly format: 'webp' | 'jpeg' | 'png'
  readonly width: number
  readonly height: number
  /** SHA-256 of its bytes, hexadecimal. */
  readonly sum: string
  readonly content: Uint8Array
}

export const settings = {
  widths: [480, 960], // pixels: a thumbnail, and the text's 41 rem at one and a half to a pixel
  longest: 1600, // pixels, either way: fills a sheet of A4 at 190 to the inch
  jpeg: { quality: 82, mozjpeg: true },
  webp: { quality: 80 },
  drawing: { compressionLevel: 9 },
  drawingBytes: 1, // a pixel: a PNG that packs as well is a drawing, and stays sharp as one
  seconds: 60, // for one picture
}

/** Every size of a picture in every format, the smallest first; throws `TroubledPicture` where its pixels cannot be read. */
export async function encodePicture(bytes: Uint8Array, kind: PictureKind): Promise<EncodedSize[]> {
  const pixels = await readPixels(bytes, kind).catch((cause: unknown) => {
    throw cause instanceof TroubledPicture ? cause : new TroubledPicture('damaged')
  })
  const isDrawing = drawn.includes(kind) && (await packsWell(pixels))
  const made: EncodedSize[] = []
  for (const width of widthsOf(pixels.width)) made.push(...(await encodeSize(pixels, { width, isDrawing })))
  return made
}

const drawn: readonly PictureKind[] = ['PNG', 'GIF', 'SVG']

interface Raw {
  readonly data: Buffer
  readonly width: number
  readonly height: number
  readonly channels: 1 | 2 | 3 | 4
}

/** Turned upright, at its largest size, in sRGB, on white: a drawing without ground stays readable on any paper. */
async function readPixels(bytes: Uint8Array, kind: PictureKind): Promise<Raw> {
  const { data, info } = await (await opened(bytes, kind))
    .resize({ width: settings.longest, height: settings.longest, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#fff' })
    .toColourspace('srgb')
    .raw({ depth: 'uchar' })
    .timeout({ seconds: settings.seconds })
    .toBuffer({ resolveWithObject: true })
  return { data, width: info.width, height: info.height, channels: info.channels }
}

async function opened(bytes: Uint8Array, kind: PictureKind): Promise<Sharp> {
  if (kind === 'HEIC') {
    const { data, width, height } = await decodeHeic(bytes, mostPixels)
    return sharp(data, { raw: { width, height, channels: 4 } })
  }
  const options = { failOn: 'error', limitInputPixels: mostPixels } as const
  if (kind !== 'SVG') return sharp(bytes, options).autoOrient()
  return sharp(bytes, { ...options, density: await densityOf(bytes) })
}

const usualDensity = 72 // to the inch: at which an SVG's own size is counted in pixels
const mostDensity = 100_000 // what sharp takes

/** An SVG has no pixels of its own: it is drawn as large as the largest size. */
async function densityOf(bytes: Uint8Array): Promise<number> {
  const { width, height } = await sharp(bytes, { density: usualDensity }).metadata()
  const scale = settings.longest / Math.max(width, height, 1)
  return Math.min(mostDensity, Math.max(1, Math.floor(usualDensity * scale)))
}

const fromRaw = ({ data, width, height, channels }: Raw): Sharp => sharp(data, { raw: { width, height, channels } })

async function packsWell(pixels: Raw): Promise<boolean> {
  const { length } = await fromRaw(pixels).png(settings.drawing).toBuffer()
  return length <= settings.drawingBytes * pixels.width * pixels.height
}

/** The widths that pages use, less those that would hardly differ from the largest. */
function widthsOf(largest: number): number[] {
  return [...settings.widths.filter(width => width <= largest * 0.8), largest]
}

async function encodeSize(
  pixels: Raw,
  { width, isDrawing }: { readonly width: number; readonly isDrawing: boolean },
): Promise<EncodedSize[]> {
  const sized = fromRaw(pixels).resize({ width })
  const webp = sized.clone().webp(isDrawing ? { lossless: true } : settings.webp)
  const other = isDrawing ? sized.clone().png(settings.drawing) : sized.clone().jpeg(settings.jpeg)
  const made = await Promise.all([webp, other].map(one => one.toBuffer({ resolveWithObject: true })))
  return made.map(({ data, info }, at) => ({
    format: at === 0 ? 'webp' : isDrawing ? 'png' : 'jpeg',
    width: info.width,
    height: info.height,
    sum: createHash('sha256').update(data).digest('hex'),
    content: data,
  }))
}
