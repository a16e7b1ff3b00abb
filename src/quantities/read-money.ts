import { minorDigits } from './currencies.ts'
import type { Money } from './money.ts'
import type { Quantity, ReadOptions } from './quantity.ts'
import { readBareNumber } from './read-bare-number.ts'
import { readOneQuantity } from './read-one-quantity.ts'

const codeFirst = /^([A-Z]{3})\s?([-−]?[\d.,\s]{1,40})$/
const codeLast = /^([-−]?[\d.,\s]{1,40}?)\s?([A-Z]{3})$/

function fromCode(text: string, decimal: ReadOptions['decimal']): Money | null {
  const [first, last] = [codeFirst.exec(text), codeLast.exec(text)]
  const currency = first?.[1] ?? last?.[2] ?? ''
  if (minorDigits(currency) === null) return null
  const number = readBareNumber(first?.[2] ?? last?.[1] ?? '', decimal)
  return number?.exact.number == null ? null : { amount: number.exact.number, currency }
}

/** The money of a quantity; null for a range, a bound and whatever is no money. */
export function moneyOf(quantity: Quantity): Money | null {
  if (quantity.dimension !== 'money' || quantity.bound !== null || quantity.exact.number === null) return null
  return { amount: quantity.exact.number, currency: quantity.unit.slice('money:'.length) }
}

/** The one sum of money that a whole text is, `£184` or `184 GBP`; null where it is anything else. */
export function readMoney(text: string, options: ReadOptions): Money | null {
  const quantity = readOneQuantity(text, options)
  return quantity === null ? fromCode(text.trim(), options.decimal) : moneyOf(quantity)
}
