import type { PictureKind } from './picture-kind.ts'

const dated: readonly PictureKind[] = ['JPEG', 'HEIC', 'PNG', 'WebP', 'TIFF', 'AVIF']

/** The day on which a camera says that it took a picture, ISO 8601; null where it says none. Nothing else is taken from the metadata. */
export async function captureDate(bytes: Buffer, kind: PictureKind): Promise<string | null> {
  if (!dated.includes(kind)) return null
  try {
    const { default: ExifReader } = await import('exifreader')
    const { exif } = await ExifReader.load(bytes, { expanded: true, async: true, includeUnknown: false })
    return dayOf(String(exif?.DateTimeOriginal?.description ?? ''))
  } catch {
    return null
  }
}

/** `2026:03:07 14:02:11`, as EXIF writes a date; a camera whose clock was never set says a day that does not exist. */
function dayOf(written: string): string | null {
  const [, year, month, day] = /^(\d{4})[:-](\d{2})[:-](\d{2})(?:[ T]|$)/.exec(written) ?? []
  if (year === undefined || Number(year) < 1990) return null // before digital cameras wrote EXIF (1995)
  const date = new Date(`${year}-${month}-${day}T00:00:00Z`)
  const iso = `${year}-${month}-${day}`
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(iso) ? iso : null
}
