import type { Nodes, Text } from 'mdast'
import type { QuantityNode } from '../../plugins/quantities/node.ts'
import type { Place } from '../findings/place.ts'
import { placeOfNodes, placeOfPosition } from './body-place.ts'
import { wordsOf } from './body-words.ts'
import { enterFigure, type FigureAsked, type FigureRead } from './enter-figure.ts'
import { expectedFigure } from './expected-figure.ts'
import { figuresIn } from './figures-in.ts'
import { quoted } from './quoted.ts'
import { readValue } from './read-figure.ts'
import { report, type Sheet } from './sheet.ts'

/**
 * The one figure that nodes of the body hold, entered under its path; its node takes the figure's name.
 * What the reader of figures could not read was reported with the body, and is not reported again.
 */
export function figureOf(sheet: Sheet, nodes: readonly Nodes[], asked: FigureAsked): FigureRead | null {
  const figures = figuresIn(nodes)
  const [first] = figures
  if (first !== undefined && figures.length === 1) return enterNode(sheet, first, asked)
  const read = wordsOf(nodes, { file: sheet.file, privacy: [] })
  if (read === null) return null
  const quantity = first === undefined ? readValue(read.words.text, asked.dimensions, sheet.options) : null
  const bare = textWith(nodes, read.words.text)
  if (quantity !== null)
    return bare === null
      ? enterFigure(sheet, { quantity, place: read.place }, asked)
      : enterNode(sheet, toFigure(bare, quantity), asked)
  if (isReported(sheet, read.place)) return null
  const message = `Unexpected ${quoted(read.words.text)} for \`${asked.path}\`, expected ${expectedFigure(asked.dimensions)}`
  report(sheet, 'not-a-quantity', { place: read.place, message, about: [asked.path] })
  return null
}

/** Enters a figure of the body, and gives its node the same name. */
export function enterNode(sheet: Sheet, node: QuantityNode, asked: FigureAsked): FigureRead | null {
  const place =
    node.position === undefined ? placeOfNodes([node], sheet.file) : placeOfPosition(node.position, sheet.file)
  if (place === null) return null
  const before = sheet.figures.length
  const read = enterFigure(sheet, { quantity: node.quantity, place }, asked)
  node.id = sheet.figures[before]?.id ?? ''
  return read
}

/** The text node that holds these words and nothing else. */
function textWith(nodes: readonly Nodes[], words: string): Text | null {
  for (const node of nodes) {
    if (node.type === 'text' && node.value.trim() === words) return node
    const within = 'children' in node ? textWith(node.children, words) : null
    if (within !== null) return within
  }
  return null
}

/** A bare number such as `4.30` was left as text, since only its property says that it needs no unit. */
function toFigure(text: Text, quantity: QuantityNode['quantity']): QuantityNode {
  return Object.assign<Text, Pick<QuantityNode, 'type' | 'quantity'>>(text, { type: 'quantity', quantity })
}

/** True where a mistake in that stretch was reported already. */
function isReported(sheet: Sheet, { line, column, endLine, endColumn }: Place): boolean {
  const isAfter = (found: Place): boolean =>
    found.line > endLine || (found.line === endLine && found.column >= endColumn)
  const isBefore = (found: Place): boolean =>
    found.endLine < line || (found.endLine === line && found.endColumn <= column)
  return sheet.reported.some(found => !isAfter(found) && !isBefore(found))
}
