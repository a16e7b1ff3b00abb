import type { Volume } from '../../record/record.ts'
import { type FormulaLine, workFormula } from '../formula.ts'
import { readAll, termsOf } from '../inputs/derived.ts'
import { value } from '../inputs/value.ts'
import type { Scope } from '../scope.ts'
import { type Term, workOut } from '../term.ts'
import { areaBelow, type Corner, heightOf, insetOutline } from './outline-below.ts'
import { type FoundShape, figuresOf } from './shape-volume.ts'
import { foundShape, isSound, lessShapes } from './tank-volume.ts'

/** A space that can be partly filled: how high it is, in metres, and what it holds up to a height above its floor. */
interface Fillable {
  readonly heightMetres: number
  readonly upTo: (height: Term, symbol: string) => Term
}

const length = (key: string, symbol: string, meaning: string) =>
  value({ of: `tank/${key}`, symbol, meaning, dimension: 'length', unit: 'mm' })
const wallInput = length('wall', 'w', 'thickness of the wall')
const sides = {
  length: length('length', 'L', 'outside length'),
  width: length('width', 'B', 'outside width'),
  height: length('height', 'H', 'outside height'),
  wall: wallInput,
}

/** The subject's tank as it stands, less its cut-outs, which stand on its floor; null where its shape is not whole, and the notebook says what lacks. */
export function fillableTank(scope: Scope): Fillable | null {
  const volume = scope.record.volumes.find(({ part }) => part === scope.subject.id)
  const outside = outsideOf(volume, scope)
  if (outside === null || !(outside.heightMetres > 0)) return null
  const shapes = lessShapes(volume, scope)
  if (shapes === null) return null
  const less = shapes.map(shape => fillableShape(shape, null))
  if (less.length === 0) return outside
  return {
    heightMetres: outside.heightMetres,
    upTo: (height, symbol) =>
      workFormula(
        [{ line: `${symbol} = V_in - sum(V_less)`, unit: 'L', says: 'less what stands inside, up to the level' }],
        {
          V_in: outside.upTo(height, 'V_in'),
          V_less: less.map((shape, at) => shape.upTo(height, `V_less_${at + 1}`)),
        },
      ),
  }
}

function outsideOf(volume: Volume | undefined, scope: Scope): Fillable | null {
  if (volume?.outside == null) {
    const found = readAll(sides, scope)
    if (found === null) return null
    const { L, B, H, w } = termsOf(sides, found)
    return [L, B, H, w].every(isTerm) ? fillableBox({ L, B, H } as BoxTerms, w as Term, '') : null
  }
  const wall = wallInput.read(scope)
  if (wall?.type !== 'figure') return null
  const shape = foundShape(volume.outside, { path: 'outside', tag: '' }, scope)
  return isSound(shape, wall.term, scope) ? fillableShape(shape, wall.term) : null
}

const isTerm = (term: unknown): term is Term => typeof term === 'object' && term !== null && 'type' in term

/** A shape as it lies: a box on its length and width, a cylinder on its side, a prism with its outline upright. */
function fillableShape(found: FoundShape, wall: Term | null): Fillable {
  const { tag } = found
  const figures = figuresOf(found.held.value.shape, found)
  const of = (name: string): Term => single(figures[`${name}${tag}`], name)
  const { form } = found.held.value.shape
  if (form === 'box') return fillableBox({ L: of('L'), B: of('B'), H: of('H') }, wall, tag)
  if (form === 'cylinder') return fillableCylinder({ D: of('D'), L: of('L') }, wall, tag)
  const [xs, ys] = [figures[`x${tag}`], figures[`y${tag}`]].map(set => (Array.isArray(set) ? (set as Term[]) : []))
  const outline = (xs ?? []).flatMap((x, at): Corner[] => (ys?.[at] === undefined ? [] : [{ x, y: ys[at] }]))
  return fillablePrism({ outline, L: of('L') }, wall, tag)
}

function single(term: Term | readonly Term[] | undefined, name: string): Term {
  if (isTerm(term)) return term
  throw new Error(`Unexpected \`${name}\` of a shape, expected one figure`)
}

interface BoxTerms {
  readonly L: Term
  readonly B: Term
  readonly H: Term
}

const withWall = (wall: Term | null) => (wall === null ? {} : { w: wall })
const lessWall = (wall: Term | null): string => (wall === null ? '' : ' - 2 * w')
const innerMetres = (outer: Term, wall: Term | null): number => workOut(outer) - (wall === null ? 0 : 2 * workOut(wall))

function fillableBox({ L, B, H }: BoxTerms, wall: Term | null, tag: string): Fillable {
  const less = lessWall(wall)
  return {
    heightMetres: innerMetres(H, wall),
    upTo: (height, symbol) =>
      workFormula(
        [
          {
            line: `${symbol} = (L${less}) * (B${less}) * min(h, H${less})`,
            unit: 'L',
            says: `a box${tag === '' ? ' inside its wall' : ''}, up to the level`,
          },
        ],
        { L, B, H, h: height, ...withWall(wall) },
      ),
  }
}

function fillableCylinder({ D, L }: { readonly D: Term; readonly L: Term }, wall: Term | null, tag: string): Fillable {
  const less = lessWall(wall)
  const lines = (symbol: string): FormulaLine[] => [
    { line: `r${tag} = (D${less}) / 2`, unit: 'mm', says: 'radius inside' },
    { line: `y${tag} = min(h, 2 * r${tag})`, unit: 'mm', says: 'height of the level' },
    {
      line: `A${tag} = r${tag}^2 * acos((r${tag} - y${tag}) / r${tag}) - (r${tag} - y${tag}) * sqrt(max(0, 2 * r${tag} * y${tag} - y${tag}^2))`,
      unit: 'mm2',
      says: 'the segment of the circle below the level',
    },
    { line: `${symbol} = A${tag} * (L${less})`, unit: 'L', says: 'a cylinder on its side, up to the level' },
  ]
  return {
    heightMetres: innerMetres(D, wall),
    upTo: (height, symbol) => workFormula(lines(symbol), { D, L, h: height, ...withWall(wall) }),
  }
}

interface PrismTerms {
  readonly outline: readonly Corner[]
  readonly L: Term
}

function fillablePrism({ outline, L }: PrismTerms, wall: Term | null, tag: string): Fillable {
  const corners = wall === null ? outline : insetOutline(outline, wall, tag)
  return {
    heightMetres: heightOf(corners),
    upTo: (height, symbol) =>
      workFormula([{ line: `${symbol} = A * (L${lessWall(wall)})`, unit: 'L', says: 'a prism, up to the level' }], {
        A: areaBelow(corners, height, `A${tag}`),
        L,
        ...withWall(wall),
      }),
  }
}
