import { minorDigits } from '../quantities/currencies.ts'
import { plainReading } from '../quantities/quantity.ts'
import { readQuantities } from '../quantities/read-quantities.ts'
import type { Span } from './span.ts'

const signOfMoney =
  /\p{Sc}|\d ?p\b|\b(?:quid|bucks?|grand|euros?|dollars?|pounds?|pence|cents?|rupees?|kr|tenners?|fivers?)\b/iu
const codeOfMoney = /\d ?[A-Z]{3}\b|\b[A-Z]{3} ?[-−]?\d/
const number = String.raw`[-−]?\d(?:[\d.,' \u00a0\u202f]*\d)?(?:[.,][-–—])?(?: ?(?:k|m|bn|thousand|million)\b)?`
const unit = String.raw`(?:\p{Sc}|(?:quid|bucks?|grand|euros?|dollars?|pence|cents?|rupees?|kr|p|[A-Z]{3})\b)`
const word = String.raw`(?:an?|half|few|couple|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\p{L}+teen|\p{L}+ty|hundred|thousand|million|and|of)`
const loose = [
  new RegExp(String.raw`(?:\p{Sc}|\b(?:kr\.?|Kr\.?|[A-Z]{3}))[*_~]{0,3} ?[*_~]{0,3}${number}`, 'gu'),
  new RegExp(`${number} ?${unit}`, 'gu'),
  new RegExp(String.raw`\b(?:${word}[ -]+)+(?:quid|bucks?|grand|euros?|dollars?|pence|cents?)\b`, 'giu'),
  /\b(?:tenners?|fivers?)\b/giu,
]

/** Every amount of money in a text, one that the reader of figures leaves open too: better one word too many than an amount told. */
export function moneySpans(text: string): Span[] {
  if (!signOfMoney.test(text) && !codeOfMoney.test(text)) return []
  const { readings, doubts } = readQuantities(text, plainReading)
  const read = readings.filter(({ quantity }) => quantity.dimension === 'money')
  const open = doubts.filter(doubt => doubt.rule === 'ambiguous-unit' && /pounds?\b/i.test(doubt.text))
  const rough = loose.flatMap(pattern => [...text.matchAll(pattern)].filter(isMoney).map(spanOf))
  return [...read, ...open, ...rough].map(({ start, end }) => ({ start, end: end + tailOf(text.slice(end)) }))
}

/** What still belongs to an amount: `£2½`, `three pound fifty`. */
const tail =
  /^(?:[¼-¾⅐-⅞]|[ -](?:and )?(?:ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?\b(?: pence\b)?)/iu
const tailOf = (rest: string): number => tail.exec(rest)?.[0].length ?? 0

const spanOf = (match: RegExpExecArray): Span => ({ start: match.index, end: match.index + match[0].length })

/** Three capitals beside a number are money where they are a currency: `40 SEK`, and not `12 LED`. */
function isMoney([found]: RegExpExecArray): boolean {
  const code = /[A-Z]{3}/.exec(found)?.[0]
  return code === undefined || minorDigits(code) !== null || /\p{Sc}/u.test(found)
}
