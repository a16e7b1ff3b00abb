import { type DimensionText, heightLine, lengthLine } from './dimension-line.ts'
import { bareFigure, dimensionText } from './dimension-text.ts'
import { type Drawing, lettering, path, type Stroke, tenth } from './drawing.ts'
import { plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { type Known, type SideFigures, sideFigures } from './side-figures.ts'
import { bareVehicle, laySide, type SideSheet, sideWidth, sideX } from './side-frame.ts'
import { hangWeights, hungParts } from './weights-drawing.ts'

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
  const weights = isWide ? hangAbove(scope, figures) : null
  const sheet = laySide(figures, { isWide, above: weights?.height ?? 0 })
  const overall = figures.front.mm + figures.wheelbase.mm + figures.rear.mm
  return {
    width: sideWidth(isWide),
    height: tenth(sheet.ground + (isWide ? 148 : 112)),
    says: `Side view to scale: wheelbase ${figures.wheelbase.held.value.text}, overall length ${Math.round(overall)} mm`,
    look: 'side',
    strokes: [
      ...(weights?.strokes ?? []),
      ...bareVehicle(figures, sheet),
      ...dimensions(scope, figures, sheet),
      ...(isWide ? heights(scope, figures, sheet) : []),
      ...loads(scope, figures, sheet),
    ],
  }
}

function hangAbove(scope: PageScope, figures: SideFigures) {
  return hangWeights(hungParts(scope, figures.weights), {
    x: mm => sideX(figures, true, mm),
    perRootKg: 1.9,
    leastKg: 1,
  })
}

function dimensions(
  scope: PageScope,
  { wheelbase, front, rear }: SideFigures,
  { x, ground, isWide }: SideSheet,
): Stroke[] {
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
    dimensionText(scope, wheelbase.held, 'Wheelbase'),
  )
  if (!isWide) return [whole, base]
  return [
    whole,
    base,
    lengthLine(
      { x1: x(-front.mm), x2: x(0), y: ground + 84, from },
      dimensionText(scope, front.held, 'Front overhang'),
    ),
    lengthLine(
      { x1: x(wheelbase.mm), x2: x(wheelbase.mm + rear.mm), y: ground + 84, from: ground + 46 },
      dimensionText(scope, rear.held, 'Rear overhang'),
    ),
  ]
}

function heights(scope: PageScope, figures: SideFigures, { x, y, ground }: SideSheet): Stroke[] {
  const line = (known: Known | null, atMm: number, says: string): Stroke[] =>
    known === null
      ? []
      : [heightLine({ x: x(atMm), y1: y(known.mm), y2: ground }, dimensionText(scope, known.held, says))]
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
function loads(scope: PageScope, { loads: all, wheelbase }: SideFigures, { x, ground, isWide }: SideSheet): Stroke[] {
  return all.map(({ isFront, held }) => {
    const at = x(isFront ? 0 : wheelbase.mm)
    const text = dimensionText(scope, held, isFront ? 'Load on the front axle' : 'Load on the rear axle')
    return {
      kind: 'link',
      href: text.href,
      says: text.says,
      strokes: [
        path('arrow', `M${at} ${tenth(ground + 3)}l-7 12h14z`),
        lettering(
          isFront ? '' : 'end',
          { x: at + (isFront ? 14 : -14), y: ground + 18 },
          isWide ? held.value.text.replace(/ ?± ?/, ' ± ') : bareFigure(held.value),
        ),
      ],
    }
  })
}
