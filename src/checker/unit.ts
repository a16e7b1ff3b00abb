import { fromSi as siToUnit, toSi as unitToSi } from '../quantities/convert.ts'
import type { Dimension } from '../quantities/quantity.ts'
import { Rational } from '../quantities/rational.ts'
import { findUnit, unitOf } from '../quantities/units.ts'

/** A number in a unit, in coherent SI; not a number where the unit has none. */
export function toSi(value: number, id: string): number {
  return Number.isFinite(value) ? (unitToSi(Rational.fromNumber(value), unitOf(id)) ?? Number.NaN) : Number.NaN
}

/** A number in coherent SI, in a unit; not a number where there is none. */
export function fromSi(value: number, id: string): number {
  return siToUnit(value, unitOf(id)) ?? Number.NaN
}

/** A difference in coherent SI, such as an uncertainty, in a unit: 5 K are 5 °C. */
export function differenceFromSi(difference: number, id: string): number {
  const { scale, factor } = unitOf(id)
  return difference / factor.toNumber() / (scale === 'angle' ? Math.PI : 1)
}

export function dimensionOf(id: string): Dimension {
  return unitOf(id).dimension
}

/** The unit in which a figure is shown: the builder's for its dimension, where build.md names one that exists, else the check's own. A way on the road stays in km. */
export function shownUnit(own: string, chosen: Readonly<Record<string, string>>): string {
  if (own === 'km') return own
  const dimension = dimensionOf(own)
  const wanted = Object.hasOwn(chosen, dimension) ? chosen[dimension] : undefined
  return wanted !== undefined && findUnit(wanted)?.dimension === dimension ? wanted : own
}
