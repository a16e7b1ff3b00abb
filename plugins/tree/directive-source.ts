import type { Position } from 'unist'
import { positionAt, type Source, type Span } from './source.ts'

/** The pieces of `:name[label]{attributes}` as they were written. */
export interface DirectiveSource {
  readonly colons: number
  /** Where the name ends. */
  readonly nameEnd: number
  /** Inside the square brackets. */
  readonly label: Span | null
  /** Inside the braces. */
  readonly attributes: Span | null
  /** Where all of it ends. */
  readonly end: number
}

const colons = /:*/uy
const name = /[^\s!-,./:-@[-^`{-~]*/uy

/** Reads a directive's head again, for the places that the parser does not keep. */
export function directiveSource(source: string, span: Span): DirectiveSource {
  const count = lengthAt(colons, source, span.start)
  const nameEnd = span.start + count + lengthAt(name, source, span.start + count)
  const label = source.charAt(nameEnd) === '[' ? labelAt(source, { start: nameEnd + 1, end: span.end }) : null
  const labelEnd = label === null ? nameEnd : label.end + 1
  const attributes =
    source.charAt(labelEnd) === '{' ? attributesAt(source, { start: labelEnd + 1, end: span.end }) : null
  return { colons: count, nameEnd, label, attributes, end: attributes === null ? labelEnd : attributes.end + 1 }
}

function lengthAt(pattern: RegExp, source: string, at: number): number {
  pattern.lastIndex = at
  return pattern.exec(source)?.[0].length ?? 0
}

/** Up to the bracket that closes the label: inner pairs are counted, escaped brackets not. */
function labelAt(source: string, span: Span): Span | null {
  let depth = 0
  for (let at = span.start; at < span.end; at++) {
    const written = source.charAt(at)
    if (written === '\\') at++
    else if (written === '[') depth++
    else if (written === ']' && depth-- === 0) return { start: span.start, end: at }
  }
  return null
}

/** Up to the brace that closes the attributes; a quote counts only behind `=`. */
function attributesAt(source: string, span: Span): Span | null {
  let quote = ''
  let before = ''
  for (let at = span.start; at < span.end; at++) {
    const written = source.charAt(at)
    if (quote !== '') quote = written === quote ? '' : quote
    else if (written === '}') return { start: span.start, end: at }
    else if ((written === '"' || written === "'") && before === '=') quote = written
    if (!/\s/u.test(written)) before = written
  }
  return null
}

//                 #id          .class         name                                    =  "value"      'value'      value
const attribute =
  /#([^\s#.}]+)|\.([^\s#.}]+)|([\p{L}\p{N}_-][\p{L}\p{N}_.:-]*)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'<=>`}]+)))?/dgu

/** Where the value of each attribute stands; of one written twice, the last, which is the one that counts. */
export function attributePositions(source: Source, span: Span): Record<string, Position> {
  const found = directiveSource(source.text, span).attributes
  const places = new Map<string, Position>()
  if (found === null) return {}
  for (const match of source.text.slice(found.start, found.end).matchAll(attribute)) {
    const value =
      match.indices?.[1] ??
      match.indices?.[2] ??
      match.indices?.[4] ??
      match.indices?.[5] ??
      match.indices?.[6] ??
      match.indices?.[3]
    const key = match[3] ?? (match[1] === undefined ? 'class' : 'id')
    if (value === undefined) continue
    places.set(key, positionAt(source, { start: found.start + value[0], end: found.start + value[1] }))
  }
  return Object.fromEntries(places)
}
