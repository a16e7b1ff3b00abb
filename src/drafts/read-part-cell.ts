import { actions } from '../facts/closed-words.ts'
import { positiveDecimal } from '../facts/exact-decimal.ts'
import { identifierOf } from '../facts/identifier.ts'
import { kinds } from '../facts/kinds.ts'
import type { ReadOptions } from '../quantities/quantity.ts'
import { readBareNumber } from '../quantities/read-bare-number.ts'
import { readMoney } from '../quantities/read-money.ts'
import { readOneQuantity } from '../quantities/read-one-quantity.ts'
import type { DraftGround } from './draft-ground.ts'
import type { ListCell } from './list-sheet.ts'
import type { NamedColumn } from './name-columns.ts'

/** A cell as the value of its key in YAML; null where it is not understood. */
export function readPartCell(cell: ListCell, column: NamedColumn, { record, options }: DraftGround): string | null {
  const { text } = cell
  switch (column.role) {
    case 'name':
    case 'number':
    case 'from':
    case 'why':
      return JSON.stringify(text)
    case 'qty':
      return readCount(text, options)
    case 'cost':
      return readCost(cell, column.unit ?? record.build.currency, options)
    case 'mass':
      return readMass(cell, column.unit, options)
    case 'system':
      return record.systems.find(({ id, name }) => [id, name.toLowerCase()].includes(text.toLowerCase()))?.id ?? null
    case 'kind':
      return Object.hasOwn(kinds, identifierOf(text)) ? identifierOf(text) : null
    case 'action':
      return actions.find(word => word === identifierOf(text)) ?? null
    default:
      return null
  }
}

/** `4`, `4 off`, `x 4`; none is no quantity. */
function readCount(text: string, { decimal }: ReadOptions): string | null {
  const number = /^(?:x\s*)?(\d+(?:[.,]\d+)?)\s*(?:x|off|pcs?|pieces?)?$/i.exec(text)?.[1] ?? ''
  return positiveDecimal(number, decimal) === null ? null : number
}

/** An amount with its currency; a bare number is in the heading's currency, else in the build's. */
function readCost(cell: ListCell, currency: string, options: ReadOptions): string | null {
  // What a spreadsheet holds as a number has a point, whatever the build writes.
  const text = cell.isNumber && options.decimal === 'comma' ? cell.text.replace('.', ',') : cell.text
  const number = readBareNumber(text, options.decimal)
  if (number !== null)
    return (number.number ?? -1) >= 0 && /^[A-Z]{3}$/.test(currency) ? JSON.stringify(`${text} ${currency}`) : null
  const money = readMoney(text, options)
  return money === null || money.amount.startsWith('-') ? null : JSON.stringify(text)
}

function readMass({ text }: ListCell, unit: string | null, options: ReadOptions): string | null {
  const written = readOneQuantity(text, options) === null && unit !== null ? `${text} ${unit}` : text
  return readOneQuantity(written, options)?.dimension === 'mass' ? JSON.stringify(written) : null
}
