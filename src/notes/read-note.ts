import { createHash } from 'node:crypto'
import { finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import { decodeText } from './decode-text.ts'
import type { Front } from './front.ts'
import type { Note, NoteOptions } from './note.ts'
import { type NoteSource, noteSource } from './note-source.ts'
import { emptyBody, readBody } from './read-body.ts'
import { readFrontMatter } from './read-front-matter.ts'
import { readYaml } from './read-yaml.ts'
import { yamlOverLimit } from './yaml-limit.ts'

/** A file of `content/` as it lies on the disk; `file` is relative to the build folder, with `/`. */
interface NoteFile {
  readonly file: string
  readonly bytes: Uint8Array
}

/** How notes are read where build.md sets nothing. */
export const plainOptions: NoteOptions = { gallon: null, mil: null, decimal: 'point' }

/** Reads one file of `content/`. Never throws for what stands in it; build.md is read by its own settings. */
export function readNote({ file, bytes }: NoteFile, options: NoteOptions): Note {
  const head = { kind: kindOf(file), file, id: idOf(file), sum: createHash('sha256').update(bytes).digest('hex') }
  const decoded = decodeText(bytes)
  if (decoded.fault !== null) {
    const told = finding('front-matter', startOf(file), { message: decoded.fault })
    return { ...head, fence: startOf(file), front: null, body: emptyBody(), findings: [told] }
  }
  const source = noteSource(file, decoded.text)
  return head.kind === 'inspection'
    ? { ...head, ...inspectionOf(source) }
    : { ...head, ...proseOf(source, head.kind === 'build', options) }
}

function inspectionOf(source: NoteSource): Omit<Note, 'kind' | 'file' | 'id' | 'sum'> {
  const start = { fence: startOf(source.file), body: emptyBody() }
  const over = yamlOverLimit(source.text, start.fence)
  if (over !== null) return { ...start, front: null, findings: [over] }
  return { ...start, ...readYaml(source, { start: 0, end: source.text.length }) }
}

function proseOf(
  source: NoteSource,
  isBuild: boolean,
  options: NoteOptions,
): Omit<Note, 'kind' | 'file' | 'id' | 'sum'> {
  const { fence, front, body: text, findings } = readFrontMatter(source)
  const read = readBody(source.file, text, isBuild ? noteOptionsOf(front) : options)
  return { fence, front, body: read.body, findings: [...findings, ...read.findings] }
}

/** What build.md sets that changes how notes are read; what it sets wrongly is as if it were not there. */
export function noteOptionsOf(front: Front | null): NoteOptions {
  const word = (key: string): string => {
    const value = front?.kind === 'map' ? front.entries.find(entry => entry.key === key)?.value : undefined
    return value?.kind === 'scalar' ? value.text : ''
  }
  const [gallon, mil] = [word('gallon'), word('mil')]
  return {
    gallon: gallon === 'imperial' || gallon === 'us' ? gallon : null,
    mil: mil === 'mm' || mil === 'thou' ? mil : null,
    decimal: word('decimal') === 'comma' ? 'comma' : 'point',
  }
}

function kindOf(file: string): Note['kind'] {
  if (file === 'content/build.md') return 'build'
  return file === 'content/inspection.yaml' ? 'inspection' : 'session'
}

/** The file's name without its folders and its ending. */
export function idOf(file: string): string {
  return (file.split('/').at(-1) ?? file).replace(/\.(?:md|yaml)$/i, '')
}

function startOf(file: string): Place {
  return { file, line: 1, column: 1, endLine: 1, endColumn: 1 }
}
