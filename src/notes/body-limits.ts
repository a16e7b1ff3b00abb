import type { Root } from 'mdast'
import type { Parent } from 'unist'
import type { Line } from './note-lines.ts'

// Far beyond any session note, and set by measurement: the reader's time grows with the square of a paragraph's marks and of
// nested blocks. Within these limits the worst Markdown that we could think of reads in seconds, not in minutes.
const bodyLimitKb = 256 // about 45,000 words
const marksLimit = 2000 // of * _ ~ [ ] without an empty line between
const nestingLimit = 50 // quotes, lists and containers within each other, as written
export const depthLimit = 200 // levels of the tree that came out

/** Why a body is not read as Markdown, and at which line; null where nothing stands against it. */
interface OverLimit {
  readonly line: number
  readonly message: string
}

export function bodyOverLimit(body: string, lines: readonly Line[]): OverLimit | null {
  const kb = Math.ceil(Buffer.byteLength(body) / 1024)
  if (kb > bodyLimitKb)
    return { line: 1, message: `Unexpected ${kb} KB of text in one note, expected at most ${bodyLimitKb} KB` }
  return tooManyMarks(lines) ?? tooDeeplyNested(lines)
}

function tooManyMarks(lines: readonly Line[]): OverLimit | null {
  let marks = 0
  for (const [index, { text }] of lines.entries()) {
    marks = text.trim() === '' ? 0 : marks + (text.match(/[*_~[\]]/g)?.length ?? 0)
    if (marks > marksLimit)
      return {
        line: index + 1,
        message: `Unexpected ${marks} marks such as \`*\` and \`[\` without an empty line between, expected at most ${marksLimit}`,
      }
  }
  return null
}

function tooDeeplyNested(lines: readonly Line[]): OverLimit | null {
  let containers = 0
  for (const [index, { text }] of lines.entries()) {
    const lead = /^(?:[ \t]*(?:>|[-+*](?=[ \t])|\d{1,9}[.)](?=[ \t])))*/.exec(text)?.[0] ?? ''
    const own = text.slice(lead.length).trim()
    if (/^:{3,}[A-Za-z]/.test(own)) containers += 1
    if (/^:{3,}$/.test(own)) containers = Math.max(0, containers - 1)
    const levels = containers + (lead.match(/[^ \t\d]/g)?.length ?? 0)
    if (levels > nestingLimit && !isRule(text))
      return {
        line: index + 1,
        message: `Unexpected ${levels} quotes, lists and containers within each other, expected at most ${nestingLimit}`,
      }
  }
  return null
}

/** `- - -` is no list. */
function isRule(line: string): boolean {
  return /^[ \t]*([-*])(?:[ \t]*\1)+[ \t]*$/.test(line)
}

/** Whether a tree is deeper than what later stages may walk; itself walked without recursion. */
export function isTooDeep(tree: Root): boolean {
  let level: readonly Parent[] = [tree]
  for (let depth = 0; depth <= depthLimit; depth += 1) {
    level = level.flatMap(({ children }) => children.filter((child): child is Parent => 'children' in child))
    if (level.length === 0) return false
  }
  return true
}
