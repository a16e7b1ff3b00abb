import { roundingSlack } from './limit.ts'

/** A result beside one end of its limit, in SI; `uncertainty` is U (k = 2) of their difference. */
export interface Comparison {
  readonly value: number
  readonly limit: number
  readonly side: 'min' | 'max'
  readonly uncertainty: number
}

export type Judgement = 'pass' | 'marginal' | 'fail'

/**
 * Fail: beyond the limit by more than U. Marginal: U > 0 and the limit lies within U of the result, on either side.
 * With U = 0 a value at its limit, within the rounding slack, passes.
 */
export function judge({ value, limit, side, uncertainty }: Comparison): Judgement {
  const beyond = side === 'max' ? value - limit : limit - value
  const slack = roundingSlack * Math.max(Math.abs(value), Math.abs(limit))
  if (uncertainty <= slack) return beyond <= slack ? 'pass' : 'fail'
  if (beyond > uncertainty + slack) return 'fail'
  return beyond >= -uncertainty - slack ? 'marginal' : 'pass'
}

/** The worst of several: fail, then marginal. */
export function worstOf(judgements: readonly Judgement[]): Judgement {
  return judgements.includes('fail') ? 'fail' : judgements.includes('marginal') ? 'marginal' : 'pass'
}
