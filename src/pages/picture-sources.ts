import type { PublishedPhoto } from './shown-photos.ts'

/** What a browser may choose from, as `srcset` and `sizes` say it. */
export interface PictureSources {
  readonly webp: string
  /** The format that opens everywhere. */
  readonly other: string
  readonly sizes: string
  /** For what does not choose: the middle size. */
  readonly src: string
}

/** How wide a picture stands on a page, in rem: in the text, in a gallery, in a table. */
export const rooms = { text: 41, gallery: 24, thumb: 5 } as const

const rem = 16 // CSS pixels, unless a reader set another size

/** The sizes of a picture, from the page that shows it; null for one that was published in a single size. */
export function pictureSources(
  photo: PublishedPhoto,
  to: (address: string) => string,
  room: keyof typeof rooms,
): PictureSources | null {
  const sizes = photo.sizes ?? []
  const of = (isWebp: boolean) => sizes.filter(({ format }) => (format === 'webp') === isWebp)
  const [webp, other] = [of(true), of(false)]
  const middle = other[Math.floor((other.length - 1) / 2)]
  if (middle === undefined) return null
  const written = (list: typeof sizes): string =>
    list.map(({ address, width }) => `${to(address)} ${width}w`).join(', ')
  return { webp: written(webp), other: written(other), sizes: sizesOf(photo.width, room), src: to(middle.address) }
}

/** A picture is never shown larger than it is. */
function sizesOf(width: number | null, room: keyof typeof rooms): string {
  const wide = rooms[room]
  if (width !== null && width < wide * rem) return `${width}px`
  return room === 'thumb' ? `${wide}rem` : `(max-width: ${wide + 4}rem) 100vw, ${wide}rem`
}
