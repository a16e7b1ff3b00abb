import { createHash } from 'node:crypto'
import { readFileSync, statSync } from 'node:fs'
import type { Note, NoteOptions } from './note.ts'
import { readNote } from './read-note.ts'

/** Remembers notes between two readings of a build, so that after an edit only the edited note is parsed. */
export interface NoteMemory {
  /** Reads `path`, or remembers it where neither its bytes nor the options have changed. A new object each time. */
  readonly read: (path: string, file: string, options: NoteOptions) => Note
  /** How many notes were parsed so far. */
  readonly reads: number
}

interface Remembered {
  readonly key: string
  readonly stat: string | null
  /** As JSON: what is handed out is never shared, and warm is cold byte for byte. */
  readonly json: string
}

const stillMovingMs = 100 // A file changed less than this ago may change again within the same tick of the disk's clock.

export function makeNoteMemory(): NoteMemory {
  const remembered = new Map<string, Remembered>()
  let reads = 0
  const read = (path: string, file: string, options: NoteOptions): Note => {
    const optionsKey = JSON.stringify([file, options.gallon, options.mil, options.decimal])
    const before = remembered.get(path)
    const stat = statKey(path, optionsKey)
    if (before && stat !== null && before.stat === stat) return JSON.parse(before.json)
    const bytes = readFileSync(path)
    const key = optionsKey + createHash('sha256').update(bytes).digest('hex')
    const isKnown = before?.key === key
    if (!isKnown) reads += 1
    const json = isKnown ? before.json : JSON.stringify(readNote({ file, bytes }, options))
    remembered.set(path, { key, stat, json })
    return JSON.parse(json)
  }
  return {
    read,
    get reads() {
      return reads
    },
  }
}

/** Null where the file was changed so lately that its time and size prove nothing. */
function statKey(path: string, optionsKey: string): string | null {
  const { mtimeMs, size, ino } = statSync(path)
  return Date.now() - mtimeMs < stillMovingMs ? null : `${mtimeMs}:${size}:${ino}:${optionsKey}`
}
