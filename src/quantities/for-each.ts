import { isGap } from './characters.ts'

/** Whether an article's amount is a price or a rate for each, as in `£4 a metre` or `two mugs an hour`. */
export function isForEach(text: string, start: number, lastEnd: number): boolean {
  let at = start
  while (at > lastEnd && isGap(text.charCodeAt(at - 1))) at -= 1
  if (at === lastEnd && lastEnd > 0) return true
  const before = /(\S{1,20})\s+(\S{1,20})\s*$/.exec(text.slice(Math.max(lastEnd, start - 44), start))
  const single = before?.[2] ?? /(\S{1,20})\s*$/.exec(text.slice(Math.max(lastEnd, start - 22), start))?.[1] ?? ''
  if (
    /\d/.test(single) ||
    /^(?:once|twice|thrice|times|per|each|every|quid|pence|pounds?|euros?|dollars?|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|fifty)$/i.test(
      single,
    )
  )
    return true
  return (
    /s$/i.test(single) &&
    /\d|^(?:two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|fifty)$/i.test(before?.[1] ?? '')
  )
}
