import type { Quantity } from './quantity.ts'
import type { Unit } from './unit.ts'

/** A quantity while it is put together. */
export type DraftQuantity = { -readonly [Key in keyof Quantity]: Quantity[Key] }

/** A quantity of which only the text and the unit are known. */
export function blankQuantity(text: string, unit: Unit): DraftQuantity {
  return {
    text,
    number: null,
    low: null,
    high: null,
    unit: unit.id,
    dimension: unit.dimension,
    si: null,
    siLow: null,
    siHigh: null,
    plus: null,
    minus: null,
    approximate: false,
    bound: null,
    rounding: 0,
    exact: { number: null, low: null, high: null },
    numberText: null,
    thread: null,
    group: null,
    whole: null,
  }
}
