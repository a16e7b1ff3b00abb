import type { Reading, ReadingDoubt } from './quantity.ts'

const wideForms = /[\uff01-\uff5e]/g
const toPlain = 0xff01 - 0x21 // full-width forms stand in the order of ASCII (Unicode block FF00)

/** A text with its letters, digits and marks of double width made plain, each in its place. */
export const narrowed = (text: string): string =>
  text.replace(wideForms, wide => String.fromCharCode(wide.charCodeAt(0) - toPlain))

interface Read {
  readonly readings: Reading[]
  readonly doubts: ReadingDoubt[]
}

function wholeAsWritten(text: string, narrow: string, { quantity, start }: Reading): string | null {
  const { whole } = quantity
  const at = whole === null ? -1 : narrow.lastIndexOf(whole, start)
  return whole === null || at < 0 ? whole : text.slice(at, at + whole.length)
}

/** What was read of the narrowed text, in the characters of the text as written. */
export function asWritten(text: string, { readings, doubts }: Read): Read {
  const narrow = narrowed(text)
  return {
    readings: readings.map(reading => {
      const { start, end, quantity } = reading
      const whole = wholeAsWritten(text, narrow, reading)
      return { start, end, quantity: { ...quantity, text: text.slice(start, end), whole } }
    }),
    doubts: doubts.map(doubt => ({ ...doubt, text: text.slice(doubt.start, doubt.end) })),
  }
}
