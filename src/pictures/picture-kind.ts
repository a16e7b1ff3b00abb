/** Kinds of pictures that builders have. */
export type PictureKind = 'JPEG' | 'PNG' | 'GIF' | 'WebP' | 'AVIF' | 'HEIC' | 'TIFF' | 'BMP' | 'SVG'

/** What a picture is by its first bytes, whatever its name says; null for what begins like none. */
export function kindOfBytes(head: Uint8Array): PictureKind | null {
  const text = Buffer.from(head.buffer, head.byteOffset, head.byteLength).toString('latin1')
  const found = signatures.find(([, begins]) => begins.test(text))
  if (found !== undefined) return found[0]
  if (text.slice(4, 8) === 'ftyp') return ofBrands(text)
  return isSvg(text) ? 'SVG' : null
}

const signatures: readonly (readonly [PictureKind, RegExp])[] = [
  ['JPEG', /^\xff\xd8\xff/], // ISO/IEC 10918-1 B.1.1.3: SOI, then a marker
  ['PNG', /^\x89PNG\r\n/], // ISO/IEC 15948 5.2
  ['GIF', /^GIF8[79]a/], // GIF89a specification, 17
  ['WebP', /^RIFF[\s\S]{4}WEBP/], // RFC 9649 2.4
  ['TIFF', /^(?:II\*\0|MM\0\*)/], // TIFF 6.0, section 2
  ['BMP', /^BM[\s\S]{4}\0{4}/], // BITMAPFILEHEADER: two reserved words of zero
]

/** ISO/IEC 14496-12 4.3: the major brand, then those that it agrees with. */
function ofBrands(text: string): PictureKind | null {
  const brands = text.slice(8, 64)
  if (/avi[fs]/.test(brands)) return 'AVIF'
  return /^(?:mif1|msf1|hei[cxms]|hev[cxms])/.test(brands) ? 'HEIC' : null
}

/** An `svg` element behind a byte order mark, a declaration, comments and a document type. */
function isSvg(text: string): boolean {
  const bare = text.replace(/^\xef\xbb\xbf/, '').replace(/<!--[\s\S]*?-->/g, '')
  return /^\s*(?:<\?xml[^>]*>\s*)?(?:<!DOCTYPE[^[>]*(?:\[[^\]]*\])?[^>]*>\s*)?<(?:svg:)?svg[\s>]/i.test(bare)
}

const endings: Readonly<Record<PictureKind, RegExp>> = {
  JPEG: /\.jpe?g$/i,
  PNG: /\.png$/i,
  GIF: /\.gif$/i,
  WebP: /\.webp$/i,
  AVIF: /\.avif$/i,
  HEIC: /\.hei[cf]$/i,
  TIFF: /\.tiff?$/i,
  BMP: /\.bmp$/i,
  SVG: /\.svg$/i,
}

/** Whether a name ends as its content asks. */
export function endsAsItIs(file: string, kind: PictureKind): boolean {
  return endings[kind].test(file)
}
