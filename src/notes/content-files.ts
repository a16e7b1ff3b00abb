import { type Dirent, readdirSync } from 'node:fs'
import { join } from 'node:path'

/** Files under a folder, and symbolic links, which are never followed. Paths are relative to the build folder, with `/`, in order. */
interface ContentFiles {
  readonly files: readonly string[]
  readonly links: readonly string[]
}

/** Lists a folder of the build with its own folders; names that begin with `.` or `_` are left out. */
export function contentFiles(buildFolder: string, folder: string): ContentFiles {
  const files: string[] = []
  const links: string[] = []
  const waiting = [folder]
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    for (const entry of entriesOf(join(buildFolder, at))) {
      const path = `${at}/${entry.name}`
      if (entry.isDirectory()) waiting.push(path)
      else if (entry.isFile()) files.push(path)
      else if (entry.isSymbolicLink()) links.push(path)
    }
  }
  return { files: files.sort(comparePaths), links: links.sort(comparePaths) }
}

/** By UTF-16 unit: the same on every machine, whatever its language. */
function comparePaths(a: string, b: string): number {
  if (a === b) return 0
  return a < b ? -1 : 1
}

function entriesOf(folder: string): Dirent[] {
  return readdirSync(folder, { withFileTypes: true }).filter(({ name }) => !/^[._]/.test(name))
}
