import type { Scalar } from 'yaml'
import type { FrontNothing, FrontScalar } from './front.ts'
import { scalarPieces, type WrittenScalar } from './scalar-pieces.ts'
import { placeInFile, type YamlText } from './yaml-text.ts'

/** A scalar as it was written, or nothing for an empty one, `~` and `null` without quotes. */
export function toScalar(node: Scalar, yaml: YamlText): FrontScalar | FrontNothing {
  const text = String(node.value)
  const [start, end] = node.range ?? [0, 0]
  const style = styles[node.type ?? 'PLAIN']
  const place = placeInFile(yaml, { start, end: style === 'block' ? endOfWords(yaml.text, end) : end })
  if (style === 'plain' && /^(?:~|null|Null|NULL)?$/.test(text)) return { kind: 'nothing', place }
  const inside = writtenWithin(yaml.text.slice(start, end), style)
  const pieces = scalarPieces(yaml.source, {
    style,
    text,
    written: inside.written,
    at: yaml.base + start + inside.lead,
  })
  return { kind: 'scalar', place, text, quoted: style !== 'plain', pieces }
}

const styles = {
  PLAIN: 'plain',
  QUOTE_SINGLE: 'single',
  QUOTE_DOUBLE: 'double',
  BLOCK_LITERAL: 'block',
  BLOCK_FOLDED: 'block',
} as const satisfies Record<NonNullable<Scalar['type']>, WrittenScalar['style']>

/** What a scalar's text comes from: without its quotes, or the `|` line of a block. */
function writtenWithin(whole: string, style: WrittenScalar['style']): { written: string; lead: number } {
  if (style === 'plain') return { written: whole, lead: 0 }
  const lead = style === 'block' ? whole.indexOf('\n') + 1 || whole.length : 1
  return { written: style === 'block' ? whole.slice(lead) : whole.slice(1, -1), lead }
}

function endOfWords(text: string, end: number): number {
  return text.slice(0, end).trimEnd().length
}
