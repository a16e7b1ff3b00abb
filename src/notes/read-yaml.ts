import { type Document, parseDocument } from 'yaml'
import { type Finding, finding } from '../findings/finding.ts'
import type { Fault } from './find-fences.ts'
import type { FrontMap } from './front.ts'
import { frontTree } from './front-tree.ts'
import { hashComments } from './hash-comments.ts'
import type { NoteSource, Span } from './note-source.ts'
import { type Marks, readMarks } from './read-marks.ts'
import { shown } from './trouble.ts'
import { firstFault } from './yaml-fault.ts'
import { lineAt } from './yaml-lines.ts'
import { placeInFile, type YamlText } from './yaml-text.ts'

export interface YamlReading {
  /** Null where the YAML holds no mapping, or could not be read at all. */
  readonly front: FrontMap | null
  readonly findings: readonly Finding[]
}

const faultsShown = 8 // Faults of one file that are told; each costs one more reading.
const lettersRead = 160_000 // In all readings of one file: some seconds for the worst.

/** Reads YAML 1.2 as this format allows it. What could not be read is told and left out; the rest is kept. */
export function readYaml(source: NoteSource, span: Span): YamlReading {
  const original = source.text.slice(span.start, span.end)
  const whole: YamlText = { source, base: span.start, original, text: original }
  const faults: Fault[] = []
  let rounds = 0
  for (let text = original; ; ) {
    const marks = readMarks(text)
    const doc = parse(text)
    const fault = firstFault(doc, text, marks)
    if (fault === null) return treeOf(doc, { ...whole, text }, { marks, faults })
    if (!faults.some(({ start }) => lineAt(text, start).start === lineAt(text, fault.start).start)) faults.push(fault)
    rounds += 1
    if (rounds === faultsShown || rounds * text.length > lettersRead || fault.without === text)
      return { front: null, findings: told(whole, faults) }
    text = fault.without
  }
}

/** Every scalar stays text (`failsafe`); repeated keys are ours to tell; an alias is refused before anything follows it. */
function parse(text: string): Document {
  return parseDocument(text, {
    schema: 'failsafe',
    version: '1.2',
    merge: false,
    uniqueKeys: false,
    stringKeys: true,
    prettyErrors: false,
    logLevel: 'error',
  })
}

function treeOf(
  doc: Document,
  yaml: YamlText,
  { marks, faults }: { marks: Marks; faults: readonly Fault[] },
): YamlReading {
  const { front, findings } = frontTree(doc, yaml)
  const comments = hashComments(yaml.text, marks.comments).map(({ start, end, text, mend }) =>
    finding('hash-comment', placeInFile(yaml, { start, end }), {
      message: `Unexpected \`${text}\`, which YAML takes for a comment, expected the value in quotes, or a blank behind the \`#\` of a comment.`,
      mend,
    }),
  )
  const all = [...told(yaml, faults), ...findings, ...comments]
  if (front?.kind === 'map') return { front, findings: all }
  if (front === null || front.kind === 'nothing')
    return { front: faults.length > 0 ? null : emptyMap(yaml), findings: all }
  const message = `Unexpected ${front.kind === 'list' ? 'list' : `\`${shown(front.text.split('\n')[0] ?? '')}\``}, expected keys with values, such as \`title: …\`.`
  return { front: null, findings: [...all, finding('front-matter', front.place, { message })] }
}

function emptyMap(yaml: YamlText): FrontMap {
  return { kind: 'map', place: placeInFile(yaml, { start: 0, end: 0 }), entries: [] }
}

function told(yaml: YamlText, faults: readonly Fault[]): Finding[] {
  return faults.map(({ start, end, message, mend }) =>
    finding('front-matter', placeInFile(yaml, { start, end }), { message, mend }),
  )
}
