import { createHash } from 'node:crypto'
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { EncodedSize } from './encode-picture.ts'

/** What was made of one picture. */
export interface MadePicture {
  /** ISO 8601: the day on which it was taken, as its metadata says. */
  readonly taken: string | null
  readonly sizes: readonly EncodedSize[]
}

/** Pictures made before, on disk. A cache that cannot be read or written, or that is damaged, is none: the work is done anew. */
export interface PictureCache {
  readonly read: (key: string) => MadePicture | null
  readonly write: (key: string, made: MadePicture) => void
}

/** Opens the cache of a build, `.oddleg/pictures`, which keeps itself out of Git. */
export function openPictureCache(buildFolder: string): PictureCache {
  const folder = join(buildFolder, '.oddleg', 'pictures')
  quietly(() => {
    mkdirSync(folder, { recursive: true })
    writeWhole(join(buildFolder, '.oddleg', '.gitignore'), Buffer.from('*\n'))
  })
  quietly(() => sweep(folder))
  return {
    read: key => quietly(() => readEntry(join(folder, key))) ?? null,
    write: (key, made) => quietly(() => writeWhole(join(folder, key), packed(made))),
  }
}

function quietly<T>(work: () => T): T | undefined {
  try {
    return work()
  } catch {
    return undefined
  }
}

/** Beside, then into place: a run that is stopped leaves the file whole or not there. */
function writeWhole(path: string, content: Uint8Array): void {
  const beside = `${path}.new-${process.pid}`
  try {
    writeFileSync(beside, content)
    renameSync(beside, path)
  } catch (cause) {
    rmSync(beside, { force: true })
    throw cause
  }
}

const unusedDays = 90 // a picture that no build asked for so long is made anew when one does

/** Takes away what a stopped run left half-written, and what nobody asked for in a long time. */
function sweep(folder: string): void {
  const oldest = Date.now() - unusedDays * 86_400_000 // ms a day
  for (const name of readdirSync(folder)) {
    const path = join(folder, name)
    const halfWritten = name.includes('.new-') && statSync(path).mtimeMs < Date.now() - 3_600_000 // ms an hour: no run writes one file so long
    if (halfWritten || statSync(path).mtimeMs < oldest) rmSync(path, { force: true })
  }
}

const sumLength = 64 // hexadecimal digits of SHA-256

/**
 * ```
 * SHA-256 of all that follows ⏎
 * {"taken": …, "sizes": [{"format": …, "length": 48211}, …]} ⏎
 * the bytes of each size, in that order
 * ```
 */
function packed({ taken, sizes }: MadePicture): Buffer {
  const head = sizes.map(({ content, ...size }) => ({ ...size, length: content.byteLength }))
  const rest = Buffer.concat([
    Buffer.from(`${JSON.stringify({ taken, sizes: head })}\n`),
    ...sizes.map(({ content }) => content),
  ])
  return Buffer.concat([Buffer.from(`${sumOf(rest)}\n`), rest])
}

function readEntry(path: string): MadePicture | null {
  const entry = readFileSync(path)
  const rest = entry.subarray(sumLength + 1)
  if (entry.subarray(0, sumLength).toString('latin1') !== sumOf(rest)) return null
  const headEnd = rest.indexOf(0x0a)
  // The sum says that we wrote it.
  const head = JSON.parse(rest.subarray(0, headEnd).toString('utf8')) as {
    taken: string | null
    sizes: (Omit<EncodedSize, 'content'> & { length: number })[]
  }
  let at = headEnd + 1
  const sizes = head.sizes.map(({ length, ...size }) => {
    at += length
    return { ...size, content: rest.subarray(at - length, at) }
  })
  const now = new Date()
  quietly(() => utimesSync(path, now, now))
  return { taken: head.taken, sizes }
}

const sumOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')
