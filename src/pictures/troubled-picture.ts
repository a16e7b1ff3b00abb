/** Why a picture cannot be published. */
export type Trouble = 'empty' | 'heavy' | 'no-picture' | 'unread' | 'damaged' | 'large' | 'heic'

interface Size {
  readonly width: number
  readonly height: number
}

export const mostPixels = 64_000_000 // 8000 × 8000: over what most cameras make, and read in under 1 GB of memory
export const mostBytes = 100_000_000 // of one file

/** A picture that cannot be published; the rest of the record goes on without it. */
export class TroubledPicture extends Error {
  readonly trouble: Trouble
  /** In pixels, where it is known. */
  readonly size: Size | null

  constructor(trouble: Trouble, size: Size | null = null) {
    super(trouble)
    this.trouble = trouble
    this.size = size
  }
}

const kinds = 'JPEG, PNG, WebP, GIF, SVG, TIFF, AVIF or HEIC'

/** What is wrong with a picture, as a sentence that quotes it, and the mend. */
export function troubleWords(file: string, { trouble, size }: TroubledPicture): { message: string; mend: string } {
  const pixels = size === null ? '' : ` of ${megapixels(size)} megapixels (${size.width} × ${size.height})`
  const told: Readonly<Record<Trouble, readonly [unexpected: string, mend: string]>> = {
    empty: [`picture \`${file}\` of no bytes, expected a picture`, 'copy it anew from where it was taken'],
    heavy: [
      `picture \`${file}\` of over ${mostBytes / 1e6} MB, expected a smaller file`,
      'save a copy of 4000 pixels or fewer across',
    ],
    'no-picture': [`content of \`${file}\`, which begins like no picture, expected ${kinds}`, `save it as JPEG or PNG`],
    unread: [`kind of picture in \`${file}\`, expected ${kinds}`, 'save it as JPEG or PNG'],
    damaged: [
      `damage in picture \`${file}\`, expected a file that is whole`,
      'copy it anew from where it was taken, or save it as JPEG',
    ],
    large: [
      `picture \`${file}\`${pixels}, expected at most ${mostPixels / 1e6} megapixels`,
      'save a copy of 4000 pixels or fewer across',
    ],
    heic: [
      `HEIC picture \`${file}\`, which needs a reader that is not installed`,
      '`npm install heic-decode` where oddleg is installed (`--global` if it is so), or save the picture as JPEG',
    ],
  }
  const [unexpected, mend] = told[trouble]
  return { message: `Unexpected ${unexpected}: it is not published, its alternative text stands in its place.`, mend }
}

function megapixels({ width, height }: Size): number {
  return Math.round((width * height) / 1e6)
}
