import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { basename, dirname, join, resolve, sep } from 'node:path'

export interface PublishedFile {
  /** Relative to the output folder, with `/`. */
  readonly path: string
  readonly content: string | Uint8Array
}

/** The output folder could not be written, or holds something that is not ours; the message says which. */
export class PublishError extends Error {}

/** Writes all files beside `out` and moves them into place: `out` is either what it was or the new record, whole. */
export function publishFolder(out: string, files: readonly PublishedFile[]): void {
  const target = resolve(out)
  tidyInterrupted(target)
  refuseForeign(target)
  const beside = join(dirname(target), `.${basename(target)}.new-${process.pid}`)
  try {
    writeAll(beside, files)
    swap(beside, target)
  } catch (cause) {
    removeQuietly(beside)
    throw new PublishError(
      `Nothing was published: \`${out}\` could not be written (${reason(cause)}). The folder is as it was.`,
      { cause },
    )
  }
}

/** Puts right what a run that was killed left beside the folder: the old record comes back, half a new one goes. */
function tidyInterrupted(target: string): void {
  const [parent, name] = [dirname(target), basename(target)]
  const left = existsSync(parent)
    ? namesIn(parent).filter(found => found.startsWith(`.${name}.new-`) || found.startsWith(`.${name}.old-`))
    : []
  const ended = left.filter(found => !isRunning(Number(found.split('-').at(-1))))
  for (const found of ended.sort()) {
    if (found.startsWith(`.${name}.old-`) && !existsSync(target)) renameSync(join(parent, found), target)
    else removeQuietly(join(parent, found))
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return pid !== process.pid
  } catch {
    return false
  }
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder)
  } catch {
    return []
  }
}

function removeQuietly(path: string): void {
  try {
    rmSync(path, { recursive: true, force: true })
  } catch {
    // What cannot be written cannot be tidied either: the reason is told already.
  }
}

function writeAll(folder: string, files: readonly PublishedFile[]): void {
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  const made = new Set<string>()
  for (const { path, content } of files) {
    const file = resolve(folder, path)
    if (!file.startsWith(folder + sep)) throw new Error(`\`${path}\` lies outside the output folder`)
    const parent = dirname(file)
    if (!made.has(parent)) mkdirSync(parent, { recursive: true })
    made.add(parent)
    writeFileSync(file, content)
  }
}

function swap(beside: string, target: string): void {
  if (!existsSync(target)) {
    renameSync(beside, target)
    return
  }
  const aside = join(dirname(target), `.${basename(target)}.old-${process.pid}`)
  renameSync(target, aside)
  try {
    renameSync(beside, target)
  } catch (cause) {
    renameSync(aside, target)
    throw cause
  }
  rmSync(aside, { recursive: true, force: true })
}

/** A folder is replaced only if it is empty or holds a record of ours: `--out ~` must not cost anybody a home folder. */
function refuseForeign(target: string): void {
  if (!existsSync(target)) return
  let names: string[]
  try {
    names = readdirSync(target)
  } catch (cause) {
    throw new PublishError(`Nothing was published: \`${target}\` is no folder that can be read (${reason(cause)}).`, {
      cause,
    })
  }
  if (names.length === 0 || isRecord(join(target, 'record.json'))) return
  throw new PublishError(
    `Nothing was published: \`${target}\` holds files that are no record of oddleg, such as \`${names.sort()[0]}\`. Name an empty folder with --out.`,
  )
}

function isRecord(file: string): boolean {
  try {
    return /"format":\s*"oddleg-record\/\d+"/.test(readFileSync(file, 'utf8').slice(0, 200))
  } catch {
    return false
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EACCES: 'no permission to write there',
  EPERM: 'no permission to write there',
  EROFS: 'the disk is read-only',
  ENOTDIR: 'a part of the path is a file',
  EDQUOT: 'the disk quota is used up',
}

function reason(cause: unknown): string {
  const code = cause instanceof Error && 'code' in cause ? String(cause.code) : ''
  return reasons[code] ?? (cause instanceof Error ? cause.message : String(cause))
}
