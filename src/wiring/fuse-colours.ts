import type { Quantity } from '../quantities/quantity.ts'

type Colours = Readonly<Record<number, string>>

/** Colours of blade fuses by their rating in amperes: DIN 72581-3 and ISO 8820-3, as a public list of them prints it. */
export const bladeColours: Colours = {
  2: 'grey',
  3: 'violet',
  4: 'pink',
  5: 'tan',
  7.5: 'brown',
  10: 'red',
  15: 'blue',
  20: 'yellow',
  25: 'clear',
  30: 'green',
  40: 'orange',
}

/** The same of the large blade fuses that are sold as maxi, by a public list of theirs. */
export const maxiColours: Colours = {
  20: 'yellow',
  30: 'green',
  40: 'orange',
  50: 'red',
  60: 'blue',
  70: 'tan',
  80: 'clear',
}

const mostBlade = 40 // A: up to here a fuse of which no type is written is taken for a blade fuse

/** The colour of a fuse's body; null where the lists have none, or where it is no blade fuse. */
export function fuseColour(rating: Quantity, type: string | null): string | null {
  const amperes = rating.dimension === 'current' ? rating.si : null
  if (amperes === null) return null
  const row = Number(amperes.toPrecision(6))
  if (type !== null && /\bmaxi\b/i.test(type)) return maxiColours[row] ?? null
  const isBlade = type === null ? amperes <= mostBlade : /\b(blade|mini|micro|ato|atc)\b/i.test(type)
  return isBlade ? (bladeColours[row] ?? null) : null
}
