import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'

export const root = resolve(import.meta.dirname, '../..')

/** A new folder in the project's own scratch space, gone when the tests are. */
export function scratchFolder(name: string): string {
  mkdirSync(join(root, '.tmp'), { recursive: true })
  const folder = mkdtempSync(join(root, '.tmp', `${name}-`))
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** Publishes a build folder with the program itself and gives the folder of the record. */
export function publish(build: string, more: readonly string[] = []): string {
  const out = join(scratchFolder('site'), 'record')
  const program = join(root, 'src/commands/oddleg.js')
  const { status, stderr } = spawnSync(
    process.execPath,
    [program, 'build', '--build', build, '--out', out, '--force', '--date', '2026-12-31', ...more],
    { cwd: root, encoding: 'utf8' },
  )
  if (status === null || status > 1 || !existsSync(out))
    throw new Error(`The build of ${build} ended with ${status}: ${stderr}`)
  return out
}

/** Writes a build of these notes, `build.md` and `sessions/…` by their paths within `content/`. */
export function writeBuild(notes: Readonly<Record<string, string>>): string {
  const folder = scratchFolder('build')
  for (const [path, text] of Object.entries(notes)) {
    const file = join(folder, 'content', path)
    mkdirSync(dirname(file), { recursive: true })
    writeFileSync(file, text)
  }
  mkdirSync(join(folder, 'content', 'sessions'), { recursive: true })
  return folder
}

/** One page of each kind: a session, a part, a check, an answer and so on. */
export function oneOfEach(paths: readonly string[]): string[] {
  const kind = (path: string): string =>
    path
      .split('/')
      .map((folder, depth) => (depth === 0 || folder === 'index.html' ? folder : '*'))
      .join('/')
  return [...new Map(paths.filter(path => path.endsWith('.html')).map(path => [kind(path), path])).values()]
}
