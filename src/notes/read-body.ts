import type { Root } from 'mdast'
import remarkDirective from 'remark-directive'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { VFile } from 'vfile'
import type { VFileMessage } from 'vfile-message'
import connector from '../../plugins/connector/index.ts'
import directives from '../../plugins/directives/index.ts'
import figures from '../../plugins/figures/index.ts'
import jobs from '../../plugins/jobs/index.ts'
import markedPlaces from '../../plugins/marked-places/index.ts'
import measure from '../../plugins/measure/index.ts'
import privateMarks from '../../plugins/private/index.ts'
import quantities from '../../plugins/quantities/index.ts'
import tables from '../../plugins/tables/index.ts'
import things from '../../plugins/things/index.ts'
import { type Finding, finding, type Rule, severityOf } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import { bodyOverLimit, depthLimit, isTooDeep } from './body-limits.ts'
import type { NoteOptions } from './note.ts'
import { linesOf } from './note-lines.ts'

export interface Body {
  readonly body: Root
  readonly findings: readonly Finding[]
}

/** Reads Markdown into a tree with the nodes of `plugins/`. A body over the limits stays unread, which a finding says. */
export function readBody(file: string, text: string, options: NoteOptions): Body {
  const over = bodyOverLimit(text, linesOf(text))
  if (over) return unread(file, over.line, over.message)
  try {
    return parse(file, text, options)
  } catch (error) {
    if (error instanceof RangeError)
      return unread(file, 1, 'Unexpected nesting that overflows the reader, expected a plainer text')
    throw new Error(`The body of ${file} could not be read, which is a fault of oddleg`, { cause: error })
  }
}

function parse(file: string, text: string, options: NoteOptions): Body {
  const processor = processorFor(options)
  const vfile = new VFile({ path: file, value: text })
  const tree = processor.parse(vfile)
  if (isTooDeep(tree))
    return unread(file, 1, `Unexpected nesting of over ${depthLimit} levels, expected a plainer text`)
  return { body: processor.runSync(tree, vfile), findings: vfile.messages.map(message => toFinding(file, message)) }
}

const processors = new Map<string, ReturnType<typeof makeProcessor>>()

/** One chain for each reading of units: building it costs more than a short note. */
function processorFor(options: NoteOptions): ReturnType<typeof makeProcessor> {
  const key = JSON.stringify([options.gallon, options.mil, options.decimal])
  const made = processors.get(key) ?? makeProcessor(options)
  processors.set(key, made)
  return made
}

function makeProcessor(options: NoteOptions) {
  return unified()
    .use(remarkParse)
    .use(remarkGfm, { singleTilde: false }) // `~64 L~` is about 64 L, no deletion.
    .use(remarkDirective)
    .use(directives)
    .use(measure, options)
    .use(privateMarks)
    .use(connector)
    .use(jobs)
    .use(tables)
    .use(figures)
    .use(markedPlaces)
    .use(things)
    .use(quantities, options)
    .freeze()
}

function toFinding(file: string, { ruleId, reason, note, line, column, place }: VFileMessage): Finding {
  if (ruleId === undefined || !isRule(ruleId))
    throw new Error(`Unexpected rule \`${ruleId}\` from a plugin, expected one of src/findings/finding.ts`)
  const start = { line: line ?? 1, column: column ?? 1 }
  const end = place && 'end' in place ? place.end : start
  return finding(
    ruleId,
    { file, ...start, endLine: end.line, endColumn: end.column },
    { message: reason, mend: note ?? null },
  )
}

function isRule(name: string): name is Rule {
  return Object.hasOwn(severityOf, name)
}

function unread(file: string, line: number, message: string): Body {
  const place: Place = { file, line, column: 1, endLine: line, endColumn: 1 }
  return {
    body: emptyBody(),
    findings: [finding('unreadable-note', place, { message: `${message}: the text of this note is not read.` })],
  }
}

export function emptyBody(): Root {
  return { type: 'root', children: [] }
}
