import { path, type Stroke, tenth } from './drawing.ts'
import type { Corner } from './tank-shape.ts'

/** Where a view lies: its left edge, its lower edge, and units of the drawing to a millimetre. */
export interface Spot {
  readonly left: number
  readonly base: number
  readonly scale: number
}

/** A closed outline at its spot. */
export function outlinePath(look: string, corners: readonly Corner[], { left, base, scale }: Spot): Stroke {
  const points = corners.map(([x, y]) => `${tenth(left + x * scale)} ${tenth(base - y * scale)}`)
  return path(look, `M${points.join('L')}z`)
}
