import { lettering, type Stroke, tenth } from './drawing.ts'
import type { PageScope } from './page-scope.ts'
import { outlinePath, type Spot } from './tank-outline.ts'
import { type CutOut, rectangle } from './tank-shape.ts'

/** Something taken off, with its number in the list and where it is drawn. */
export interface LaidCutOut {
  readonly cut: CutOut
  readonly number: number
  readonly spot: Spot
}

interface Room {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly scale: number
}

const apart = 16 // units of the drawing between two

/** Lays what is taken off in rows, seen from above and to the scale of the views. */
export function layCutOuts(cuts: readonly CutOut[], { left, top, width, scale }: Room): LaidCutOut[] {
  let [x, y, deepest] = [left, top, 0]
  return cuts.map((cut, index) => {
    const [across, deep] = [cut.acrossMm * scale, cut.deepMm * scale]
    if (x > left && x + across > left + width) [x, y, deepest] = [left, y + deepest + apart, 0]
    const spot = { left: x, base: y + deep, scale }
    x += across + apart
    deepest = Math.max(deepest, deep)
    return { cut, number: index + 1, spot }
  })
}

/** The lowest edge of them all, 0 where there are none. */
export function bottomOf(laid: readonly LaidCutOut[]): number {
  return Math.max(0, ...laid.map(({ spot }) => spot.base))
}

/** Hatched and dashed, each leading to its words; they stand apart from the views, for where they sit is not written. */
export function drawCutOuts(scope: PageScope, laid: readonly LaidCutOut[]): Stroke[] {
  const first = laid[0]
  if (first === undefined) return []
  const top = first.spot.base - first.cut.deepMm * first.spot.scale
  const title = lettering(
    'sm',
    { x: first.spot.left, y: top - 9 },
    'taken off, from above; where it sits is not written',
  )
  return [title, ...laid.map(one => drawOne(scope, one))]
}

function drawOne(scope: PageScope, { cut, number, spot }: LaidCutOut): Stroke {
  const { session, figure, value } = cut.held
  const middle = { x: spot.left + (cut.acrossMm * spot.scale) / 2, y: spot.base - (cut.deepMm * spot.scale) / 2 }
  const shape = rectangle(cut.acrossMm, cut.deepMm)
  return {
    kind: 'link',
    href: scope.leader('', { session, figure: figure ?? value.figures[0] ?? null }).href,
    says: `Taken off, ${number}: ${cut.text}; its place is not written`,
    strokes: [
      outlinePath('beyond', shape, spot),
      outlinePath('hid', shape, spot),
      { kind: 'circle', x: tenth(middle.x), y: tenth(middle.y), r: 10, look: 'plate' },
      lettering('mass-n', middle, String(number)),
    ],
  }
}
