import { blankQuantity } from './blank-quantity.ts'
import { isCode } from './number-token.ts'
import type { Quantity, ReadOptions } from './quantity.ts'
import { readNumber } from './read-number.ts'
import { unitOf } from './units.ts'

/** The number without a unit that a whole text is, `4.30` with its digits kept; null where it is anything else. */
export function readBareNumber(text: string, decimal: ReadOptions['decimal'] = 'point'): Quantity | null {
  const trimmed = text.trim()
  const found = readNumber(trimmed, 0, decimal)
  if (found === null || isCode(found) || found.end !== trimmed.length) return null
  if (found.kind === 'gauge' || found.kind === 'article' || found.isMarkWrong) return null
  const number = found.value.toNumber()
  const exact = { number: found.value.toString(), low: null, high: null }
  const rounding = found.half.toNumber()
  return { ...blankQuantity(trimmed, unitOf('1')), number, si: number, rounding, exact, numberText: trimmed }
}
