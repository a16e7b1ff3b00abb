import { CST, Lexer } from 'yaml'
import type { Span } from './note-source.ts'

/** What this format refuses of YAML, as words. */
const refusals = { alias: 'an alias', anchor: 'an anchor', tag: 'a tag', 'directive-line': 'a directive' } as const

interface RefusedMark extends Span {
  /** `an alias`, `a tag` … */
  readonly what: string
}

export interface Comment extends Span {
  /** Between braces or brackets. */
  readonly inFlow: boolean
}

export interface Marks {
  readonly refused: readonly RefusedMark[]
  readonly comments: readonly Comment[]
}

/** Aliases, anchors, tags, directives and comments of a YAML text, each where it stands. */
export function readMarks(yaml: string): Marks {
  const refused: RefusedMark[] = []
  const comments: Comment[] = []
  let depth = 0
  for (const { type, start, end } of lexemesOf(yaml)) {
    if (type === 'flow-map-start' || type === 'flow-seq-start') depth += 1
    if (type === 'flow-map-end' || type === 'flow-seq-end') depth -= 1
    if (type === 'flow-error-end') depth = 0
    if (type === 'comment') comments.push({ start, end, inFlow: depth > 0 })
    if (type !== null && type in refusals) refused.push({ start, end, what: refusals[type as keyof typeof refusals] })
  }
  return { refused, comments }
}

function* lexemesOf(yaml: string): Generator<Span & { type: CST.TokenType | null }> {
  if (!/[#&*!%]/.test(yaml)) return // Most notes hold none: no second pass over them.
  let start = 0
  let scalar = false
  for (const lexeme of new Lexer().lex(yaml)) {
    const type = scalar ? null : CST.tokenType(lexeme)
    scalar = lexeme === CST.SCALAR
    const silent = scalar || lexeme === CST.DOCUMENT || lexeme === CST.FLOW_END // No part of the text.
    const end = start + (silent ? 0 : lexeme.length)
    yield { type, start, end }
    start = end
  }
}
