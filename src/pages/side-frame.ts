import { lettering, path, type Stroke, tenth } from './drawing.ts'
import type { SideFigures } from './side-figures.ts'

/** Where millimetres of the vehicle lie on the drawing: x from the front axle rearward, y up from the ground. */
export interface SideSheet {
  readonly x: (mm: number) => number
  readonly y: (mm: number) => number
  readonly ground: number
  readonly scale: number
  readonly isWide: boolean
}

interface Room {
  readonly isWide: boolean
  /** Units of the drawing kept free above the vehicle. */
  readonly above: number
}

/** Lays a vehicle on a drawing for a desk or for a phone. */
export function laySide(figures: SideFigures, { isWide, above }: Room): SideSheet {
  const scale = sideScale(figures, isWide)
  const tallest = Math.max(
    2 * figures.radiusMm,
    ...figures.lamps.map(lamp => lamp.topMm),
    (figures.tank?.clearance.mm ?? 0) + (figures.tank?.heightMm ?? 0),
  )
  const ground = tenth(24 + tallest * scale + above)
  return { isWide, scale, ground, x: mm => tenth(sideX(figures, isWide, mm)), y: mm => tenth(ground - mm * scale) }
}

export const sideWidth = (isWide: boolean): number => (isWide ? 860 : 360)
const margin = (isWide: boolean): number => (isWide ? 70 : 16)

/** Where millimetres behind the front axle lie across the drawing; known before it is known how high the drawing is. */
export function sideX(figures: SideFigures, isWide: boolean, mm: number): number {
  return margin(isWide) + (figures.front.mm + mm) * sideScale(figures, isWide)
}

function sideScale({ front, wheelbase, rear }: SideFigures, isWide: boolean): number {
  return (sideWidth(isWide) - 2 * margin(isWide)) / (front.mm + wheelbase.mm + rear.mm)
}

/** The vehicle without a word: ground, wheels, underside, lamps, tank. */
export function bareVehicle(figures: SideFigures, sheet: SideSheet): Stroke[] {
  return [...vehicle(figures, sheet), ...lamps(figures, sheet), ...tank(figures, sheet)]
}

/** Ground, wheels, and the underside as far as its clearances are known. */
function vehicle(
  { front, rear, wheelbase, radiusMm, belly, frontClearance, rearClearance }: SideFigures,
  { x, y, ground, scale }: SideSheet,
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
function lamps({ lamps: all, front, rear, wheelbase }: SideFigures, { x, y, ground }: SideSheet): Stroke[] {
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

function tank({ tank: held }: SideFigures, { x, y, isWide }: SideSheet): Stroke[] {
  if (held === null) return []
  const [left, right] = [x(held.atMm - held.lengthMm / 2), x(held.atMm + held.lengthMm / 2)]
  const [top, bottom] = [y(held.clearance.mm + held.heightMm), y(held.clearance.mm)]
  return [
    path('hid', `M${left} ${top}H${right}V${bottom}H${left}z`),
    ...(isWide ? [lettering('sm mid', { x: (left + right) / 2, y: (top + bottom) / 2 + 4 }, 'tank')] : []),
  ]
}
