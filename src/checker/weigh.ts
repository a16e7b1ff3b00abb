import { workFormula } from './formula.ts'
import { type Comparison, type Judgement, judge, worstOf } from './judge.ts'
import type { LimitEnd } from './limit-end.ts'
import type { Notebook } from './notebook.ts'
import { propagateTerm, type Worked } from './propagate.ts'
import type { ResolvedLimit, StandingLimit } from './standing-limit.ts'
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
  if (!comparisons.every(({ limit: end, uncertainty }) => Number.isFinite(end) && Number.isFinite(uncertainty))) {
    notebook.need('limit', 'with these figures the limit has no finite value')
    return { verdict: 'missing', byOwn: null, nearest: null }
  }
  const open = openSide(result, comparisons, standing)
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

/** A figure given only as a bound, on the side that would have to be known: *at least 5 A* cannot show that a load is small enough, nor *below 30 A* that a rating is great enough. */
function openSide(result: Result, comparisons: readonly Comparison[], limit: StandingLimit): { leaf: Leaf } | null {
  const own = boundLeaves(result.term, slope => result.worked.slopes.get(slope) ?? 0)
  const decidesOwn = own.find(moved => comparisons.some(comparison => decides(moved, comparison)))
  if (decidesOwn !== undefined) return decidesOwn
  for (const comparison of comparisons) {
    const end = limit[comparison.side]
    if (end === null || !leavesOf(end.term).some(({ bound }) => bound !== null)) continue
    const { slopes } = propagateTerm(end.term)
    const found = boundLeaves(end.term, id => -(slopes.get(id) ?? 0)).find(
      moved => !isGreatestBySaying(moved.leaf) && decides(moved, comparison),
    )
    if (found !== undefined) return found
  }
  return null
}

interface Moved {
  readonly leaf: Leaf
  /** Which way the result less its limit goes, where the figure goes to the open side of its bound. */
  readonly rises: number
}

function boundLeaves(term: Term, slopeOf: (id: string) => number): Moved[] {
  return leavesOf(term).flatMap(leaf =>
    leaf.bound === null ? [] : [{ leaf, rises: slopeOf(leaf.id) * (leaf.bound === 'min' ? 1 : -1) }],
  )
}

function decides({ rises }: Moved, comparison: Comparison): boolean {
  const towards = comparison.side === 'max' ? rises > 0 : rises < 0
  return towards !== (judge(comparison) === 'fail') && rises !== 0
}

/** *Max 30 A* beside a rating is the rating, not a bound of it. */
const isGreatestBySaying = ({ bound, text }: Leaf): boolean =>
  bound === 'max' && text !== null && /\b(max(imum)?|up to)\b/i.test(text)

function nearestOf(comparisons: readonly Comparison[]): Comparison | null {
  const over = ({ side, value, limit }: Comparison): number => (side === 'max' ? value - limit : limit - value)
  return comparisons.reduce<Comparison | null>(
    (worst, one) => (worst === null || over(one) > over(worst) ? one : worst),
    null,
  )
}
