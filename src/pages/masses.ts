import { findUnit } from '../quantities/units.ts'
import type { Part } from '../record/record.ts'
import { type PageScope, standing } from './page-scope.ts'

/** What all of a part weigh, in kilograms; null where one was not weighed. */
export function massOf(part: Part): number | null {
  const held = standing(part.properties, 'mass')
  if (held?.value.type !== 'quantity' || held.value.quantity.dimension !== 'mass' || held.value.quantity.si === null)
    return null
  return held.value.quantity.si * Number(part.qty)
}

/** A mass worked out from others, in the unit in which the build shows masses. */
export function massText(scope: PageScope, kg: number): string {
  const wanted = scope.record.build.units.mass ?? 'kg'
  const unit = findUnit(wanted)
  const factor = unit?.dimension === 'mass' ? unit.factor.toNumber() : 1
  const value = kg / factor
  return `${value.toFixed(value < 100 ? 1 : 0)} ${unit?.dimension === 'mass' ? unit.symbol : 'kg'}`
}
