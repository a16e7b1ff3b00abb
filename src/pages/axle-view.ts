import { type AxleAnswer, type AxleState, addedMasses, axleState } from './axle-figures.ts'
import { type Drawing, lettering, path, type Stroke, tenth } from './drawing.ts'
import { plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { type SideFigures, sideFigures } from './side-figures.ts'
import { bareVehicle, laySide, type SideSheet, sideWidth, sideX } from './side-frame.ts'
import { type Hung, hangWeights, hungParts } from './weights-drawing.ts'

const caption =
  'To scale along the vehicle. Each disc is a mass at its place, its area as its kilograms, but for the smallest, which would not be seen; an open, dashed disc is what laden adds. Below the ground, what stands on each axle and the centre of gravity: full lines and solid feet unladen, dashed lines and open feet laden. How high the centre lies was not worked out. Each disc and figure leads to its page.'

/** Masses, axle loads and centres of gravity on a side view; nothing where the record does not suffice to draw one. */
export function drawAxleLoads(scope: PageScope): PartOfPage[] {
  const figures = sideFigures(scope.record)
  if (figures === null) return []
  const masses = [...hungParts(scope, figures.weights), ...addedMasses(scope)]
  const states = { unladen: axleState(scope, false), laden: axleState(scope, true) }
  const draw = (isWide: boolean): Drawing => drawIn({ figures, masses, states }, isWide)
  return [{ kind: 'drawings', wide: draw(true), narrow: draw(false), caption: [plain(caption)], framed: false }]
}

interface Balance {
  readonly figures: SideFigures
  readonly masses: readonly Hung[]
  readonly states: { readonly unladen: AxleState; readonly laden: AxleState }
}

const strip = 64 // units of the drawing for each state, below the ground

function drawIn({ figures, masses, states }: Balance, isWide: boolean): Drawing {
  const x = (mm: number): number => sideX(figures, isWide, mm)
  const hanging = hangWeights(masses, { x, perRootKg: isWide ? 2.2 : 1.5, leastKg: 0 })
  const sheet = laySide(figures, { isWide, above: hanging.height })
  const length = figures.wheelbase.mm
  return {
    width: sideWidth(isWide),
    height: tenth(sheet.ground + 2 * strip + 26),
    says: `Side view to scale with ${masses.length} masses at their places, the loads of the axles and the centre of gravity`,
    tells: [stateWords('Unladen', states.unladen), stateWords('Laden', states.laden)].join(' '),
    look: 'side balance',
    strokes: [
      ...hanging.strokes,
      ...bareVehicle(figures, sheet),
      ...beam(states.unladen, { sheet, length, isLaden: false }),
      ...beam(states.laden, { sheet, length, isLaden: true }),
    ],
  }
}

/** A state in words, for who cannot see the drawing. */
export function stateWords(name: string, { front, rear, centre }: AxleState): string {
  const said = [
    front === null ? null : `${front.text} on the front axle`,
    rear === null ? null : `${rear.text} on the rear axle`,
    centre === null ? null : `the centre of gravity ${centre.text} behind the front axle`,
  ].filter(words => words !== null)
  return said.length === 0 ? `${name}: not known.` : `${name}: ${said.join(', ')}.`
}

interface BeamPlace {
  readonly sheet: SideSheet
  /** Wheelbase in millimetres. */
  readonly length: number
  readonly isLaden: boolean
}

/** The vehicle as a beam on two feet, with its centre on it. */
function beam({ front, rear, centre }: AxleState, { sheet, length, isLaden }: BeamPlace): Stroke[] {
  if (front === null && rear === null && centre === null) return []
  const y = tenth(sheet.ground + 34 + (isLaden ? strip : 0))
  const look = isLaden ? 'hid' : 'thin'
  const name = isLaden ? 'laden' : 'unladen'
  const [from, to] = [sheet.x(0), sheet.x(length)]
  return [
    path(look, `M${from} ${y}H${to}`),
    lettering('sm', { x: from + 12, y: y - 7 }, name),
    ...foot(front, { x: from, y, isLaden }, `${name}, on the front axle`),
    ...foot(rear, { x: to, y, isLaden }, `${name}, on the rear axle`),
    ...centreMark(centre, { x: sheet.x(centre?.value ?? 0), y, isLaden }, name),
  ]
}

interface Spot {
  readonly x: number
  readonly y: number
  readonly isLaden: boolean
}

function foot(answer: AxleAnswer | null, { x, y, isLaden }: Spot, says: string): Stroke[] {
  if (answer === null) return []
  return [
    {
      kind: 'link',
      href: answer.href,
      says: `${answer.text} ${says}`,
      strokes: [
        path(isLaden ? 'foot open' : 'foot', `M${x} ${y}l-7 12h14z`),
        lettering('mid', { x, y: y + 28 }, answer.text),
      ],
    },
  ]
}

/** The quartered circle, two quarters filled; laden it is dashed and unfilled. */
function centreMark(answer: AxleAnswer | null, { x, y, isLaden }: Spot, name: string): Stroke[] {
  if (answer === null) return []
  const quarters = path(
    'solid',
    `M${x} ${y}V${y - 9}A9 9 0 0 1 ${tenth(x + 9)} ${y}H${tenth(x - 9)}A9 9 0 0 0 ${x} ${y + 9}z`,
  )
  return [
    {
      kind: 'link',
      href: answer.href,
      says: `Centre of gravity ${name}, ${answer.text} behind the front axle`,
      strokes: [
        { kind: 'circle', x, y, r: 9, look: isLaden ? 'hid plate' : 'out plate' },
        ...(isLaden ? [path('thin', `M${tenth(x - 9)} ${y}H${tenth(x + 9)}M${x} ${y - 9}V${y + 9}`)] : [quarters]),
        lettering('mid', { x, y: y + 28 }, answer.text),
      ],
    },
  ]
}
