import { closeSync, openSync, readFileSync, readSync, realpathSync, statSync } from 'node:fs'
import { join, sep } from 'node:path'

/** A picture that lies inside `content/`. */
export interface PictureFile {
  /** Relative to the build folder: `content/photos/tank.jpg`. */
  readonly file: string
  /** The real path, no symbolic link. */
  readonly path: string
  readonly bytes: number
}

/** Finds a picture; null where there is none, or where it lies outside `content/`, through a symbolic link too. */
export function pictureFile(buildFolder: string, file: string): PictureFile | null {
  try {
    const content = realpathSync(join(buildFolder, 'content'))
    const path = realpathSync(join(buildFolder, file))
    const stat = statSync(path)
    return path.startsWith(content + sep) && stat.isFile() ? { file, path, bytes: stat.size } : null
  } catch {
    return null
  }
}

/** The bytes of a picture; null where they cannot be read. */
export function bytesOf({ path }: PictureFile): Buffer | null {
  try {
    return readFileSync(path)
  } catch {
    return null
  }
}

/** Up to `length` first bytes; none where they cannot be read. */
export function headOf({ path }: PictureFile, length: number): Buffer {
  const head = Buffer.alloc(length)
  try {
    const opened = openSync(path, 'r')
    try {
      return head.subarray(0, readSync(opened, head, 0, length, 0))
    } finally {
      closeSync(opened)
    }
  } catch {
    return head.subarray(0, 0)
  }
}
