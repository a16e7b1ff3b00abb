import type { Nodes, Text } from 'mdast'
import type { Position } from 'unist'
import type { Quantity, ReadingDoubt, ReadOptions } from '../../src/quantities/quantity.ts'
import { readQuantities } from '../../src/quantities/read-quantities.ts'
import type { QuantityNode } from '../quantities/node.ts'
import { countUpTo } from './count-up-to.ts'
import { type InlineRun, type TextPiece, valueSpan } from './inline-run.ts'
import { positionAt, type Source, type Span, spanOf } from './source.ts'
import { placeOf, type TextOffsets, textOffsets } from './text-offsets.ts'
import { rewrite } from './walk.ts'

/** A figure read in a run, and the text node in which the most of it stands. */
export interface Figure {
  readonly quantity: Quantity
  readonly node: Text
  /** Its place in the node's value. */
  readonly span: Span
  readonly run: InlineRun
}

/** A doubt with its place in the file. */
export interface PlacedDoubt extends ReadingDoubt {
  readonly position: Position | undefined
}

/** Reads the figures of one run, and what could not be read as one thing only. */
export function readFigures(
  run: InlineRun,
  source: Source,
  options: ReadOptions,
): { figures: Figure[]; doubts: PlacedDoubt[] } {
  const { readings, doubts } = readQuantities(run.text, options)
  const known: KnownOffsets = { source, byNode: new Map() }
  return {
    figures: readings.flatMap(({ quantity, start, end }) => {
      const piece = mainPiece(run, { start, end })
      return piece === null
        ? []
        : [{ quantity: withSign(quantity), node: piece.node, span: valueSpan(piece, { start, end }), run }]
    }),
    doubts: doubts.map(doubt => ({ ...doubt, position: doubtPosition(run, doubt, known) })),
  }
}

/** `2.5 mm<sup>2</sup>` is told of as `2.5 mm²`. */
function withSign(quantity: Quantity): Quantity {
  if (!quantity.text.includes('<')) return quantity
  const text = quantity.text.replace(/<sup>([23])<\/sup>/iu, (_, power) => (power === '2' ? '²' : '³'))
  return { ...quantity, text }
}

/** Of `about **64 L**` the words in bold: the text that holds the most digits, or of a figure in words the longest. */
function mainPiece(run: InlineRun, span: Span): TextPiece | null {
  let main: TextPiece | null = null
  let weight = 0
  const first = countUpTo(run.starts, span.start) - 1
  for (let index = Math.max(0, first); index < run.pieces.length; index++) {
    const piece = run.pieces[index]
    if (piece === undefined || piece.from >= span.end) break
    const own = weightOf(piece, span)
    if (own <= weight) continue
    main = piece
    weight = own
  }
  return main
}

function weightOf(piece: TextPiece, span: Span): number {
  const { start, end } = valueSpan(piece, span)
  const digits = piece.node.value.slice(start, end).match(/\p{N}/gu)?.length ?? 0
  return digits * span.end + Math.max(0, end - start)
}

/** The offsets of texts that were asked for before: many doubts in one text stay linear. */
interface KnownOffsets {
  readonly source: Source
  readonly byNode: Map<Text, TextOffsets | null>
}

function doubtPosition(run: InlineRun, doubt: ReadingDoubt, known: KnownOffsets): Position | undefined {
  const piece = mainPiece(run, doubt)
  if (piece === null) return undefined
  const { node } = piece
  if (!known.byNode.has(node)) known.byNode.set(node, offsetsOf(node, known.source, run.quotes))
  const offsets = known.byNode.get(node) ?? null
  return offsets === null ? node.position : positionAt(known.source, placeOf(offsets, valueSpan(piece, doubt)))
}

function offsetsOf(node: Text, source: Source, quotes: number): TextOffsets | null {
  const span = spanOf(node)
  return span === null ? null : textOffsets({ value: node.value, source: source.text, span, quotes })
}

/** Puts a `quantity` node in the place of each figure, the words around it kept with their places. */
export function putFigures(tree: Nodes, source: Source, figures: readonly Figure[]): void {
  const byNode = new Map<Nodes, Figure[]>()
  for (const figure of figures) {
    const own = byNode.get(figure.node)
    if (own === undefined) byNode.set(figure.node, [figure])
    else own.push(figure)
  }
  if (byNode.size === 0) return
  rewrite(tree, node => {
    const own = byNode.get(node)
    return own === undefined || node.type !== 'text' ? null : split(node, source, own)
  })
}

function split(node: Text, source: Source, figures: readonly Figure[]): Nodes[] {
  const offsets = offsetsOf(node, source, figures[0]?.run.quotes ?? 0)
  const placed = (span: Span): { position?: Position } =>
    offsets !== null
      ? { position: positionAt(source, placeOf(offsets, span)) }
      : node.position === undefined
        ? {}
        : { position: node.position }
  const text = (span: Span): Text[] =>
    span.end > span.start ? [{ type: 'text', value: node.value.slice(span.start, span.end), ...placed(span) }] : []
  const next: Nodes[] = []
  let from = 0
  for (const { quantity, span } of figures) {
    if (span.start < from) continue
    const figure: QuantityNode = {
      type: 'quantity',
      value: node.value.slice(span.start, span.end),
      quantity,
      ...placed(span),
    }
    next.push(...text({ start: from, end: span.start }), figure)
    from = span.end
  }
  next.push(...text({ start: from, end: node.value.length }))
  return next
}
