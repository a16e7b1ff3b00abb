import type { PlacedShape, Shape } from '../../facts/fact.ts'
import type { Quantity } from '../../quantities/quantity.ts'
import type { Held } from '../../record/record.ts'
import { type FormulaLine, workFormula } from '../formula.ts'
import { leafOf } from '../leaf.ts'
import type { Leaf, Step, Term } from '../term.ts'

/** A shape of the record, and the path on which its figures hang: `volume:fuel-tank/outside`. */
export interface FoundShape {
  readonly held: Held<PlacedShape>
  readonly path: string
  /** Keeps the symbols of several shapes apart: `_1`. */
  readonly tag: string
  readonly approximateShare: number
  /** Where a figure of its note stands. */
  readonly placeOf: (figure: string) => Held<unknown>['place'] | null
}

/** What a shape holds, moved in by the wall on every side; without a wall, as it is written. */
export function shapeVolume(found: FoundShape, symbol: string, wall: Term | null): Step {
  const { shape } = found.held.value
  const less = wall === null ? '' : ' - 2 * w'
  const terms: Record<string, Term | readonly Term[]> = {
    ...figuresOf(shape, found),
    ...(wall === null ? {} : { w: wall }),
  }
  return workFormula(linesOf(shape.form, { symbol, tag: found.tag, less }), terms)
}

function linesOf(
  form: Shape['form'],
  { symbol, tag, less }: { symbol: string; tag: string; less: string },
): readonly FormulaLine[] {
  const inside = less === '' ? '' : ', inside its wall'
  if (form === 'box')
    return [
      { line: `${symbol} = (L${tag}${less}) * (B${tag}${less}) * (H${tag}${less})`, unit: 'L', says: `a box${inside}` },
    ]
  if (form === 'cylinder')
    return [
      { line: `${symbol} = pi / 4 * (D${tag}${less})^2 * (L${tag}${less})`, unit: 'L', says: `a cylinder${inside}` },
    ]
  const outline = less === '' ? outlineLines(tag) : [...outlineLines(tag), ...insetLines(tag)]
  const area = less === '' ? `A${tag}` : `A_in${tag}`
  return [...outline, { line: `${symbol} = abs(${area}) * (L${tag}${less})`, unit: 'L', says: `a prism${inside}` }]
}

// Corners x, y; the next corner x_n, y_n; the one before x_p, y_p. The area is signed by the way round.
function outlineLines(tag: string): FormulaLine[] {
  return [
    {
      line: `A${tag} = sum(x${tag} * y_n${tag} - x_n${tag} * y${tag}) / 2`,
      unit: 'mm2',
      says: 'area of the outline, corner by corner',
    },
  ]
}

/** The outline moved in by w, corners kept sharp: area less w times the girth, and at each corner w² over the tangent of half its angle. */
function insetLines(tag: string): FormulaLine[] {
  const [into, out] = [
    `((x${tag} - x_p${tag})^2 + (y${tag} - y_p${tag})^2)`,
    `((x_n${tag} - x${tag})^2 + (y_n${tag} - y${tag})^2)`,
  ]
  const cross = `((x${tag} - x_p${tag}) * (y_n${tag} - y${tag}) - (y${tag} - y_p${tag}) * (x_n${tag} - x${tag}))`
  const dot = `((x${tag} - x_p${tag}) * (x_n${tag} - x${tag}) + (y${tag} - y_p${tag}) * (y_n${tag} - y${tag}))`
  return [
    { line: `G${tag} = sum(sqrt${out})`, unit: 'mm', says: 'girth of the outline' },
    {
      line: `k${tag} = A${tag} / abs(A${tag}) * sum(${cross} / (sqrt${into} * sqrt${out} + ${dot}))`,
      unit: '1',
      says: 'what its corners keep, each 1 over the tangent of half its angle',
    },
    { line: `A_in${tag} = abs(A${tag}) - w * G${tag} + w^2 * k${tag}`, unit: 'mm2', says: 'area inside the wall' },
  ]
}

/** The figures of a shape by symbol: sides, or the corners of its outline each with the next and the one before. */
export function figuresOf(shape: Shape, found: FoundShape): Record<string, Term | readonly Term[]> {
  const { tag } = found
  const leaf = (quantity: Quantity, symbol: string, part: string, at: number): Leaf =>
    shapeLeaf(found, { quantity, symbol, part, at })
  if (shape.form === 'box') {
    const { length, width, height } = shape
    return {
      [`L${tag}`]: leaf(length, `L${tag}`, 'length', 0),
      [`B${tag}`]: leaf(width, `B${tag}`, 'width', 1),
      [`H${tag}`]: leaf(height, `H${tag}`, 'height', 2),
    }
  }
  if (shape.form === 'cylinder')
    return {
      [`D${tag}`]: leaf(shape.diameter, `D${tag}`, 'diameter', 0),
      [`L${tag}`]: leaf(shape.length, `L${tag}`, 'length', 1),
    }
  const xs = shape.corners.map(([x], at) => leaf(x, `x${tag}`, `corner-${at + 1}.x`, 2 * at))
  const ys = shape.corners.map(([, y], at) => leaf(y, `y${tag}`, `corner-${at + 1}.y`, 2 * at + 1))
  const around = { x_n: turned(xs, 1), y_n: turned(ys, 1), x_p: turned(xs, -1), y_p: turned(ys, -1), x: xs, y: ys }
  const length = leaf(shape.length, `L${tag}`, 'length', 2 * shape.corners.length)
  return {
    ...Object.fromEntries(Object.entries(around).map(([name, leaves]) => [`${name}${tag}`, leaves])),
    [`L${tag}`]: length,
  }
}

const turned = (leaves: readonly Leaf[], by: 1 | -1): Leaf[] =>
  leaves.map((leaf, at) => leaves.at((at + by) % leaves.length) ?? leaf)

interface ShapeFigure {
  readonly quantity: Quantity
  readonly symbol: string
  readonly part: string
  /** Its place in the order written. */
  readonly at: number
}

function shapeLeaf(
  { held, path, approximateShare, placeOf }: FoundShape,
  { quantity, symbol, part, at }: ShapeFigure,
): Leaf {
  const id = held.value.figures[at] ?? null
  const figure = {
    value: quantity,
    place: (id === null ? null : placeOf(id)) ?? held.value.place,
    session: held.session,
    figure: id ?? held.figure,
  }
  const meaning = `${part.replace(/[-.]/g, ' ')} of ${held.value.text}`
  return leafOf(
    { path: `${path}.${part}`, held: figure },
    { symbol, meaning, unit: quantity.unit, isExact: false },
    approximateShare,
  )
}
