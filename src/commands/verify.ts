import { resolve } from 'node:path'
import { compareSums, type Differences, NoManifest, type Verified, verifyFolder } from '../exports/verify-folder.ts'
import { makeNoteMemory } from '../notes/note-memory.ts'
import { readContent } from '../notes/read-content.ts'
import { CannotRun } from './options.ts'

export interface VerifyOptions {
  /** The folder that holds content/, where the notes are at hand. */
  readonly build: string | undefined
  /** The manifest's own sum as it was printed when the record was published. */
  readonly sum: string | undefined
  readonly json: boolean
}

/** `oddleg verify DIR`: whether a published record is still what was published; gives 1 where any file is not. */
export async function verify(folder: string, { build, sum, json }: VerifyOptions): Promise<number> {
  const verified = read(folder)
  const notes = build === undefined ? null : compareNotes(verified, build)
  const isExpected = sum === undefined ? null : sum.replace(/\s/g, '').toLowerCase() === verified.sum
  const holds = isSame(verified.files) && (notes === null || isSame(notes)) && isExpected !== false
  if (json)
    process.stdout.write(
      `${JSON.stringify({ holds, sum: verified.sum, edition: verified.manifest.edition, files: verified.files, notes }, null, 2)}\n`,
    )
  else tell(verified, { notes, isExpected })
  return holds ? 0 : 1
}

function read(folder: string): Verified {
  try {
    return verifyFolder(resolve(folder))
  } catch (cause) {
    if (cause instanceof NoManifest) throw new CannotRun(cause.message, { cause })
    throw cause
  }
}

/** Notes that the manifest names, against those at hand; a note that it does not name is no difference: an edition may withhold something of it. */
function compareNotes({ manifest }: Verified, build: string): Differences {
  const { build: head, sessions, inspection, missing } = readContent(resolve(build), makeNoteMemory())
  if (missing !== null)
    throw new CannotRun(`Unexpected folder \`${build}\` without \`${missing}\`, expected the notes of the record.`)
  const notes = [head, ...sessions, inspection].filter(note => note !== null)
  const { changed, missing: lost } = compareSums(manifest.notes, new Map(notes.map(({ file, sum }) => [file, sum])))
  return { changed, missing: lost, extra: [] }
}

const isSame = ({ changed, missing, extra }: Differences): boolean =>
  changed.length + missing.length + extra.length === 0

function tell(
  { manifest, sum, files }: Verified,
  { notes, isExpected }: { notes: Differences | null; isExpected: boolean | null },
): void {
  const lines = [...linesOf(files, ''), ...(notes === null ? [] : linesOf(notes, 'note '))]
  if (isExpected === false) lines.push(`changed  manifest.json (its sum is ${sum})`)
  if (lines.length > 0) process.stdout.write(`${lines.join('\n')}\n`)
  const what = `${manifest.files.length} files of the edition ${manifest.edition}`
  const told = notes === null ? '' : `, ${manifest.notes.length} notes`
  process.stderr.write(
    lines.length === 0 ? `${what}${told}: as published\n` : `${what}${told}: ${lines.length} not as published\n`,
  )
  process.stderr.write(`manifest ${sum}\n`)
}

function linesOf({ changed, missing, extra }: Differences, kind: string): string[] {
  const line = (word: string) => (path: string) => `${word.padEnd(8)} ${kind}${path}`
  return [...changed.map(line('changed')), ...missing.map(line('missing')), ...extra.map(line('extra'))]
}
