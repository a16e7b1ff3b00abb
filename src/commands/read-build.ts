import { type Built, readBuildFolder } from '../build.ts'
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

/** Until an edition can be made whole, no other than `full` is shown: better refused than published unredacted. */
export function requireEdition(built: Built, edition: string): void {
  if (edition === 'full') return
  const known = built.record.editions.map(({ name }) => name)
  if (!known.includes(edition))
    throw new CannotRun(`Unexpected edition \`${edition}\`, expected one that build.md names: ${known.join(', ')}.`)
  throw new CannotRun(
    `The edition \`${edition}\` withholds words, which this version cannot do yet: nothing was published. Only \`full\` can be.`,
  )
}
