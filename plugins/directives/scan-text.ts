import type { Span } from '../tree/source.ts'
import type { FailedMark } from './failed-mark.ts'
import { isMark, nearName } from './names.ts'

/** What a stretch of plain text holds of marks: failed ones, and the fences that pair. */
export type TextMark =
  | ({ readonly kind: 'failed' } & FailedMark)
  | ({ readonly kind: 'opening' } & FailedMark)
  /** `:::warning`: a container that the tool does not know, plain words with a fence to close them. */
  | { readonly kind: 'word-opening'; readonly span: Span }
  | { readonly kind: 'closing'; readonly span: Span }

const run = /:+/gu
const nameBehind = /[^\s!-,./:-@[-^`{-~]+/uy

/** Scans the source of a text. `opensLine`: whether its first character is the first of a line. */
export function scanText(source: string, span: Span, opensLine: boolean): TextMark[] {
  const marks: TextMark[] = []
  const text = source.slice(span.start, span.end)
  for (const { 0: colons, index } of text.matchAll(run)) {
    if (isEscaped(text, index)) continue
    const mark = markAt(text, {
      colons: colons.length,
      index,
      isFence: colons.length > 2 && beginsLine(text, index, opensLine),
    })
    if (mark !== null)
      marks.push({ ...mark, span: { start: mark.span.start + span.start, end: mark.span.end + span.start } })
  }
  return marks
}

interface ColonRun {
  readonly colons: number
  readonly index: number
  readonly isFence: boolean
}

function markAt(text: string, { colons, index, isFence }: ColonRun): TextMark | null {
  const after = index + colons
  nameBehind.lastIndex = after
  const name = nameBehind.exec(text)?.[0] ?? ''
  const span = { start: index, end: after + name.length }
  if (name === '') return isFence ? fenceAt(text, span) : null
  const next = text
    .slice(span.end, span.end + 2)
    .trimStart()
    .charAt(0)
  const near = isMark({ colons, name, next }) ? nearName(name) : null
  if (near === null) return isFence ? { kind: 'word-opening', span } : null
  const written = ':'.repeat(colons) + name
  const reason = near.exact
    ? `Unexpected \`${written}\` that did not parse, expected ${isFence ? `\`${written}{…}\` alone on its line` : `\`:${name}[…]{…}\``}`
    : `Unexpected directive \`${name}\`, expected \`${near.name}\``
  return {
    kind: isFence ? 'opening' : 'failed',
    span,
    reason,
    mend: near.exact ? null : ':'.repeat(colons) + near.name,
  }
}

/** `:::` alone on its line closes; with a blank and words behind it was meant to open. */
function fenceAt(text: string, span: Span): TextMark | null {
  const rest = /^[ \t]*([^\r\n]?)/u.exec(text.slice(span.end))?.[1] ?? ''
  if (rest === '') return { kind: 'closing', span }
  if (!/[ \t]/u.test(text.charAt(span.end))) return null
  const fence = text.slice(span.start, span.end)
  return {
    kind: 'opening',
    span,
    reason: `Unexpected blank behind \`${fence}\`, expected its name at once, such as \`${fence}private{as=place}\``,
    mend: null,
  }
}

function beginsLine(text: string, index: number, opensLine: boolean): boolean {
  let at = index - 1
  while (at >= 0 && /[ \t>]/u.test(text.charAt(at))) at--
  return at < 0 ? opensLine : /[\r\n]/u.test(text.charAt(at))
}

function isEscaped(text: string, index: number): boolean {
  let at = index - 1
  while (text.charAt(at) === '\\') at--
  return (index - at) % 2 === 0
}
