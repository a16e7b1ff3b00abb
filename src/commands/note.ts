import { relative } from 'node:path'
import { measureNext } from '../checker/measure-next.ts'
import { writeNewNote } from './new-note.ts'
import { type BuildOptions, CannotRun, todayOf } from './options.ts'
import { readBuild } from './read-build.ts'

/** `oddleg note "Title"`: a new dated note, ready to fill in; prints its path. */
export async function note(title: string, options: BuildOptions): Promise<number> {
  if (title.trim() === '')
    throw new CannotRun('Unexpected empty title, expected a few words such as "Tank in for size".')
  const date = todayOf(options)
  const built = await readBuild(options)
  const file = writeNewNote(
    options.build,
    { title: title.trim(), date },
    { record: built.record, next: measureNext(built.verdicts) },
  )
  const shown = relative(process.cwd(), file)
  process.stdout.write(options.json ? `${JSON.stringify({ file: shown })}\n` : `${shown}\n`)
  return 0
}
