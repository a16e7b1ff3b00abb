import type { Place } from '../findings/place.ts'
import { readOneQuantity } from '../quantities/read-one-quantity.ts'
import { positiveDecimal } from './exact-decimal.ts'
import { quoted } from './quoted.ts'
import { report, type Sheet } from './sheet.ts'

/** Says what a quantity should be: a number alone. `2.4 m` of hose is 2.4 of what one metre costs. */
export function reportQty(
  sheet: Sheet,
  { text, place }: { text: string; place: Place },
  { path, about }: { path: string; about: string },
): void {
  const unit = readOneQuantity(text, sheet.options) === null ? null : /^([\d.,]+)\s*(\S+)$/.exec(text.trim())
  const number = unit === null ? null : positiveDecimal(unit[1] ?? '', sheet.options.decimal)
  const expected =
    number === null ? 'a number such as `2`' : `\`${number}\` alone, with the cost and the mass of 1 ${unit?.[2] ?? ''}`
  const message = `Unexpected ${quoted(text)} for \`${path}\`, expected ${expected}`
  report(sheet, 'not-a-quantity', { place, message, mend: number, about: [about] })
}
