import type { DipMark } from '../checker/derived/dip-table.ts'

/** The share of what a tank holds that counts as full: 95 %, as the checks of mass and of axle loads reckon it. */
export const fullShare = 0.95

/** The height of the level, in millimetres above the inside of the bottom, at which a tank holds this share of its brim; null without a table. */
export function levelAt(marks: readonly DipMark[], share: number): number | null {
  const brim = marks.at(-1)
  if (brim === undefined || !(brim.litres > 0)) return null
  const wanted = share * brim.litres
  const above = marks.findIndex(({ litres }) => litres >= wanted)
  const [low, high] = [marks[above - 1], marks[above]]
  if (high === undefined) return null
  if (low === undefined || high.litres === low.litres) return high.heightMm
  // Between two marks the level rises evenly, as near as a stick is read.
  return low.heightMm + ((wanted - low.litres) / (high.litres - low.litres)) * (high.heightMm - low.heightMm)
}
