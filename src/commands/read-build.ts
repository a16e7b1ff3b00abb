import { type Built, readBuildFolder } from '../build.ts'
import { privateEvidence } from '../editions/private-photos.ts'
import { namedPhotos } from '../editions/shown-photos.ts'
import { withheldNames } from '../editions/withheld-names.ts'
import { comparePlaces } from '../findings/place.ts'
import type { NoteMemory } from '../notes/note-memory.ts'
import { type BuildOptions, CannotRun, todayOf } from './options.ts'

/** Reads, folds and checks the build that the options name. Where there is none the command cannot run. */
export async function readBuild(options: BuildOptions, memory?: NoteMemory): Promise<Built> {
  const read = await readBuildFolder(options.build, {
    today: todayOf(options),
    ...(memory === undefined ? {} : { memory }),
  })
  if ('trouble' in read) throw new CannotRun(read.trouble)
  return read
}

/** The same with what is wrong with its pictures, whose heads are read for it. */
export async function readBuildAndPictures(options: BuildOptions, memory?: NoteMemory): Promise<Built> {
  const built = await readBuild(options, memory)
  const pictures = namedPhotos(built.stated.notes, built.photos)
  if (pictures.length === 0) return built
  const { pictureFindings } = await import('../pictures/picture-findings.ts')
  const found = await pictureFindings(built.folder, pictures)
  const evidence = privateEvidence(built.stated.notes, built.stated.editions)
  return { ...built, findings: [...built.findings, ...found, ...evidence].sort(comparePlaces) }
}

/** An edition that build.md names by a name that can be a folder's; anything else cannot be shown. */
export function requireKnown(built: Built, edition: string): void {
  const known = built.record.editions.map(({ name }) => name)
  if (!known.includes(edition))
    throw new CannotRun(`Unexpected edition \`${edition}\`, expected one that build.md names: ${known.join(', ')}.`)
  if (!/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(edition))
    throw new CannotRun(
      `Unexpected name \`${edition}\` of an edition, expected lower-case words joined by hyphens such as \`public\`.`,
    )
}

/** A known edition in which no withheld word stands unmarked. */
export function requireEdition(built: Built, edition: string): void {
  requireKnown(built, edition)
  const found = withheldNames(built.stated, [edition])
  if (found.length === 0) return
  const places = found.slice(0, 5).map(({ file, line, column }) => `${file}:${line}:${column}`)
  const more = found.length > places.length ? ` and ${found.length - places.length} more` : ''
  throw new CannotRun(
    `The edition \`${edition}\` would publish withheld words at ${places.join(', ')}${more}. \`oddleg check --edition ${edition}\` says which.`,
  )
}
