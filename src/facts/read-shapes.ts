import type { Place } from '../findings/place.ts'
import { type Front, type FrontScalar, placeWithin } from '../notes/front.ts'
import type { Quantity, Reading } from '../quantities/quantity.ts'
import { readOneQuantity } from '../quantities/read-one-quantity.ts'
import { readQuantities } from '../quantities/read-quantities.ts'
import { reportDimension } from './enter-figure.ts'
import type { PlacedShape, Shape } from './fact.ts'
import { itemsOf, scalarOf } from './front-tree.ts'
import { withOwnGroups } from './own-groups.ts'
import { quotedFront } from './quoted.ts'
import { placeOfText, sliceScalar } from './scalar-text.ts'
import { addFigure, report, type Sheet } from './sheet.ts'

const expected =
  'a shape such as `box 860 x 380 x 300 mm`, `cylinder 300 x 860 mm` or `prism of [0,0] [520,0] [520,140] x 640 mm`'

/** Volumes in words: one, or a list of them. What cannot be read is reported and left out. */
export function readShapes(sheet: Sheet, front: Front, path: string): PlacedShape[] {
  return itemsOf(front).flatMap(one => {
    const scalar = scalarOf(one)
    if (scalar !== null) return readShape(sheet, sliceScalar(scalar, 0), path) ?? []
    reportShape(sheet, one, path)
    return []
  })
}

function reportShape(sheet: Sheet, front: Front, path: string): void {
  const message = `Unexpected ${quotedFront(front)} for \`${path}\`, expected ${expected}`
  report(sheet, 'not-a-quantity', { place: placeOfText(front), message, about: [path] })
}

function readShape(sheet: Sheet, scalar: FrontScalar, path: string): PlacedShape | null {
  const [lead = '', word = ''] = /^(box|cylinder|prism)(?:\s+of)?\s+/i.exec(scalar.text) ?? []
  const form = word.toLowerCase()
  const from = lead.length
  const read = form === 'prism' ? readPrism(scalar, sheet, from) : readSolid(scalar, sheet, { form, from })
  const placeOf = (span: Span): Place => placeWithin(scalar.pieces, sheet.file, span)
  const other = read?.lengths.find(({ quantity }) => quantity.dimension !== 'length')
  if (other !== undefined) {
    const asked = { path, role: 'volume', dimensions: ['length'] } as const
    reportDimension(sheet, { quantity: other.quantity, place: placeOf(other) }, asked)
  } else if (read === null || read.shape === null) reportShape(sheet, scalar, path)
  if (other !== undefined || read === null || read.shape === null) return null
  const figures = read.lengths.map(({ quantity, ...span }) =>
    addFigure(sheet, { quantity, place: placeOf(span), role: 'volume', path }),
  )
  return { text: scalar.text, shape: read.shape, place: placeOfText(scalar), figures }
}

interface Span {
  readonly start: number
  readonly end: number
}

interface ShapeRead {
  readonly lengths: readonly Reading[]
  readonly shape: Shape | null
}

/** `860 x 380 x 300 mm` of a box, `300 x 860 mm` of a cylinder; nothing but crosses may stand between. */
function readSolid(
  scalar: FrontScalar,
  sheet: Sheet,
  { form, from }: { form: string; from: number },
): ShapeRead | null {
  const lengths = lengthsFrom(scalar.text, sheet, from)
  const [a, b, c] = lengths.map(({ quantity }) => quantity)
  if (lengths.length === 0 || !onlyCrosses(scalar.text.slice(from), lengths, from)) return null
  if (form === 'box' && a && b && c && lengths.length === 3)
    return { lengths, shape: { form: 'box', length: a, width: b, height: c } }
  if (form === 'cylinder' && a && b && lengths.length === 2)
    return { lengths, shape: { form: 'cylinder', diameter: a, length: b } }
  return { lengths: lengths.filter(({ quantity }) => quantity.dimension !== 'length'), shape: null }
}

/** Figures from a position on. */
function lengthsFrom(text: string, sheet: Sheet, from: number): Reading[] {
  const { readings } = readQuantities(text.slice(from), sheet.options)
  return withOwnGroups(sheet, readings).map(({ quantity, start, end }) => ({
    quantity,
    start: start + from,
    end: end + from,
  }))
}

function onlyCrosses(text: string, lengths: readonly Reading[], from: number): boolean {
  const letters = [...text].map((letter, at) =>
    lengths.some(({ start, end }) => at + from >= start && at + from < end) ? ' ' : letter,
  )
  return /^[\sx×*]*$/i.test(letters.join(''))
}

/** `[0,0] [520,0] [520,140] x 640 mm`: corners in the unit that ends it. */
function readPrism(scalar: FrontScalar, sheet: Sheet, from: number): ShapeRead | null {
  const [outline = ''] = /^(?:\s*\[[^\]]*\],?)+/.exec(scalar.text.slice(from)) ?? []
  const end = from + outline.length
  const lengths = lengthsFrom(scalar.text, sheet, end)
  const [length] = lengths
  if (length === undefined || lengths.length > 1 || !onlyCrosses(scalar.text.slice(end), lengths, end)) return null
  if (length.quantity.dimension !== 'length') return { lengths, shape: null }
  const [, unit = 'mm'] = /([^\d\s.,]+)$/.exec(length.quantity.text) ?? []
  const corners = [...outline.matchAll(/\[([^\]]*)\]/g)].map(match =>
    cornerOf(match[1] ?? '', { at: from + match.index + 1, unit, sheet }),
  )
  const pairs = corners.flatMap(corner => (corner === null ? [] : [corner]))
  if (pairs.length < 3 || pairs.length < corners.length) return null
  const shape: Shape = {
    form: 'prism',
    corners: pairs.map(([x, y]) => [x.quantity, y.quantity] as const),
    length: length.quantity,
  }
  return { lengths: [...pairs.flat(), length], shape }
}

/** `520,140` as two lengths. */
function cornerOf(
  text: string,
  { at, unit, sheet }: { at: number; unit: string; sheet: Sheet },
): readonly [Reading, Reading] | null {
  const parts = text.split(text.includes(';') ? ';' : ',')
  let start = at
  const readings = parts.flatMap(part => {
    const lead = part.length - part.trimStart().length
    const written = part.trim()
    const quantity: Quantity | null = /^[-−]?\d/.test(written)
      ? readOneQuantity(`${written} ${unit}`, sheet.options)
      : null
    const reading = { quantity, start: start + lead, end: start + lead + written.length }
    start += part.length + 1
    return reading.quantity === null ? [] : [{ ...reading, quantity: { ...reading.quantity, text: written } }]
  })
  const [x, y] = readings
  return x === undefined || y === undefined || parts.length !== 2 ? null : [x, y]
}
