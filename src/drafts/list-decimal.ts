import type { ReadOptions } from '../quantities/quantity.ts'
import type { ListCell } from './list-sheet.ts'
import type { NamedColumn } from './name-columns.ts'

type Decimal = ReadOptions['decimal']

const asComma = /\d,\d{1,2}(?!\d)|\d\.\d{3},\d/ // 12,50 and 1.234,5; 1,250 may be either
const asPoint = /\d\.\d{1,2}(?!\d)|\d,\d{3}\.\d/ // 12.50 and 1,234.5

/** The decimal mark that a list's own figures show; null where they show none, or both. */
export function listDecimal(rows: readonly (readonly ListCell[])[], columns: readonly NamedColumn[]): Decimal | null {
  const places = columns.flatMap(({ role, at }) => (role === 'cost' || role === 'qty' || role === 'mass' ? [at] : []))
  const texts = rows.flatMap(row => places.flatMap(at => (row[at]?.isNumber === false ? [row[at].text] : [])))
  const [comma, point] = [texts.some(text => asComma.test(text)), texts.some(text => asPoint.test(text))]
  if (comma === point) return null
  return comma ? 'comma' : 'point'
}

/** A figure with its points and commas changed about: `1.234,50` as `1,234.50`. */
export const changeMarks = (text: string): string => text.replace(/[.,]/g, mark => (mark === '.' ? ',' : '.'))
