import { fromSi } from '../../src/checker/unit.ts'
import type { Dimension, Quantity } from '../../src/quantities/quantity.ts'
import { unitOf } from '../../src/quantities/units.ts'
import { readFigure } from '../checker/read-shapes.ts'
import type { Given } from '../checker/record-maker.ts'

/** Another unit of each dimension, as a note writes it. */
const otherUnit: Partial<Record<Dimension, readonly [id: string, written: string]>> = {
  length: ['in', 'in'],
  area: ['cm2', 'cm²'],
  volume: ['m3', 'm³'],
  mass: ['lb', 'lb'],
  density: ['kg_m3', 'kg/m³'],
  force: ['lbf', 'lbf'],
  pressure: ['kPa', 'kPa'],
  torque: ['lbf_ft', 'lbf·ft'],
  power: ['kW', 'kW'],
  time: ['min', 'min'],
  speed: ['m_s', 'm/s'],
  acceleration: ['m_s2', 'm/s²'],
  frequency: ['Hz', 'Hz'],
  angle: ['rad', 'rad'],
  temperature: ['K', 'K'],
  voltage: ['mV', 'mV'],
  current: ['mA', 'mA'],
  charge: ['mAh', 'mAh'],
  resistance: ['Ohm', 'Ω'],
  flow: ['m3_h', 'm³/h'],
  'spring-rate': ['N_mm', 'N/mm'],
}

/** A figure of a made record that can be varied: no range, no bound, no gauge, no bare number, nothing of build.md's limits. */
function variable(path: string, text: string): Quantity | null {
  if (/^(limit|require|ask|job|temporary|state|volume)\b/.test(path)) return null
  const quantity = readFigure(text)
  const isPlain = quantity?.number != null && quantity.bound === null && !quantity.approximate
  return isPlain && !['AWG', '1', 'thread'].includes(quantity.unit) ? quantity : null
}

/** The paths whose figures can be varied. */
export function variablePaths(given: Given): string[] {
  return Object.keys(given).filter(path => variable(path, given[path] ?? '') !== null)
}

/** The same record with every figure exact. */
export function made(given: Given, change: (quantity: Quantity, path: string) => string): Given {
  const entries = Object.entries(given).map(([path, text]) => {
    const quantity = variable(path, text)
    return [path, quantity === null ? text : change(quantity, path)] as const
  })
  return Object.fromEntries(entries)
}

export const exact = ({ number, unit }: Quantity): string =>
  `${decimal(number ?? 0)} ${unitOf(unit).symbol} ± 0 ${unitOf(unit).symbol}`

/** The same figure, exact, in another unit. */
export function inOtherUnit(quantity: Quantity): string {
  const [id, written] = otherUnit[quantity.dimension] ?? [quantity.unit, unitOf(quantity.unit).symbol]
  return `${decimal(fromSi(quantity.si ?? 0, id))} ${written} ± 0 ${written}`
}

/** A figure of another dimension; a mass may stand for a force. */
export const ofOtherDimension = ({ dimension }: Quantity): string =>
  ['mass', 'force'].includes(dimension) ? '5 V' : '5 kg'

/** A number in digits, never with an exponent, which no builder writes. */
export function decimal(value: number): string {
  const text = String(value)
  return text.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : text
}
