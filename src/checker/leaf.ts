import type { Quantity } from '../quantities/quantity.ts'
import type { Held } from '../record/record.ts'
import { spreadOf } from './spread.ts'
import type { Leaf } from './term.ts'
import { toSi } from './unit.ts'

interface LeafSpec {
  readonly symbol: string
  readonly meaning: string
  readonly unit: string
  /** Ratings, nominal voltages and sections, gauges, counts: only a written ± or *about* counts. */
  readonly isExact: boolean
}

/** A figure of the record as a working begins with it. `share` is what *about* is worth. */
export function leafOf(
  found: { readonly path: string; readonly held: Held<Quantity> },
  spec: LeafSpec,
  share: number,
): Leaf {
  const { path, held } = found
  const quantity = held.value
  const spread = spreadOf(quantity, share)
  const exact = spec.isExact && !spread.isSpread
  return {
    type: 'leaf',
    id: path,
    origin: 'record',
    symbol: spec.symbol,
    meaning: spec.meaning,
    path,
    quantity,
    place: held.place,
    session: held.session,
    figure: held.figure,
    unit: quantity.unit,
    text: quantity.text,
    value: spread.value,
    low: exact ? spread.value : spread.low,
    high: exact ? spread.value : spread.high,
    deviation: exact ? 0 : spread.deviation,
    isSpread: spread.isSpread,
    bound: quantity.bound,
  }
}

/** A figure that no note states, in its unit: a constant, a table's row, an assumption. It is exact. */
export function statedLeaf(origin: Leaf['origin'], spec: Omit<LeafSpec, 'isExact'> & { readonly value: number }): Leaf {
  const value = toSi(spec.value, spec.unit)
  return {
    type: 'leaf',
    id: `${origin}:${spec.symbol}=${spec.value} ${spec.unit}`,
    origin,
    symbol: spec.symbol,
    meaning: spec.meaning,
    path: null,
    quantity: null,
    place: null,
    session: null,
    figure: null,
    unit: spec.unit,
    text: null,
    value,
    low: value,
    high: value,
    deviation: 0,
    isSpread: false,
    bound: null,
  }
}
