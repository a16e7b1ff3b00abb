import { availableParallelism } from 'node:os'
import { type Finding, finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import { inParallel } from './in-parallel.ts'
import { lookAtPicture } from './look-at-picture.ts'
import { pictureFile } from './picture-file.ts'
import { TroubledPicture, troubleWords } from './troubled-picture.ts'

interface NamedPicture {
  /** Relative to the build folder. */
  readonly file: string
  /** Where a note names it. */
  readonly place: Place
}

/** What the heads of pictures tell that stands against publishing them; damage further on is found when they are made. */
export async function pictureFindings(buildFolder: string, pictures: readonly NamedPicture[]): Promise<Finding[]> {
  const found = await inParallel(pictures, availableParallelism(), one => findingsOf(buildFolder, one))
  return found.flat()
}

async function findingsOf(buildFolder: string, { file, place }: NamedPicture): Promise<Finding[]> {
  const picture = pictureFile(buildFolder, file)
  if (picture === null) return []
  try {
    const { oddities } = await lookAtPicture(picture)
    return oddities.map(message => finding('odd-picture', place, { message }))
  } catch (cause) {
    if (!(cause instanceof TroubledPicture)) throw cause
    const { message, mend } = troubleWords(file, cause)
    return [finding('unreadable-picture', place, { message, mend })]
  }
}
