import { type DimensionText, heightLine, lengthLine } from './dimension-line.ts'
import { dimensionText } from './dimension-text.ts'
import { type Drawing, lettering, path, type Stroke, tenth } from './drawing.ts'
import type { PageScope } from './page-scope.ts'
import { bottomOf, drawCutOuts, type LaidCutOut, layCutOuts } from './tank-cut-outs.ts'
import { outlinePath, type Spot } from './tank-outline.ts'
import { type Corner, type CutOut, rectangle, type TankShape, type TankSide } from './tank-shape.ts'

interface TankToDraw {
  readonly name: string
  readonly shape: TankShape
  readonly cutOuts: readonly CutOut[]
  /** Above the inside of the bottom; null: not known. */
  readonly fullMm: number | null
}

const names = 26 // units of the drawing above a view, for its name
const below = 46 // below a view, for its dimension
const aside = 130 // beside a view, for its height
const longest = 360 // the longest side on a desk, so that what is taken off fits beside the plan

/** Three views to scale: on a desk the side beside the front and the plan below it, on a phone one below the other. */
export function drawTank(scope: PageScope, tank: TankToDraw, isWide: boolean): Drawing {
  const { length, width, height } = tank.shape
  const says = `${tank.name} from the front, from the side and from above, to scale: ${sideWords(length)} by ${sideWords(width)}, ${sideWords(height)} high`
  const tells =
    tank.fullMm === null ? '' : `Full, at 95 % of what it holds, the level stands ${Math.round(tank.fullMm)} mm high.`
  const laid = isWide ? layWide(tank) : layNarrow(tank)
  return {
    width: isWide ? 860 : 360,
    height: tenth(laid.height),
    says,
    tells,
    look: 'tank',
    strokes: [
      ...frontView(scope, tank, laid.front),
      ...sideView(scope, tank, laid.side),
      ...planView(tank, laid.plan),
      ...drawCutOuts(scope, laid.taken),
    ],
  }
}

interface Laid {
  readonly front: Spot
  readonly side: Spot
  readonly plan: Spot
  readonly taken: readonly LaidCutOut[]
  readonly height: number
}

function layWide({ shape: { length, width, height }, cutOuts }: TankToDraw): Laid {
  const scale = Math.min(
    (860 - aside - 16) / (length.mm + width.mm),
    longest / Math.max(length.mm, width.mm),
    320 / height.mm, // units: a tall tank still fits a screen
  )
  const base = names + height.mm * scale
  const top = base + below + names
  const right = 8 + length.mm * scale + aside
  const taken = layCutOuts(cutOuts, { left: right, top, width: 852 - right, scale })
  return {
    front: { left: 8, base, scale },
    side: { left: right, base, scale },
    plan: { left: 8, base: top + width.mm * scale, scale },
    taken,
    height: Math.max(top + width.mm * scale, bottomOf(taken)) + 12,
  }
}

function layNarrow({ shape: { length, width, height }, cutOuts }: TankToDraw): Laid {
  const scale = (360 - aside - 8) / Math.max(length.mm, width.mm)
  const front = names + height.mm * scale
  const side = front + below + names + height.mm * scale
  const plan = side + below + names + width.mm * scale
  const spot = (base: number): Spot => ({ left: 4, base, scale })
  const taken = layCutOuts(cutOuts, { left: 4, top: plan + names + 12, width: 352, scale })
  const whole = Math.max(plan, bottomOf(taken)) + 12
  return { front: spot(front), side: spot(side), plan: spot(plan), taken, height: whole }
}

function frontView(scope: PageScope, { shape, fullMm }: TankToDraw, spot: Spot): Stroke[] {
  const { length, height, front, wallMm } = shape
  return [
    viewName('from the front', height, spot),
    ...outline(front, height.mm, spot),
    ...level(length.mm, { wallMm, fullMm }, spot),
    across(length, spot, sideText(scope, length, 'Length')),
    heightLine(
      { x: spot.left + length.mm * spot.scale + 16, y1: spot.base - height.mm * spot.scale, y2: spot.base },
      sideText(scope, height, 'Height'),
    ),
  ]
}

function sideView(scope: PageScope, { shape, fullMm }: TankToDraw, spot: Spot): Stroke[] {
  const { width, height, side, wallMm } = shape
  return [
    viewName('from the side', height, spot),
    ...outline(side, height.mm, spot),
    ...level(width.mm, { wallMm, fullMm }, spot),
    ...(side === null ? [] : [across(width, spot, sideText(scope, width, 'Width'))]),
  ]
}

function planView({ shape: { length, width } }: TankToDraw, spot: Spot): Stroke[] {
  return [viewName('from above', width, spot), outlinePath('out', rectangle(length.mm, width.mm), spot)]
}

const viewName = (words: string, { mm }: TankSide, { left, base, scale }: Spot): Stroke =>
  lettering('sm', { x: left, y: base - mm * scale - 9 }, words)

function outline(corners: readonly Corner[] | null, heightMm: number, spot: Spot): Stroke[] {
  if (corners !== null) return [outlinePath('out', corners, spot)]
  const r = tenth((heightMm / 2) * spot.scale)
  return [{ kind: 'circle', x: tenth(spot.left + r), y: tenth(spot.base - r), r, look: 'out' }]
}

/** The level at full: a line across, a triangle on it, and how it is reckoned. */
function level(acrossMm: number, at: { wallMm: number; fullMm: number | null }, { left, base, scale }: Spot): Stroke[] {
  if (at.fullMm === null) return []
  const y = tenth(base - (at.wallMm + at.fullMm) * scale)
  const middle = tenth(left + (acrossMm * scale) / 2)
  return [
    path('ctr level', `M${tenth(left)} ${y}H${tenth(left + acrossMm * scale)}`),
    path('solid', `M${middle} ${y}l-6 -9h12z`),
    lettering('sm mid', { x: middle, y: y + 18 }, `95 %: ${Math.round(at.fullMm)} mm`),
  ]
}

function across({ mm }: TankSide, { left, base, scale }: Spot, text: DimensionText): Stroke {
  return lengthLine({ x1: left, x2: left + mm * scale, y: base + 30, from: base + 4 }, text)
}

function sideText(scope: PageScope, { mm, held }: TankSide, says: string): DimensionText {
  if (held !== null) return dimensionText(scope, held, says)
  return { text: `${Math.round(mm)} mm`, balloon: null, href: null, says: `${says}, worked out` }
}

function sideWords({ mm, held }: TankSide): string {
  return held?.value.text ?? `${Math.round(mm)} mm`
}
