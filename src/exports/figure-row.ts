import type { Place } from '../findings/place.ts'
import { siSymbol } from '../quantities/dimensions.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { findUnit } from '../quantities/units.ts'

/** A figure as record.json and the tables print it: what was written, its value, its unit, where it stands. */
export function figureRow(quantity: Quantity): Record<string, unknown> {
  const { text, number, low, high, bound, unit, dimension, plus, minus, approximate, thread } = quantity
  const rest = { ucum: findUnit(unit)?.ucum ?? null, dimension, si: siOf(quantity), plus, minus, approximate }
  if (thread !== null) return { text, value: null, low, high, bound, unit, ...rest, thread }
  return { text, value: number, low, high, bound, unit, ...rest }
}

function siOf(quantity: Quantity): Record<string, unknown> | null {
  const { si, siLow, siHigh, dimension } = quantity
  if (si === null && siLow === null && siHigh === null) return null
  const unit = siSymbol(dimension)
  return si === null ? { value: null, low: siLow, high: siHigh, unit } : { value: si, unit }
}

/** Where a figure stands, and the address of the page that shows it. */
export function placeRow(place: Place, url: string | null): Record<string, unknown> {
  return { file: place.file, line: place.line, column: place.column, ...(url === null ? {} : { url }) }
}
