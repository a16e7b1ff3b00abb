import { propagate, type UncertainInput } from '../quantities/propagate.ts'
import { type Leaf, leavesOf, type Term, workerOf } from './term.ts'

/** How far one leaf moves a result. */
export interface Contribution {
  readonly leaf: Leaf
  /** Signed change of the result for one standard deviation of the leaf, in the result's SI unit. */
  readonly carried: number
  /** Share of the variance, 0 to 1. */
  readonly share: number
}

/** A result with what is known of it, in SI. */
export interface Worked {
  readonly value: number
  /** Expanded, k = 2. */
  readonly uncertainty: number
  /** The least and the greatest that the ends of all leaves allow. */
  readonly low: number
  readonly high: number
  /** Greatest share first. */
  readonly contributions: readonly Contribution[]
  /** By leaf: +1 where the result rises with it, −1 where it falls, 0 where it does not move. Worked out when asked for. */
  readonly slopes: ReadonlyMap<string, number>
}

/** Works a term out with its uncertainty (JCGM 100:2008). `isFrozen`: leaves that are taken as exact. Not finite: all is NaN. */
export function propagateTerm(term: Term, isFrozen: (leaf: Leaf) => boolean = () => false): Worked {
  const leaves = leavesOf(term)
  const inputs = leaves.map(leaf => inputOf(leaf, isFrozen(leaf)))
  const work = workerOf(term)
  const found = propagate(values => ({ result: work(values) }), inputs)?.result
  if (found === undefined)
    return {
      value: work({}),
      uncertainty: Number.NaN,
      low: Number.NaN,
      high: Number.NaN,
      contributions: [],
      get slopes() {
        return slopesOf(work, leaves)
      },
    }
  const byId = new Map(leaves.map(leaf => [leaf.id, leaf]))
  const variance = found.standard ** 2
  const contributions = found.contributions
    .flatMap(({ source, size }) => {
      const leaf = byId.get(source)
      return leaf === undefined || size === 0 ? [] : [{ leaf, carried: size, share: size ** 2 / variance }]
    })
    .sort((one, other) => other.share - one.share || (one.leaf.id < other.leaf.id ? -1 : 1))
  return {
    value: found.value,
    uncertainty: found.expanded,
    low: found.low,
    high: found.high,
    contributions,
    get slopes() {
      return slopesOf(work, leaves)
    },
  }
}

function inputOf({ id, value, deviation, low, high }: Leaf, isFrozen: boolean): UncertainInput {
  if (isFrozen) return { name: id, source: id, value, standard: 0, low: value, high: value }
  return { name: id, source: id, value, standard: deviation, low, high }
}

/** The sign of each slope, from a step of a millionth of the leaf. */
function slopesOf(work: ReturnType<typeof workerOf>, leaves: readonly Leaf[]): Map<string, number> {
  return new Map(
    leaves.map(({ id, value }) => {
      const step = Math.abs(value) * 1e-6 || 1e-9
      return [id, Math.sign(work({ [id]: value + step }) - work({ [id]: value - step }))]
    }),
  )
}
