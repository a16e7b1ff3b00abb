import { type Finding, finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import { type Fault, type Fences, findFences } from './find-fences.ts'
import type { FrontMap } from './front.ts'
import { type NoteSource, placeAt } from './note-source.ts'
import { readYaml, type YamlReading } from './read-yaml.ts'
import { readThroughMatter } from './safe-matter.ts'
import { yamlOverLimit } from './yaml-limit.ts'

interface FrontMatter {
  readonly fence: Place
  /** Null where there is none or it could not be read. */
  readonly front: FrontMap | null
  /** The note with its front matter as empty lines: what is read as Markdown, with the lines of the file. */
  readonly body: string
  readonly findings: readonly Finding[]
}

/** Reads the front matter of a note; nothing in it is run, and whatever is wrong with it the body is still there. */
export function readFrontMatter(source: NoteSource): FrontMatter {
  const fences = findFences(source)
  const fence = placeAt(source, fences.fence)
  const reading = readBetween(source, fences)
  const findings = [...fences.faults.map(fault => toFinding(source, fault)), ...reading.findings]
  return { fence, front: reading.front, body: bodyOf(source, fences), findings }
}

function readBetween(source: NoteSource, { raw, fence, language }: Fences): YamlReading {
  const nothing: YamlReading = { front: null, findings: [] }
  if (raw === null) return nothing
  const written = source.text.slice(raw.start, raw.end)
  const over = yamlOverLimit(written, placeAt(source, fence))
  if (over !== null) return { front: null, findings: [over] } // Before gray-matter, which is slow on many empty lines.
  const end = raw.end - (written.endsWith('\r') ? 1 : 0)
  const read = (yaml: string): YamlReading => readYaml(source, { start: end - yaml.length, end })
  try {
    const reading = readThroughMatter(written, read)
    if (reading !== null || language !== '') return reading ?? nothing
    return { ...nothing, front: { kind: 'map', place: placeAt(source, fence), entries: [] } }
  } catch (error) {
    if (language === '') throw error
    return nothing // Another language was refused: its fence says so.
  }
}

function toFinding(source: NoteSource, { start, end, message, mend }: Fault): Finding {
  return finding('front-matter', placeAt(source, { start, end }), { message, mend })
}

/** Text that stands above a misplaced fence is kept. */
function bodyOf({ text }: NoteSource, { fence, bodyStart }: Fences): string {
  const blank = '\n'.repeat(text.slice(fence.start, bodyStart).split('\n').length - 1)
  return text.slice(0, fence.start) + blank + text.slice(bodyStart)
}
