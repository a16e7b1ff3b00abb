import type { ReadOptions } from '../quantities/quantity.ts'
import { readOneQuantity } from '../quantities/read-one-quantity.ts'
import { exactDecimal, positiveDecimal } from './exact-decimal.ts'

const minutesInHour = 60n
const secondsInHour = 3600
const places = 4 // digits kept where minutes make no exact decimal, as 20 of 60 do: a third of a second

/** `6.5`, `6 h 30`, `6h30`, `6:30`, `390 min`, `6½ hours` as decimal hours; null for anything else. */
export function readHours(text: string, options: ReadOptions): string | null {
  const written = text.trim()
  const plain = positiveDecimal(written, options.decimal)
  if (plain !== null) return plain
  const [, hours, minutes] =
    /^(\d+)\s*(?:h|hrs?|hours?|:)\s*(?:and\s*)?(\d{1,2})\s*(?:m|mins?|minutes?)?$/i.exec(written) ?? []
  if (hours !== undefined && minutes !== undefined)
    return Number(minutes) < 60 ? clockHours(BigInt(hours), BigInt(minutes)) : null
  const quantity = readOneQuantity(written, options)
  if (quantity?.dimension !== 'time' || quantity.si === null || quantity.si <= 0) return null
  return exactHours(quantity.unit, quantity.exact.number) ?? trimmed((quantity.si / secondsInHour).toFixed(places))
}

const exactHours = (unit: string, exact: string | null): string | null =>
  unit === 'h' && exact !== null ? exactDecimal(exact) : null

function clockHours(hours: bigint, minutes: bigint): string {
  const all = hours * minutesInHour + minutes
  return exactDecimal(`${all}/${minutesInHour}`) ?? decimalOf(all)
}

/** Minutes as hours, rounded half up to the places kept. */
function decimalOf(minutes: bigint): string {
  const scale = 10n ** BigInt(places)
  const scaled = (minutes * scale * 2n + minutesInHour) / (2n * minutesInHour)
  return trimmed(`${scaled / scale}.${(scaled % scale).toString().padStart(places, '0')}`)
}

const trimmed = (decimal: string): string => decimal.replace(/\.?0+$/, '')
