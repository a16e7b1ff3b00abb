import { fromSi, toSi } from '../quantities/convert.ts'
import { formatQuantity, formatWarranted, formatWithUncertainty } from '../quantities/format.ts'
import type { Quantity, ReadOptions } from '../quantities/quantity.ts'
import { Rational } from '../quantities/rational.ts'
import { unitOf } from '../quantities/units.ts'

/** The unit that another workshop would have written, both ways where one pair serves both. */
const pairs: readonly (readonly [string, string])[] = [
  ['mm', 'in'],
  ['m', 'ft'],
  ['km', 'mi'],
  ['kg', 'lb'],
  ['Nm', 'lbf_ft'],
  ['N', 'lbf'],
  ['bar', 'psi'],
  ['degC', 'degF'],
  ['km_h', 'mph'],
  ['m_s', 'ft_s'],
  ['N_mm', 'lbf_per_in'],
]
/** A gallon is of two sizes: both stand beside a litre, so that neither is taken for the other, where the build does not say which it means. */
const oneWay: Readonly<Record<string, readonly string[]>> = {
  L: ['gal_imp', 'gal_us'],
  L_h: ['gal_imp_h', 'gal_us_h'],
  L_100km: ['mpg_imp', 'mpg_us'],
  gal_imp: ['L'],
  gal_us: ['L'],
  gal_imp_h: ['L_h'],
  gal_us_h: ['L_h'],
  mpg_imp: ['L_100km'],
  mpg_us: ['L_100km'],
  cm: ['in'],
  thou: ['mm'],
  yd: ['m'],
  g: ['oz'],
  oz: ['g'],
  st: ['kg'],
  t: ['lb'],
  pt_imp: ['L'],
  pt_us: ['L'],
  lbf_in: ['Nm'],
  kN: ['lbf'],
  kPa: ['psi'],
  MPa: ['psi'],
  N_mm2: ['psi'],
  N_m: ['lbf_per_in'],
  kW: ['hp'],
  hp: ['kW'],
  PS: ['kW'],
  AWG: ['mm2'],
}
const others: ReadonlyMap<string, readonly string[]> = new Map([
  ...pairs.map(([one, other]) => [one, [other]] as const),
  ...pairs.map(([one, other]) => [other, [one]] as const),
  ...Object.entries(oneWay),
])

type Gallon = ReadOptions['gallon']

/** The units that stand beside one; of the gallons only that of the build. */
function othersOf(unit: string, gallon: Gallon): readonly string[] {
  const unmeant = { imperial: /_us(?:_h)?$/, us: /_imp(?:_h)?$/ }
  return (others.get(unit) ?? []).filter(to => gallon === null || !unmeant[gallon].test(to))
}

/** A figure in the other system, with no more digits than its own rounding warrants: `33.86 in` for `860 mm`; null where there is none. */
export function inOtherUnits(quantity: Quantity, gallon: Gallon): string | null {
  const shown = othersOf(quantity.unit, gallon).flatMap(to => inUnit(quantity, to) ?? [])
  return shown.length === 0 ? null : shown.join(', ')
}

function inUnit(quantity: Quantity, to: string): string | null {
  const { number, low, high, si, siLow, siHigh, plus, minus, rounding } = quantity
  const ends = (si === null ? [siLow, siHigh] : [si, si]).map(end => (end === null ? null : fromSi(end, unitOf(to))))
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

interface Worked {
  readonly value: number
  readonly uncertainty?: number
  readonly unit: string
}

/** A worked figure in the other system, with its uncertainty where it has one: `104.0 ± 2.2 lb`; null where there is none. */
export function figureInOthers({ value, uncertainty = 0, unit }: Worked, gallon: Gallon): string | null {
  const shown = othersOf(unit, gallon).flatMap(to => {
    const [low, middle, high] = [value - uncertainty, value, value + uncertainty].map(one => converted(one, unit, to))
    if (low == null || middle == null || high == null) return []
    const spread = Math.abs(high - low) / 2
    return [spread > 0 ? formatWithUncertainty(middle, spread, to) : formatQuantity(Number(middle.toPrecision(4)), to)]
  })
  return shown.length === 0 ? null : shown.join(', ')
}

function converted(value: number, from: string, to: string): number | null {
  if (!Number.isFinite(value)) return null
  const si = toSi(Rational.fromNumber(value), unitOf(from))
  const found = si === null ? null : fromSi(si, unitOf(to))
  return found !== null && Number.isFinite(found) ? found : null
}
