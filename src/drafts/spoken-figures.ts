import type { Reading, ReadOptions } from '../quantities/quantity.ts'
import { readQuantities } from '../quantities/read-quantities.ts'

/** A figure as it stands at last, and where the first saying of it stood that the speaker took back. */
export interface SpokenFigure {
  readonly reading: Reading
  readonly firstAt: number
}

/** `wide, no, sorry, ` between two figures: the second is said instead of the first, and of the same thing. */
const correction =
  /^(?:\s+\p{L}+){0,3}[\s,.;:–—-]+(?:(?:oh|er|um|uh|no)[\s,.;–—-]+)*(?:no|nope|sorry|wait|hang on|i mean|make that|or rather|rather|correction|scratch that|i tell a lie|actually)\b(?!.*\b(?:the|a|an|my|our)\b)[^\d\n]{0,40}$/iu

/** The figures of a text; of one that was corrected in the talk what was said last: `860, no, sorry, 870 mm`. */
export function spokenFigures(text: string, options: ReadOptions): SpokenFigure[] {
  const { readings } = readQuantities(text, options)
  const spoken: SpokenFigure[] = []
  for (const reading of readings) {
    const last = spoken.at(-1)
    const isInstead =
      last !== undefined &&
      last.reading.quantity.dimension === reading.quantity.dimension &&
      correction.test(text.slice(last.reading.end, reading.start))
    if (isInstead) spoken[spoken.length - 1] = { reading, firstAt: last.firstAt }
    else spoken.push({ reading, firstAt: reading.start })
  }
  return spoken
}
