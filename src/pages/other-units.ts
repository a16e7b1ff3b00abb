import { fromSi } from '../quantities/convert.ts'
import { formatWarranted } from '../quantities/format.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { unitOf } from '../quantities/units.ts'

/** The unit that another workshop would have written, both ways where one pair serves both. */
const pairs: readonly (readonly [string, string])[] = [
  ['mm', 'in'],
  ['m', 'ft'],
  ['km', 'mi'],
  ['kg', 'lb'],
  ['L', 'gal_imp'],
  ['Nm', 'lbf_ft'],
  ['N', 'lbf'],
  ['bar', 'psi'],
  ['degC', 'degF'],
  ['km_h', 'mph'],
  ['L_h', 'gal_imp_h'],
  ['L_100km', 'mpg_imp'],
  ['N_mm', 'lbf_per_in'],
]
const oneWay: Readonly<Record<string, string>> = {
  cm: 'in',
  thou: 'mm',
  yd: 'm',
  g: 'oz',
  oz: 'g',
  st: 'kg',
  t: 'lb',
  gal_us: 'L',
  pt_imp: 'L',
  lbf_in: 'Nm',
  kN: 'lbf',
  kPa: 'psi',
  kW: 'hp',
  hp: 'kW',
  PS: 'kW',
  AWG: 'mm2',
  mpg_us: 'L_100km',
}
const others: ReadonlyMap<string, string> = new Map([
  ...pairs,
  ...pairs.map(([one, other]) => [other, one] as const),
  ...Object.entries(oneWay),
])

/** A figure in the other system, with no more digits than its own rounding warrants: `33.86 in` for `860 mm`; null where there is none. */
export function inOtherUnits({
  unit,
  number,
  low,
  high,
  si,
  siLow,
  siHigh,
  plus,
  minus,
  rounding,
}: Quantity): string | null {
  const to = others.get(unit)
  if (to === undefined) return null
  const [from, until] = si === null ? [siLow, siHigh] : [si, si]
  const ends = [from, until].map(end => (end === null ? null : fromSi(end, unitOf(to))))
  const [first, last] = ends
  if (first === null || first === undefined || last === null || last === undefined) return null
  const size = Math.abs(number ?? high ?? low ?? 0)
  const share = size === 0 ? 0.01 : Math.max(plus ?? 0, minus ?? 0, rounding) / size
  const shown = [
    ...new Set([first, last].sort((a, b) => a - b).map(value => formatWarranted(value, spreadOf(value, share), to))),
  ]
  return shown.join(' to ')
}

/** Never finer than a tenth of what the figure was written to. */
const spreadOf = (value: number, share: number): number => Math.abs(value) * Math.max(share, 1e-4)
