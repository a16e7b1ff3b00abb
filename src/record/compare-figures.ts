import type { Dimension, Quantity } from '../quantities/quantity.ts'
import { type Interval, toleranceOf } from './tolerance.ts'

export type Comparison =
  | { readonly verdict: 'agree' }
  | { readonly verdict: 'differ' }
  /** The later figure is `factor` times the earlier, or the earlier is `factor` times the later. */
  | { readonly verdict: 'slip'; readonly factor: number; readonly of: string; readonly isLaterGreater: boolean }

interface Slip {
  readonly factor: number
  readonly of: string
  /** Null: any dimension. */
  readonly dimensions: readonly Dimension[] | null
}

const lengths: readonly Dimension[] = ['length', 'speed', 'consumption']
const volumes: readonly Dimension[] = ['volume', 'flow', 'consumption']

/** Factors by which a figure is out when its unit slipped: decimal prefixes; the rest by NIST SP 811 Appendix B, to four digits. */
const slips: readonly Slip[] = [
  { factor: 10, of: 'a decimal place', dimensions: null },
  { factor: 100, of: 'two decimal places', dimensions: null },
  { factor: 1000, of: 'three decimal places', dimensions: null },
  { factor: 25.4, of: 'inches for millimetres', dimensions: ['length'] }, // mm/in
  { factor: 3.785, of: 'US gallons for litres', dimensions: volumes }, // L/gal (US)
  { factor: 4.546, of: 'imperial gallons for litres', dimensions: volumes }, // L/gal (imperial)
  { factor: 1 / 0.4536, of: 'pounds for kilograms', dimensions: ['mass', 'force', 'spring-rate', 'density'] }, // lb/kg
  { factor: 1.609, of: 'miles for kilometres', dimensions: lengths }, // km/mile
]

const slack = 1e-9 // share of the figure: what converting to SI in floating point may be out by

/** Holds a later figure against an earlier one of the same dimension. Figures that cannot be compared agree. */
export function compareFigures(earlier: Quantity, later: Quantity, approximateShare: number): Comparison {
  const before = toleranceOf(earlier, approximateShare)
  const after = toleranceOf(later, approximateShare)
  if (before === null || after === null || meet(before, after)) return { verdict: 'agree' }
  return slipBetween(earlier, later, { before, after }) ?? { verdict: 'differ' }
}

function meet(one: Interval, other: Interval): boolean {
  const ends = [one.low, one.high, other.low, other.high].filter(Number.isFinite).map(Math.abs)
  const room = slack * Math.max(...ends, 0)
  return one.low <= other.high + room && other.low <= one.high + room
}

function slipBetween(
  earlier: Quantity,
  later: Quantity,
  { before, after }: { before: Interval; after: Interval },
): Comparison | null {
  if (earlier.si === null || later.si === null || !isClearOfZero(before) || !isClearOfZero(after)) return null
  if (earlier.dimension === 'temperature' || earlier.bound !== null || later.bound !== null) return null
  const ratio = later.si / earlier.si
  const fitting = slips
    .filter(({ dimensions }) => dimensions === null || dimensions.includes(later.dimension))
    .flatMap(slip => [
      { ...slip, times: slip.factor, isLaterGreater: true },
      { ...slip, times: 1 / slip.factor, isLaterGreater: false },
    ])
    .filter(({ times }) => meet({ low: before.low * times, high: before.high * times }, after))
    .sort((one, other) => Math.abs(Math.log(ratio / one.times)) - Math.abs(Math.log(ratio / other.times)))
  const [best] = fitting
  return best === undefined
    ? null
    : { verdict: 'slip', factor: best.factor, of: best.of, isLaterGreater: best.isLaterGreater }
}

/** A figure that may as well be nothing is no multiple of another. */
const isClearOfZero = ({ low, high }: Interval): boolean => low > 0 || high < 0
