export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'density'
  | 'force'
  | 'pressure'
  | 'torque'
  | 'energy'
  | 'power'
  | 'time'
  | 'speed'
  | 'acceleration'
  | 'frequency'
  | 'angle'
  | 'temperature'
  | 'voltage'
  | 'current'
  | 'charge'
  | 'resistance'
  | 'resistance-per-length'
  | 'capacitance'
  | 'inductance'
  | 'flow'
  | 'consumption'
  | 'spring-rate'
  | 'let-through'
  | 'count-per-length'
  | 'luminous-flux'
  | 'luminous-intensity'
  | 'illuminance'
  | 'level'
  | 'ratio'
  | 'money'
  | 'thread'

/** A figure as a builder wrote it. Plain JSON: exact rationals are kept as text, `59/8`. */
export interface Quantity {
  /** As written, with its about, bound, ± and range words. */
  readonly text: string
  /** In `unit`; null for a range, a thread and a gauge such as 2/0. */
  readonly number: number | null
  /** A range's ends, or a bound's one end, in `unit`. */
  readonly low: number | null
  readonly high: number | null
  /** Identifier of the unit, such as `mm`, `lbf_ft`, `money:GBP`, `AWG`, `thread`, `1`. */
  readonly unit: string
  readonly dimension: Dimension
  /** In coherent SI units; null where `number` is null and for money, threads. */
  readonly si: number | null
  readonly siLow: number | null
  readonly siHigh: number | null
  /** Sizes of a written tolerance, in `unit`; null where none was written. */
  readonly plus: number | null
  readonly minus: number | null
  readonly approximate: boolean
  readonly bound: 'min' | 'max' | null
  /** Half of the last digit as written, in `unit`. */
  readonly rounding: number
  /** The exact rationals behind number, low and high. */
  readonly exact: { readonly number: string | null; readonly low: string | null; readonly high: string | null }
  /** The digits as written (`4.30`, `2/0`). */
  readonly numberText: string | null
  /** Diameter and pitch in millimetres. */
  readonly thread: { readonly diameter: number; readonly pitch: number | null } | null
  /** Lengths that belong together, such as 860 × 380 × 300 mm, share a group, numbered from 1 in a text. */
  readonly group: number | null
  /** The string that a member of a group or of `60/55W` stands in. */
  readonly whole: string | null
  /** Set where a temperature is a difference, as in `rose by 20 °C`; its SI value is then in kelvins without an offset. */
  readonly difference?: boolean
}

/** What build.md sets about reading figures. */
export interface ReadOptions {
  readonly gallon: 'imperial' | 'us' | null
  readonly mil: 'mm' | 'thou' | null
  readonly decimal: 'point' | 'comma'
}

export const plainReading: ReadOptions = { gallon: null, mil: null, decimal: 'point' }

/** A quantity and where it stands in the text that was read, UTF-16 units from 0, the end exclusive. */
export interface Reading {
  readonly quantity: Quantity
  readonly start: number
  readonly end: number
}

/** What could not be read as one thing only. */
export interface ReadingDoubt {
  readonly rule: 'ambiguous-unit' | 'decimal-mark' | 'two-readings' | 'unit-missing'
  readonly text: string
  readonly start: number
  readonly end: number
  readonly message: string
  readonly mend: string | null
}
