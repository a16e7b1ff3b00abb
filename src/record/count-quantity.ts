import type { Quantity } from '../quantities/quantity.ts'

/** An exact count, such as a part's `qty`, as a figure without a unit. */
export function countQuantity(amount: string): Quantity {
  const number = Number(amount)
  return {
    text: amount,
    number,
    low: null,
    high: null,
    unit: '1',
    dimension: 'ratio',
    si: number,
    siLow: null,
    siHigh: null,
    plus: null,
    minus: null,
    approximate: false,
    bound: null,
    rounding: 0,
    exact: { number: amount, low: null, high: null },
    numberText: amount,
    thread: null,
    group: null,
    whole: null,
  }
}
