import { lstatSync } from 'node:fs'
import { join } from 'node:path'
import { type Finding, finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import { contentFiles } from './content-files.ts'
import type { Note, NoteOptions } from './note.ts'
import type { NoteMemory } from './note-memory.ts'
import { idOf, noteOptionsOf, plainOptions } from './read-note.ts'

/** Everything of a build's `content/` folder. Paths are relative to the build folder, with `/`. */
export interface Content {
  /** What is not there, so that there is no build to read: `content` or `content/build.md`. */
  readonly missing: 'content' | 'content/build.md' | null
  readonly build: Note | null
  /** In the order of their paths. */
  readonly sessions: readonly Note[]
  readonly inspection: Note | null
  /** All of content/photos, and pictures elsewhere in content/. */
  readonly photos: readonly string[]
  /** About files as such; what is wrong within a note stands in its own findings. */
  readonly findings: readonly Finding[]
}

const pictures = /\.(?:avif|bmp|gif|heic|heif|jpe?g|png|svg|tiff?|webp)$/i

/** Reads build.md, whose settings change how the others read, then every note; nothing outside `content/` is read. */
export function readContent(buildFolder: string, memory: NoteMemory): Content {
  if (!isFolder(join(buildFolder, 'content')))
    return { missing: 'content', build: null, sessions: [], inspection: null, photos: [], findings: [] }
  const { files, links } = contentFiles(buildFolder, 'content')
  const read = (file: string, options: NoteOptions): Note => memory.read(join(buildFolder, file), file, options)
  const build = files.includes('content/build.md') ? read('content/build.md', plainOptions) : null
  const options = noteOptionsOf(build?.front ?? null)
  const { kept, repeated } = oneOfEachName(files.filter(file => file.startsWith('content/sessions/') && isNote(file)))
  return {
    missing: build === null ? 'content/build.md' : null,
    build,
    sessions: kept.map(file => read(file, options)),
    inspection: files.includes('content/inspection.yaml') ? read('content/inspection.yaml', options) : null,
    photos: files.filter(file => file.startsWith('content/photos/') || pictures.test(file)),
    findings: [...links.map(linkFinding), ...files.filter(isStray).map(strayFinding), ...repeated],
  }
}

function isFolder(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false
}

function isNote(file: string): boolean {
  return /\.md$/i.test(file)
}

/** A note that somebody may believe to be read. */
function isStray(file: string): boolean {
  return (
    isNote(file) && !file.startsWith('content/sessions/') && file !== 'content/build.md' && !/\/readme\.md$/i.test(file)
  )
}

/** Of notes whose names differ in nothing, or in capitals only, the first is kept: their pages would have one address. */
function oneOfEachName(files: readonly string[]): { kept: string[]; repeated: Finding[] } {
  const firsts = new Map<string, string>()
  const repeated: Finding[] = []
  for (const file of files) {
    const name = idOf(file).normalize('NFC').toLowerCase()
    const first = firsts.get(name)
    if (first === undefined) firsts.set(name, file)
    else repeated.push(repeatedNote(file, first))
  }
  return { kept: [...firsts.values()], repeated }
}

function repeatedNote(file: string, first: string): Finding {
  const message = `Unexpected second note named \`${idOf(file)}\`, expected a name of its own: this one is not read, \`${first}\` is.`
  return finding('repeated-note', startOf(file), {
    message,
    related: [{ ...startOf(first), message: 'This note bears the name first.' }],
  })
}

function linkFinding(file: string): Finding {
  const message = `Unexpected symbolic link \`${file}\`, expected the file itself: links are not followed, since they may lead out of content/.`
  return finding('unreadable-note', startOf(file), { message })
}

function strayFinding(file: string): Finding {
  const message = `Unexpected note \`${file}\` outside content/sessions/, expected it inside: it is not read. A name that begins with \`_\` says that this is meant.`
  return finding('unreadable-note', startOf(file), { message, mend: `content/sessions/${file.split('/').at(-1)}` })
}

function startOf(file: string): Place {
  return { file, line: 1, column: 1, endLine: 1, endColumn: 1 }
}
