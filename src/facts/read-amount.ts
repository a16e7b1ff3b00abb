import type { Front } from '../notes/front.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { moneyOf, readMoney } from '../quantities/read-money.ts'
import { readOneQuantity } from '../quantities/read-one-quantity.ts'
import type { AmountRead } from './amount-read.ts'
import { asMoney, exactDecimal } from './exact-decimal.ts'
import type { Amount } from './fact.ts'
import { scalarOf } from './front-tree.ts'
import { judgeAmount } from './judge-amount.ts'
import { quotedFront } from './quoted.ts'
import { readFigure } from './read-figure.ts'
import { placeOfText } from './scalar-text.ts'
import { report, type Sheet } from './sheet.ts'

/** A key's value as an amount of money, an exact decimal. */
export function readAmount(sheet: Sheet, front: Front, path: string): AmountRead | null {
  const byCode = amountByCode(sheet, front)
  const written = scalarOf(front)?.text.trim() ?? ''
  if (byCode !== null)
    return judgeAmount(sheet, { amount: byCode, place: placeOfText(front), figure: null }, { path, written })
  const read = readFigure(sheet, front, { path, role: 'price', dimensions: ['money'] })
  if (read === null) return null
  const amount = amountOf(read.quantity)
  if (amount !== null) return judgeAmount(sheet, { amount, place: read.place, figure: read.figure }, { path, written })
  const message = `Unexpected ${quotedFront(front)} for \`${path}\`, expected one amount of money such as \`£184\``
  report(sheet, 'not-a-quantity', { place: read.place, message, about: [path] })
  return null
}

/** `184 THB`: money that the reader of figures does not know. */
function amountByCode(sheet: Sheet, front: Front): Amount | null {
  const text = scalarOf(front)?.text.trim() ?? ''
  if (readOneQuantity(text, sheet.options) !== null) return null
  const money = readMoney(text, sheet.options)
  const decimal = money === null ? null : exactDecimal(money.amount)
  return money === null || decimal === null ? null : { amount: asMoney(decimal), currency: money.currency }
}

/** The exact decimal and the currency of a figure of money; null for a range, a bound and anything else. */
export function amountOf(quantity: Quantity): Amount | null {
  const money = moneyOf(quantity)
  const decimal = money === null ? null : exactDecimal(money.amount)
  return money === null || decimal === null ? null : { amount: asMoney(decimal), currency: money.currency }
}
