import type { Quantity } from '../quantities/quantity.ts'
import type { Held } from '../record/record.ts'
import { type DimensionText, heightLine, lengthLine } from './dimension-line.ts'
import { type Drawing, lettering, path, type Stroke, tenth } from './drawing.ts'
import { plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { type Known, type SideFigures, sideFigures } from './side-figures.ts'
import { wordsAddress } from './thing-addresses.ts'
import { hangWeights } from './weights-drawing.ts'

/** Where millimetres of the vehicle lie on the drawing: x from the front axle rearward, y up from the ground. */
interface Sheet {
  readonly x: (mm: number) => number
  readonly y: (mm: number) => number
  readonly ground: number
  readonly scale: number
  readonly isWide: boolean
}

/** A side view from the vehicle's own figures, and only from them; nothing where they do not suffice. */
export function drawSideView(scope: PageScope): PartOfPage[] {
  const figures = sideFigures(scope.record)
  if (figures === null) return []
  const caption =
    'Drawn to scale from the record, and nothing is shown that was not measured: hence no bodywork. Each dimension leads to the words in which it was written; the balloon gives the session. Dash and dot: worked out. On a wide screen the discs above are the parts by mass, hung where they sit.'
  return [
    {
      kind: 'drawings',
      wide: draw(scope, figures, true),
      narrow: draw(scope, figures, false),
      caption: [plain(caption)],
      framed: false,
    },
  ]
}

function draw(scope: PageScope, figures: SideFigures, isWide: boolean): Drawing {
  const width = isWide ? 860 : 360
  const margin = isWide ? 70 : 16
  const overall = figures.front.mm + figures.wheelbase.mm + figures.rear.mm
  const scale = (width - 2 * margin) / overall
  const weights = isWide ? hangWeights(scope, figures.weights, mm => margin + (figures.front.mm + mm) * scale) : null
  const tallest = Math.max(
    2 * figures.radiusMm,
    ...figures.lamps.map(lamp => lamp.topMm),
    (figures.tank?.clearance.mm ?? 0) + (figures.tank?.heightMm ?? 0),
  )
  const ground = tenth(24 + tallest * scale + (weights?.height ?? 0))
  const sheet: Sheet = {
    isWide,
    scale,
    ground,
    x: mm => tenth(margin + (figures.front.mm + mm) * scale),
    y: mm => tenth(ground - mm * scale),
  }
  return {
    width,
    height: tenth(ground + (isWide ? 148 : 112)),
    says: `Side view to scale: wheelbase ${figures.wheelbase.held.value.text}, overall length ${Math.round(overall)} mm`,
    look: 'side',
    strokes: [
      ...(weights?.strokes ?? []),
      ...vehicle(figures, sheet),
      ...lamps(figures, sheet),
      ...tank(figures, sheet),
      ...dimensions(scope, figures, sheet),
      ...(isWide ? heights(scope, figures, sheet) : []),
      ...loads(scope, figures, sheet),
    ],
  }
}

/** Ground, wheels, and the underside as far as its clearances are known. */
function vehicle(
  { front, rear, wheelbase, radiusMm, belly, frontClearance, rearClearance }: SideFigures,
  { x, y, ground, scale }: Sheet,
): Stroke[] {
  const [nose, tail] = [x(-front.mm), x(wheelbase.mm + rear.mm)]
  const wheels = [0, wheelbase.mm].flatMap((at): Stroke[] => [
    { kind: 'circle', x: x(at), y: y(radiusMm), r: tenth(radiusMm * scale), look: 'out plate' },
    { kind: 'circle', x: x(at), y: y(radiusMm), r: tenth(radiusMm * scale * 0.58), look: 'thin' },
    path('ctr', `M${x(at)} ${tenth(y(2 * radiusMm) - 10)}V${tenth(ground + 12)}`),
  ])
  const under =
    belly === null ? [] : [path('out', `M${x(radiusMm * 1.15)} ${y(belly.mm)}H${x(wheelbase.mm - radiusMm * 1.15)}`)]
  const ends = [
    ...(frontClearance === null
      ? []
      : [
          path('out', `M${nose} ${y(frontClearance.mm + 120)}V${y(frontClearance.mm)}H${x(-radiusMm * 1.15)}`),
          path('ctr', `M${x(0)} ${ground}L${nose} ${y(frontClearance.mm)}`),
        ]),
    ...(rearClearance === null
      ? []
      : [
          path(
            'out',
            `M${tail} ${y(rearClearance.mm + 120)}V${y(rearClearance.mm)}H${x(wheelbase.mm + radiusMm * 1.15)}`,
          ),
          path('ctr', `M${x(wheelbase.mm)} ${ground}L${tail} ${y(rearClearance.mm)}`),
        ]),
  ]
  return [path('deck', `M${tenth(nose - 16)} ${ground}H${tenth(tail + 16)}`), ...ends, ...under, ...wheels]
}

/** Lamps at the ends, by their heights; how deep they are was not measured, so they are drawn as thin strips. */
function lamps({ lamps: all, front, rear, wheelbase }: SideFigures, { x, y, ground }: Sheet): Stroke[] {
  const ends = [true, false].flatMap(isFront => {
    const tops = all.filter(lamp => lamp.isFront === isFront).map(lamp => lamp.topMm)
    const end = isFront ? x(-front.mm) : x(wheelbase.mm + rear.mm)
    return tops.length === 0 ? [] : [path('thin far', `M${end} ${ground}V${y(Math.max(...tops))}`)]
  })
  const strips = all.map(({ isFront, topMm, bottomMm }) => {
    const end = isFront ? x(-front.mm) : x(wheelbase.mm + rear.mm)
    return path('lamp', `M${end} ${y(topMm)}h${isFront ? 8 : -8}V${y(bottomMm)}h${isFront ? -8 : 8}z`)
  })
  return [...ends, ...strips]
}

function tank({ tank: held }: SideFigures, { x, y, isWide }: Sheet): Stroke[] {
  if (held === null) return []
  const [left, right] = [x(held.atMm - held.lengthMm / 2), x(held.atMm + held.lengthMm / 2)]
  const [top, bottom] = [y(held.clearance.mm + held.heightMm), y(held.clearance.mm)]
  return [
    path('hid', `M${left} ${top}H${right}V${bottom}H${left}z`),
    ...(isWide ? [lettering('sm mid', { x: (left + right) / 2, y: (top + bottom) / 2 + 4 }, 'tank')] : []),
  ]
}

function dimensions(scope: PageScope, { wheelbase, front, rear }: SideFigures, { x, ground, isWide }: Sheet): Stroke[] {
  const from = ground + 4
  const overallMm = front.mm + wheelbase.mm + rear.mm
  const overall: DimensionText = {
    text: `${Math.round(overallMm)} mm`,
    balloon: null,
    href: null,
    says: 'Overall length, worked out',
  }
  const whole = lengthLine(
    { x1: x(-front.mm), x2: x(wheelbase.mm + rear.mm), y: ground + (isWide ? 128 : 98), from },
    overall,
  )
  const base = lengthLine(
    { x1: x(0), x2: x(wheelbase.mm), y: ground + (isWide ? 84 : 62), from: ground + (isWide ? 46 : 34) },
    textOf(scope, wheelbase.held, 'Wheelbase'),
  )
  if (!isWide) return [whole, base]
  return [
    whole,
    base,
    lengthLine({ x1: x(-front.mm), x2: x(0), y: ground + 84, from }, textOf(scope, front.held, 'Front overhang')),
    lengthLine(
      { x1: x(wheelbase.mm), x2: x(wheelbase.mm + rear.mm), y: ground + 84, from: ground + 46 },
      textOf(scope, rear.held, 'Rear overhang'),
    ),
  ]
}

function heights(scope: PageScope, figures: SideFigures, { x, y, ground }: Sheet): Stroke[] {
  const line = (known: Known | null, atMm: number, says: string): Stroke[] =>
    known === null ? [] : [heightLine({ x: x(atMm), y1: y(known.mm), y2: ground }, textOf(scope, known.held, says))]
  return [
    ...line(figures.belly, figures.wheelbase.mm * 0.3, 'Belly clearance'),
    ...line(
      figures.tank?.clearance ?? null,
      (figures.tank?.atMm ?? 0) - (figures.tank?.lengthMm ?? 0) * 0.42,
      'Clearance of the tank',
    ),
  ]
}

/** What each wheel pair stands on, as weighed. */
function loads(scope: PageScope, { loads: all, wheelbase }: SideFigures, { x, ground, isWide }: Sheet): Stroke[] {
  return all.map(({ isFront, held }) => {
    const at = x(isFront ? 0 : wheelbase.mm)
    const text = textOf(scope, held, isFront ? 'Load on the front axle' : 'Load on the rear axle')
    return {
      kind: 'link',
      href: text.href,
      says: text.says,
      strokes: [
        path('arrow', `M${at} ${tenth(ground + 3)}l-7 12h14z`),
        lettering(
          isFront ? '' : 'end',
          { x: at + (isFront ? 14 : -14), y: ground + 18 },
          isWide ? held.value.text.replace(/ ?± ?/, ' ± ') : short(held.value),
        ),
      ],
    }
  })
}

function textOf(scope: PageScope, held: Held<Quantity>, says: string): DimensionText {
  const balloon = scope.balloon(held.session)
  return {
    text: short(held.value),
    balloon: balloon.square ? 'b' : balloon.text,
    href: scope.to(wordsAddress(held)),
    says: `${says} ${held.value.text}, ${balloon.says}`,
  }
}

function short({ text }: Quantity): string {
  return text.split(/ ?±/)[0]?.trim() ?? text
}
