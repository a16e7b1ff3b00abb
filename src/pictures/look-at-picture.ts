import sharp from 'sharp'
import { canReadHeic } from './decode-heic.ts'
import { bytesOf, headOf, type PictureFile } from './picture-file.ts'
import { endsAsItIs, kindOfBytes, type PictureKind } from './picture-kind.ts'
import { mostBytes, mostPixels, TroubledPicture } from './troubled-picture.ts'

/** What the head of a picture says; its pixels are not read. */
export interface PictureLook {
  readonly kind: PictureKind
  /** What it holds besides what its name promises, as sentences. */
  readonly oddities: readonly string[]
}

const headBytes = 4096 // a signature, and an SVG's declaration and first comments

/** Looks at a picture's head; throws `TroubledPicture` for one that cannot be published. */
export async function lookAtPicture(picture: PictureFile): Promise<PictureLook> {
  if (picture.bytes === 0) throw new TroubledPicture('empty')
  if (picture.bytes > mostBytes) throw new TroubledPicture('heavy')
  const kind = kindOfBytes(headOf(picture, headBytes))
  if (kind === null) throw new TroubledPicture('no-picture')
  if (kind === 'BMP') throw new TroubledPicture('unread')
  const named = endsAsItIs(picture.file, kind)
    ? []
    : [`Unexpected ${kind} in \`${picture.file}\`, expected a name that says so: it is published as what it is.`]
  if (kind !== 'HEIC') return { kind, oddities: [...named, ...(await lookInside(picture, kind))] }
  if (!canReadHeic()) throw new TroubledPicture('heic')
  return { kind, oddities: named }
}

async function lookInside(picture: PictureFile, kind: PictureKind): Promise<string[]> {
  const { width, height, pages } = await headData(picture, kind)
  if (width * height > mostPixels) throw new TroubledPicture('large', { width, height })
  if (kind === 'SVG') return livelyParts(picture)
  if (pages < 2) return []
  return [`Unexpected ${pages} frames in \`${picture.file}\`, expected a still picture: the first is published.`]
}

async function headData({ path }: PictureFile, kind: PictureKind) {
  try {
    const { width, height, pages } = await sharp(path, { limitInputPixels: false }).metadata()
    return { width, height, pages: kind === 'TIFF' ? 1 : (pages ?? 1) }
  } catch {
    throw new TroubledPicture('damaged')
  }
}

/** An SVG is drawn without running or fetching anything; what would have been is told. */
function livelyParts(picture: PictureFile): string[] {
  const text = bytesOf(picture)?.toString('utf8') ?? ''
  const found = [
    /<script[\s>]|\son[a-z]+\s*=|javascript:/i.test(text) ? 'a script' : '',
    /(?:href|src)\s*=\s*["'](?!#|data:)|url\(\s*["']?(?!#|data:)[\w./]|<!ENTITY|<xi:include/i.test(text)
      ? 'an address of another file'
      : '',
  ].filter(part => part !== '')
  if (found.length === 0) return []
  return [
    `Unexpected ${found.join(' and ')} in \`${picture.file}\`, expected a drawing alone: only its pixels are published.`,
  ]
}
