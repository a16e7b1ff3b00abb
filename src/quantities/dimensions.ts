import type { Dimension } from './quantity.ts'

/** Exponents of metre, kilogram, second, ampere, kelvin, candela and radian. */
type DimensionVector = readonly [number, number, number, number, number, number, number]

interface DimensionRow {
  readonly vector: DimensionVector
  readonly symbol: string
}

const row = (symbol: string, ...vector: DimensionVector): DimensionRow => ({ symbol, vector })

/** The coherent SI unit and the exponents of each dimension, BIPM SI Brochure (9th edition), tables 2 to 6. */
const rows: Record<Dimension, DimensionRow> = {
  length: row('m', 1, 0, 0, 0, 0, 0, 0),
  area: row('m²', 2, 0, 0, 0, 0, 0, 0),
  volume: row('m³', 3, 0, 0, 0, 0, 0, 0),
  mass: row('kg', 0, 1, 0, 0, 0, 0, 0),
  density: row('kg/m³', -3, 1, 0, 0, 0, 0, 0),
  force: row('N', 1, 1, -2, 0, 0, 0, 0),
  pressure: row('Pa', -1, 1, -2, 0, 0, 0, 0),
  torque: row('N·m', 2, 1, -2, 0, 0, 0, 0),
  energy: row('J', 2, 1, -2, 0, 0, 0, 0),
  power: row('W', 2, 1, -3, 0, 0, 0, 0),
  time: row('s', 0, 0, 1, 0, 0, 0, 0),
  speed: row('m/s', 1, 0, -1, 0, 0, 0, 0),
  acceleration: row('m/s²', 1, 0, -2, 0, 0, 0, 0),
  frequency: row('1/s', 0, 0, -1, 0, 0, 0, 0),
  angle: row('rad', 0, 0, 0, 0, 0, 0, 1),
  temperature: row('K', 0, 0, 0, 0, 1, 0, 0),
  voltage: row('V', 2, 1, -3, -1, 0, 0, 0),
  current: row('A', 0, 0, 0, 1, 0, 0, 0),
  charge: row('C', 0, 0, 1, 1, 0, 0, 0),
  resistance: row('Ω', 2, 1, -3, -2, 0, 0, 0),
  'resistance-per-length': row('Ω/m', 1, 1, -3, -2, 0, 0, 0),
  capacitance: row('F', -2, -1, 4, 2, 0, 0, 0),
  inductance: row('H', 2, 1, -2, -2, 0, 0, 0),
  flow: row('m³/s', 3, 0, -1, 0, 0, 0, 0),
  consumption: row('m³/m', 2, 0, 0, 0, 0, 0, 0),
  'spring-rate': row('N/m', 0, 1, -2, 0, 0, 0, 0),
  'let-through': row('A²s', 0, 0, 1, 2, 0, 0, 0),
  'count-per-length': row('1/m', -1, 0, 0, 0, 0, 0, 0),
  'luminous-flux': row('lm', 0, 0, 0, 0, 0, 1, 2),
  'luminous-intensity': row('cd', 0, 0, 0, 0, 0, 1, 0),
  illuminance: row('lx', -2, 0, 0, 0, 0, 1, 2),
  level: row('dB', 0, 0, 0, 0, 0, 0, 0),
  ratio: row('1', 0, 0, 0, 0, 0, 0, 0),
  money: row('', 0, 0, 0, 0, 0, 0, 0),
  thread: row('', 0, 0, 0, 0, 0, 0, 0),
}

/** The exponents of a dimension. */
export const dimensionVector = (dimension: Dimension): DimensionVector => rows[dimension].vector

/** The symbol of a dimension's coherent SI unit; empty for money and threads. */
export const siSymbol = (dimension: Dimension): string => rows[dimension].symbol

/** The exponents of a product (sign 1) or a quotient (sign -1). */
export function combineVectors(a: DimensionVector, b: DimensionVector, sign: 1 | -1): DimensionVector {
  const sum = (index: 0 | 1 | 2 | 3 | 4 | 5 | 6) => a[index] + sign * b[index]
  return [sum(0), sum(1), sum(2), sum(3), sum(4), sum(5), sum(6)]
}

/** The exponents of a power. */
export const powerVector = (vector: DimensionVector, power: number): DimensionVector => {
  const [m, kg, s, a, k, cd, rad] = vector
  return [m * power, kg * power, s * power, a * power, k * power, cd * power, rad * power]
}

/** Whether two sets of exponents are the same. */
export const isSameVector = (a: DimensionVector, b: DimensionVector): boolean => a.every((value, at) => value === b[at])
