import type { Place } from '../findings/place.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { evaluate, type Value } from './evaluate.ts'
import type { Expression } from './expression.ts'

/** One figure that a working begins with: written by the builder, read off a table, assumed, or a constant. Numbers are SI. */
export interface Leaf {
  readonly type: 'leaf'
  /** The same words give the same leaf wherever they are used, so that what is shared is spread once. */
  readonly id: string
  readonly origin: 'record' | 'table' | 'assumed' | 'constant' | 'limit'
  readonly symbol: string
  readonly meaning: string
  /** Where the record holds it; null for what no builder wrote. */
  readonly path: string | null
  readonly quantity: Quantity | null
  readonly place: Place | null
  readonly session: string | null
  readonly figure: string | null
  /** How it is shown: a unit's identifier, and a text as written where there is one. */
  readonly unit: string
  readonly text: string | null
  readonly value: number
  /** The ends of what it can be, and its standard uncertainty. */
  readonly low: number
  readonly high: number
  readonly deviation: number
  /** A ± or an *about* was written: it counts even where the kind of figure is exact. */
  readonly isSpread: boolean
  readonly bound: 'min' | 'max' | null
}

/** One line of a working: a name, its formula, and the values that the names in the formula stand for. */
export interface Step {
  readonly type: 'step'
  readonly symbol: string
  readonly expression: Expression
  readonly uses: Readonly<Record<string, Term | readonly Term[]>>
  readonly unit: string
  readonly says: string
}

export type Term = Leaf | Step

/** Works a term out with its leaves as given, by identifier, else as they stand. */
export function workOut(term: Term, leaves: Readonly<Record<string, number>> = {}): number {
  return workerOf(term)(leaves)
}

/** A term made ready to be worked out many times: everything that it stands on, in order. What stands on no changed leaf is kept. */
export function workerOf(term: Term): (leaves: Readonly<Record<string, number>>) => number {
  const order: Term[] = []
  visitTerms(term, part => order.push(part))
  const at = new Map(order.map((part, index) => [part, index]))
  const results = new Array<number>(order.length).fill(Number.NaN)
  const isChanged = new Array<boolean>(order.length).fill(false)
  let isFirst = true
  const under = order.map(part => (part.type === 'leaf' ? null : usedBy(part).map(used => at.get(used) ?? -1)))
  const works = order.map(part =>
    part.type === 'leaf' ? leafWork(part) : stepWork(part, used => results[at.get(used) ?? -1] ?? Number.NaN),
  )
  return leaves => {
    for (const [index, work] of works.entries()) {
      const before = results[index] ?? Number.NaN
      const below = under[index]
      const isKept = !isFirst && below !== null && below?.some(used => isChanged[used]) === false
      results[index] = isKept ? before : work(leaves)
      isChanged[index] = results[index] !== before
    }
    isFirst = false
    return results.at(-1) ?? Number.NaN
  }
}

const usedBy = ({ uses }: Step): Term[] => Object.values(uses).flat() as Term[]

type Work = (leaves: Readonly<Record<string, number>>) => number

const leafWork =
  ({ id, value }: Leaf): Work =>
  leaves =>
    leaves[id] ?? value

function stepWork({ expression, uses, symbol }: Step, resultOf: (term: Term) => number): Work {
  const used = Object.entries(uses)
  const values: Record<string, Value> = {}
  return () => {
    for (const [name, terms] of used) values[name] = 'type' in terms ? resultOf(terms) : terms.map(resultOf)
    return single(evaluate(expression, values), symbol)
  }
}

function single(value: Value, symbol: string): number {
  if (typeof value === 'number') return value
  throw new Error(`Unexpected set for \`${symbol}\`, expected one figure: add it up with \`sum\``)
}

/** The steps that lead to a term, in the order in which they can be worked, the term itself last. */
export function stepsOf(term: Term): Step[] {
  const found = new Set<Step>()
  visitTerms(term, part => part.type === 'step' && found.add(part))
  return [...found]
}

/** The leaves that a term stands on, each once, in the order met. */
export function leavesOf(term: Term): Leaf[] {
  const found = new Map<string, Leaf>()
  visitTerms(term, part => part.type === 'leaf' && !found.has(part.id) && found.set(part.id, part))
  return [...found.values()]
}

/** Calls `tell` with each term, what it stands on first. */
function visitTerms(term: Term, tell: (term: Term) => unknown): void {
  const seen = new Set<Term>()
  const visit = (part: Term): void => {
    if (seen.has(part)) return
    seen.add(part)
    if (part.type === 'step') for (const used of Object.values(part.uses).flat()) visit(used as Term)
    tell(part)
  }
  visit(term)
}
