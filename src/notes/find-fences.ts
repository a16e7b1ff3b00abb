import { isFence, isKey, isOddFence, isYamlLike, type Line, linesOf } from './note-lines.ts'
import type { NoteSource, Span } from './note-source.ts'
import { shown } from './trouble.ts'

/** What is wrong with a fence, or with the YAML between two: a sentence, its place, and what to write instead. */
export interface Fault extends Span {
  readonly message: string
  readonly mend: string | null
}

/** Where front matter stands in a note. */
export interface Fences {
  /** The opening fence; empty, at the start of the file, where there is none. */
  readonly fence: Span
  /** What stands behind the opening `---`, such as `js`. */
  readonly language: string
  /** From behind the opening fence to the line end before the closing one; null where there is no front matter. */
  readonly raw: Span | null
  readonly bodyStart: number
  readonly faults: readonly Fault[]
}

/** Front matter opens on line 1 with `---` alone and closes with the next line that is `---` alone; near misses are told and read on. */
export function findFences({ text }: NoteSource): Fences {
  const lines = linesOf(text)
  const opening = findOpening(lines)
  if (opening === null) return { fence: { start: 0, end: 0 }, language: '', raw: null, bodyStart: 0, faults: [] }
  const open = lines[opening.index] as Line
  const closing = findClosing(lines, opening.index)
  const rawStart = open.start + (opening.language === '' ? open.text.length : 3)
  return {
    fence: { start: open.start, end: open.start + open.text.trimEnd().length },
    language: opening.language,
    raw: { start: rawStart, end: Math.max(rawStart, closing.yamlEnd) },
    bodyStart: closing.bodyStart,
    faults: [opening.fault, closing.fault].filter(fault => fault !== null),
  }
}

interface Opening {
  readonly index: number
  readonly language: string
  readonly fault: Fault | null
}

function findOpening(lines: readonly Line[]): Opening | null {
  const first = lines[0]
  if (first && isFence(first.text)) return { index: 0, language: '', fault: null }
  const language = /^---[ \t]*([^-\s].*?)[ \t]*$/.exec(first?.text ?? '')?.[1]
  if (first && language) return { index: 0, language, fault: languageFault(first, language) }
  const index = lines.slice(0, searchedLines).findIndex((_, at) => opensFrontMatter(lines, at))
  const line = lines[index]
  if (!line) return null
  return { index, language: '', fault: openingFault(lines, index) }
}

const searchedLines = 40 // Front matter further down is taken for prose.

/** A fence, or what was meant as one, with a key behind it and nothing but YAML down to the next fence. */
function opensFrontMatter(lines: readonly Line[], at: number): boolean {
  const written = lines[at]?.text.trim() ?? ''
  if (!isFence(written) && !isOddFence(written)) return false
  const inside = lines.slice(at + 1)
  const end = inside.findIndex(({ text }) => isFence(text) || isOddFence(text))
  return end > 0 && isKey(inside[0]?.text ?? '') && inside.slice(0, end).every(({ text }) => isYamlLike(text))
}

function languageFault(line: Line, language: string): Fault {
  const message = `Unexpected \`${shown(language)}\` behind the opening \`---\`, expected \`---\` alone: front matter is YAML, and nothing else is read or run.`
  return { start: line.start, end: line.start + line.text.trimEnd().length, message, mend: '---' }
}

function openingFault(lines: readonly Line[], index: number): Fault | null {
  const line = lines[index] as Line
  const written = line.text.trim()
  const span = { start: line.start, end: line.start + line.text.trimEnd().length }
  if (!isFence(written) || line.text.trimStart() !== line.text)
    return {
      ...span,
      message: `Unexpected \`${line.text.trimEnd()}\` above front matter, expected \`---\` alone on line 1.`,
      mend: '---',
    }
  const blank = lines.slice(0, index).every(({ text }) => text.trim() === '')
  if (blank)
    return { ...span, message: 'Unexpected blank line before front matter, expected `---` on line 1.', mend: null }
  const words = lines.find(({ text }) => text.trim() !== '')?.text.trim()
  return {
    ...span,
    message: `Unexpected \`${shown(words ?? '')}\` before front matter, expected \`---\` on line 1: move the text below the closing \`---\`.`,
    mend: null,
  }
}

interface Closing {
  readonly yamlEnd: number
  readonly bodyStart: number
  readonly fault: Fault | null
}

function findClosing(lines: readonly Line[], opening: number): Closing {
  const index = lines.findIndex(({ text }, at) => at > opening && (isFence(text) || isOddFence(text)))
  const line = lines[index]
  if (!line) return guessClosing(lines, opening)
  const written = line.text.trimEnd()
  const closing = { yamlEnd: line.start - 1, bodyStart: line.next }
  if (isFence(line.text)) return { ...closing, fault: null }
  const message = `Unexpected \`${written}\` below front matter, expected \`---\` alone to close it.`
  return { ...closing, fault: { start: line.start, end: line.start + written.length, message, mend: '---' } }
}

/** Without a closing fence front matter is taken to end with its last key before the first line that is no YAML. */
function guessClosing(lines: readonly Line[], opening: number): Closing {
  let last = opening
  for (let at = opening + 1; at < lines.length; at += 1) {
    const { text } = lines[at] as Line
    if (!isYamlLike(text)) break
    if (text.trim() !== '' && !text.startsWith('#')) last = at
  }
  const open = lines[opening] as Line
  const end = lines[last] as Line
  const message = 'Unexpected end of the note inside front matter, expected a second line `---` to close it.'
  const fault = { start: open.start, end: open.start + open.text.trimEnd().length, message, mend: null }
  return { yamlEnd: end.start + end.text.length, bodyStart: end.next, fault }
}
