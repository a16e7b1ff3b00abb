import type { Quantity } from '../quantities/quantity.ts'

/** Cold resistance in ohms of blade fuses of 15 A: a maker's data sheet, and a workshop chart's two readings that agree. No other rating was found in print. */
const coldOhms = { blade: 0.0048, mini: 0.004587 } as const // 22 mA at 0.1 mV and 218 mA at 1.0 mV give the second

/** Ohms of a fuse between its two test points when cold; null where no figure was found in print. */
export function fuseOhms(rating: Quantity | null, type: string | null): number | null {
  const isFifteen = rating?.dimension === 'current' && Math.abs((rating.si ?? 0) - 15) < 1e-6
  if (!isFifteen || (type !== null && !/\b(blade|mini|ato|atc)\b/i.test(type))) return null
  return type !== null && /\bmini\b/i.test(type) ? coldOhms.mini : coldOhms.blade
}

/** Amperes through a fuse by the volts read across it. */
export const throughFuse = (volts: number, ohms: number): number => volts / ohms
