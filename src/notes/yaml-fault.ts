import { type Document, isCollection, isMap, isPair, isScalar, isSeq } from 'yaml'
import { faultWords } from './fault-words.ts'
import type { Fault } from './find-fences.ts'
import { hashComments } from './hash-comments.ts'
import type { Span } from './note-source.ts'
import type { Marks } from './read-marks.ts'
import type { Trouble } from './trouble.ts'
import { indentOf, lineAt, valueSpan, withoutEntry } from './yaml-lines.ts'

/** The first thing that YAML could not read, and the text without it: what else a note says is still read. */
interface YamlFault extends Fault {
  readonly without: string
}

export function firstFault(doc: Document, yaml: string, marks: Marks): YamlFault | null {
  const first = troublesOf(doc, marks).sort(earliestFirst)[0]
  if (!first) return null
  if (first.code === 'TAB_AS_INDENT') return { ...faultWords(first, yaml), without: withoutTabs(yaml) }
  const swallowed = swallowedBrace(first, yaml, marks)
  const culprit = culpritLine(first, yaml)
  const words = swallowed ?? faultWords(first, yaml)
  return { ...words, without: withoutEntry(yaml, culprit.line, culprit.indent) }
}

const weighedTroubles = 50 // One slip can make the reader fail ten thousand times behind it.

function troublesOf(doc: Document, { refused }: Marks): Trouble[] {
  const told = [...doc.errors, ...doc.warnings]
    .slice(0, weighedTroubles)
    .map(({ code, pos: [start, end], message }) => ({
      code,
      message,
      start,
      end,
    }))
  const marked = refused
    .slice(0, weighedTroubles)
    .map(({ what, start, end }) => ({ code: 'REFUSED' as const, message: what, start, end }))
  return [...told, ...marked].map(trouble => ({ ...trouble, around: enclosing(doc.contents, trouble) }))
}

function earliestFirst(a: Trouble, b: Trouble): number {
  return beginOf(a) - beginOf(b) || a.start - b.start || rank(a) - rank(b)
}

/** Of several at one place, the one whose words say most. */
function rank({ code }: Trouble): number {
  return ['REFUSED', 'MULTILINE_IMPLICIT_KEY', 'BLOCK_AS_IMPLICIT_KEY'].indexOf(code) >>> 0
}

function beginOf({ around, start }: Trouble): number {
  return around?.start ?? start
}

/** The line to leave out, and from which column on what follows belongs to it. */
function culpritLine(trouble: Trouble, yaml: string): { line: Span; indent: number } {
  const first = lineAt(yaml, beginOf(trouble))
  const last = lineAt(yaml, trouble.end)
  const deeper = indentOf(yaml, last) > indentOf(yaml, first)
  if (trouble.around === null && trouble.code === 'MULTILINE_IMPLICIT_KEY' && deeper)
    return { line: last, indent: indentOf(yaml, last) }
  const indent = indentOf(yaml, first)
  return {
    line: first,
    indent: trouble.code === 'BAD_INDENT' && trouble.around === null ? Math.max(1, indent) : indent + 1,
  }
}

/** Tabs before a line become as many spaces: the nesting that was meant mostly comes out. */
function withoutTabs(yaml: string): string {
  return yaml.replace(/^[ \t]+/gm, blanks => ' '.repeat(blanks.length))
}

/** `{ number: T-60 #2, cost: £5 }`: the comment took the closing brace with it. */
function swallowedBrace({ around, message, end }: Trouble, yaml: string, { comments }: Marks): Fault | null {
  if (around === null || !/end with a [}\]]/.test(message)) return null
  const hash = hashComments(yaml, comments).find(({ start }) => start > around.start && start < end)
  if (!hash) return null
  const closer = yaml[around.start] === '{' ? '}' : ']'
  const line = lineAt(yaml, hash.start)
  const taken = yaml.slice(hash.start, valueSpan(yaml, line).end)
  return {
    start: hash.start,
    end: hash.end,
    message: `Unexpected \`${taken}\`, which YAML takes for a comment with the closing \`${closer}\` in it, expected the value in quotes.`,
    mend: hash.mend,
  }
}

/** A quote ends where its closing mark stands; one without ends where the reader missed it. */
function enclosing(node: unknown, trouble: Pick<Trouble, 'start' | 'message'>): Span | null {
  if (isPair(node)) return enclosing(node.key, trouble) ?? enclosing(node.value, trouble)
  const range = isCollection(node) || isScalar(node) ? node.range : null
  if (!range || trouble.start < range[0] || trouble.start > range[1]) return null
  const span = { start: range[0], end: range[1] }
  if (isScalar(node))
    return node.type?.startsWith('QUOTE') && (trouble.start < range[1] || /closing/.test(trouble.message)) ? span : null
  if (isCollection(node) && node.flow) return span
  if (!isMap(node) && !isSeq(node)) return null
  for (const child of node.items) {
    const found = enclosing(child, trouble)
    if (found) return found
  }
  return null
}
