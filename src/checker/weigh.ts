import { workFormula } from './formula.ts'
import { type Comparison, type Judgement, judge, worstOf } from './judge.ts'
import type { LimitEnd } from './limit-end.ts'
import type { Notebook } from './notebook.ts'
import { propagateTerm, type Worked } from './propagate.ts'
import type { ResolvedLimit, StandingLimit } from './resolve-limit.ts'
import { type Leaf, leavesOf, type Term, workOut } from './term.ts'
import type { VerdictWord } from './verdict.ts'

interface Result {
  readonly term: Term
  readonly worked: Worked
}

/** A verdict with what decided it. */
export interface Weighed {
  readonly verdict: VerdictWord
  /** Of the check's own limit, where build.md sets another. */
  readonly byOwn: VerdictWord | null
  /** The end that decided: the one failed, else the nearest. Null for a working. */
  readonly nearest: Comparison | null
}

/** Holds a result against its limit by the rules of CHECKS: missing never passes, an override with its reason waives. */
export function weigh(result: Result | null, limit: ResolvedLimit | null, notebook: Notebook): Weighed {
  const standing = limit?.override ?? limit?.own ?? null
  if (result === null || notebook.missing.length > 0) return { verdict: 'missing', byOwn: null, nearest: null }
  if (standing === null || limit === null) return { verdict: 'pass', byOwn: null, nearest: null }
  const comparisons = compare(result, standing)
  const open = openSide(result, comparisons)
  if (open !== null) {
    notebook.need(
      open.leaf.path ?? open.leaf.symbol,
      `${open.leaf.meaning} is only known as ${open.leaf.text ?? 'a bound'}, which cannot show it`,
    )
    return { verdict: 'missing', byOwn: null, nearest: null }
  }
  const word = beyond(worstOf(comparisons.map(judge)), limit)
  const byOwn = limit.override === null ? null : beyond(worstOf(compare(result, limit.own).map(judge)), limit)
  return { verdict: waive(word, byOwn, limit, notebook), byOwn, nearest: nearestOf(comparisons) }
}

function beyond(word: Judgement, limit: ResolvedLimit): Judgement {
  return word === 'fail' && limit.beyond === 'marginal' ? 'marginal' : word
}

function waive(word: Judgement, byOwn: Judgement | null, limit: ResolvedLimit, notebook: Notebook): VerdictWord {
  if (word !== 'pass' || byOwn !== 'fail' || limit.override === null) return word
  if (limit.override.why !== null) return 'waived'
  notebook.note('The limit of build.md has no reason beside it, so it waives nothing.')
  return 'fail'
}

function compare({ term, worked }: Result, limit: StandingLimit): Comparison[] {
  const ends = [['min', limit.min] as const, ['max', limit.max] as const]
  return ends.flatMap(([side, end]) =>
    end === null
      ? []
      : [
          {
            side,
            value: worked.value,
            limit: workOut(end.term),
            uncertainty: limit.isAgreement ? 0 : uncertaintyBetween(term, worked, end),
          },
        ],
  )
}

/** U of result less limit. A limit is exact, unless a ± is written in what it stands on. */
function uncertaintyBetween(result: Term, worked: Worked, end: LimitEnd): number {
  const ownLeaves = new Set(leavesOf(result).map(({ id }) => id))
  const limitLeaves = leavesOf(end.term)
  if (!limitLeaves.some(leaf => leaf.isSpread)) return worked.uncertainty
  const isExact = new Set(limitLeaves.filter(leaf => !leaf.isSpread && !ownLeaves.has(leaf.id)).map(({ id }) => id))
  const difference = workFormula([{ line: 'd = result - limit', unit: '1', says: '' }], { result, limit: end.term })
  return propagateTerm(difference, leaf => isExact.has(leaf.id)).uncertainty
}

/** A figure given only as a bound, on the side that would have to be known: *at least 5 A* cannot show that a load is small enough. */
function openSide({ term, worked }: Result, comparisons: readonly Comparison[]): { leaf: Leaf } | null {
  for (const leaf of leavesOf(term)) {
    if (leaf.bound === null) continue
    const rises = (worked.slopes.get(leaf.id) ?? 0) * (leaf.bound === 'min' ? 1 : -1)
    const decides = comparisons.some(comparison => {
      const towards = comparison.side === 'max' ? rises > 0 : rises < 0
      return towards !== (judge(comparison) === 'fail') && rises !== 0
    })
    if (decides) return { leaf }
  }
  return null
}

function nearestOf(comparisons: readonly Comparison[]): Comparison | null {
  const over = ({ side, value, limit }: Comparison): number => (side === 'max' ? value - limit : limit - value)
  return comparisons.reduce<Comparison | null>(
    (worst, one) => (worst === null || over(one) > over(worst) ? one : worst),
    null,
  )
}
