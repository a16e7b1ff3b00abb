import type { Quantity, Reading, ReadingDoubt, ReadOptions } from '../../src/quantities/quantity.ts'

/** What build.md says in the sentences that follow. */
export type Setting = 'plain' | 'comma' | 'us' | 'imperial'

/** A sentence of a workshop, what must be read from it, and what build.md says if that matters. */
export type Sentence = readonly [text: string, expected: string, setting?: Setting]

export const settings: Record<Setting, ReadOptions> = {
  plain: { gallon: null, mil: null, decimal: 'point' },
  comma: { gallon: null, mil: null, decimal: 'comma' },
  us: { gallon: 'us', mil: 'mm', decimal: 'point' },
  imperial: { gallon: 'imperial', mil: 'thou', decimal: 'point' },
}

const short = (value: number): string => `${Number(value.toPrecision(9))}`

function describeSize({ number, low, high, numberText, thread }: Quantity): string {
  if (thread !== null) return `${short(thread.diameter)}${thread.pitch === null ? '' : ` pitch ${short(thread.pitch)}`}`
  if (number !== null) return short(number)
  return low !== null && high !== null ? `${short(low)}..${short(high)}` : `${numberText}`
}

function describe(quantity: Quantity): string {
  const { text, unit, approximate, plus, minus, bound, group, whole, difference } = quantity
  const parts = [
    `${approximate ? '~' : ''}${describeSize(quantity)}`,
    plus === null || minus === null ? '' : `+${short(plus)}/-${short(minus)}`,
    unit,
    bound ?? '',
    group === null ? '' : `#${group}`,
    whole === null ? '' : `in "${whole}"`,
    difference === true ? 'difference' : '',
  ]
  return `${text} = ${parts.filter(part => part !== '').join(' ')}`
}

/** What was read, in one line: `12 mm ± 0.5 = 12 +0.5/-0.5 mm | 3 gal ?? ambiguous-unit`; `nothing` where nothing was. */
export function describeReadings({ readings, doubts }: { readings: Reading[]; doubts: ReadingDoubt[] }): string {
  const lines = [
    ...readings.map(({ quantity }) => describe(quantity)),
    ...doubts.map(({ text, rule }) => `${text} ?? ${rule}`),
  ]
  return lines.length === 0 ? 'nothing' : lines.join(' | ')
}
