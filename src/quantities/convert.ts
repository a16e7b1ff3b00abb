import { awgArea, awgOfArea } from './awg.ts'
import type { Rational } from './rational.ts'
import type { Unit } from './unit.ts'

/** The exact SI value; null for angles and gauges, whose factor is no fraction, and for money and threads. */
export function exactSi(value: Rational, unit: Unit): Rational | null {
  if (unit.scale === 'factor') return value.times(unit.factor)
  if (unit.scale === 'offset') return value.plus(unit.offset).times(unit.factor)
  if (unit.scale === 'reciprocal' && !value.isZero()) return unit.factor.over(value)
  return null
}

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null)

/** The SI value as the nearest float; null where there is none. */
export function toSi(value: Rational, unit: Unit): number | null {
  if (unit.scale === 'angle') return finite(value.times(unit.factor).toNumber() * Math.PI)
  if (unit.scale === 'gauge') return finite(awgArea(value.toNumber()))
  if (unit.scale === 'factor') return finite(value.productAsNumber(unit.factor))
  const exact = exactSi(value, unit)
  return exact === null ? null : finite(exact.toNumber())
}

/** The size in SI of a difference in a unit: no offset is added. Null for scales that are not straight. */
export function intervalToSi(size: Rational, unit: Unit): number | null {
  if (unit.scale === 'factor' || unit.scale === 'offset') return finite(size.times(unit.factor).toNumber())
  return unit.scale === 'angle' ? finite(size.times(unit.factor).toNumber() * Math.PI) : null
}

/** An exact value in another unit of the same dimension; null where there is no exact one. */
export function convertExactly(value: Rational, from: Unit, to: Unit): Rational | null {
  if (from.dimension !== to.dimension) return null
  if (from.scale === 'angle' && to.scale === 'angle') return value.times(from.factor).over(to.factor)
  const si = exactSi(value, from)
  if (si === null) return null
  if (to.scale === 'factor') return si.over(to.factor)
  if (to.scale === 'offset') return si.over(to.factor).minus(to.offset)
  return to.scale === 'reciprocal' && !si.isZero() ? to.factor.over(si) : null
}

/** What an SI value is in a unit; null where there is no such number. */
export function fromSi(si: number, unit: Unit): number | null {
  const factor = unit.factor.toNumber()
  if (unit.scale === 'factor') return finite(si / factor)
  if (unit.scale === 'offset') return finite(si / factor - unit.offset.toNumber())
  if (unit.scale === 'reciprocal') return finite(factor / si)
  if (unit.scale === 'angle') return finite(si / (factor * Math.PI))
  return unit.scale === 'gauge' && si > 0 ? finite(awgOfArea(si)) : null
}
