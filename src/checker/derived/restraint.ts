import { workFormula } from '../formula.ts'
import type { Found, Input } from '../input.ts'
import { derived } from '../inputs/derived.ts'
import { each } from '../inputs/each.ts'
import type { Scope } from '../scope.ts'
import { digitsOf } from '../show-figure.ts'
import { type Term, workOut } from '../term.ts'
import { designAcceleration } from './design-acceleration.ts'
import { allowedLine, stressLine, ways } from './holder-strength.ts'
import { fullMass } from './tank-contents.ts'
import { type HolderKind, holderKinds, holdersOf, silentHolders } from './tank-holders.ts'

/** The force of the full tank at the design acceleration. */
function tankForce(): Input<number> {
  return derived({
    symbol: 'F',
    meaning: 'force of the full tank',
    dimension: 'force',
    inputs: { mass: fullMass(), acceleration: designAcceleration() },
    formula: [forceLine],
  })
}

interface Held {
  readonly kind: HolderKind
  readonly stress: Term
  readonly allowed: Term
  readonly share: number
}

const ownReads = Object.values(ways).flatMap(way => Object.values(way.inputs).flatMap(({ reads }) => reads))
const forceLine = { line: 'F = m_full * a', unit: 'N', says: 'the full tank at the design acceleration' } as const

interface Wanted {
  readonly symbol: string
  readonly meaning: string
  readonly gives: 'stress' | 'allowed'
}

const given = ({ symbol, meaning, gives }: Wanted): Omit<Input<number>, 'read'> => ({
  symbol,
  meaning,
  dimension: 'pressure',
  reads: [...new Set([...fullMass().reads, ...ownReads])],
  formula:
    gives === 'stress'
      ? [forceLine, ...holderKinds.map(kind => stressLine(kind))]
      : holderKinds.map(kind => allowedLine(kind)),
})

/** The stress in what holds the tank least well, or what that may carry; the notebook says how all compare. */
export function weakestHolder(gives: 'stress' | 'allowed'): Input<number> {
  const isStress = gives === 'stress'
  return {
    ...given({
      symbol: isStress ? 'sigma' : 'sigma_a',
      meaning: isStress ? 'stress in what holds it least well' : 'the allowable stress of what holds it least well',
      gives,
    }),
    read: (scope): Found | null => {
      const held = holdersBySlack(scope)
      const [weakest] = held ?? []
      if (held === null || weakest === undefined) return null
      scope.notebook.note(sayRanking(held))
      return { type: 'figure', term: weakest[gives] }
    },
  }
}

/** The same of the kinds that come after it, the second weakest by 2; absent where there are not so many. */
export function nextHolder(place: 2 | 3 | 4, gives: 'stress' | 'allowed'): Input<number> {
  const isStress = gives === 'stress'
  const after = { 2: 'second', 3: 'third', 4: 'fourth' }[place]
  return {
    ...given({
      symbol: isStress ? `sigma_${place}` : `sigma_${place}_a`,
      meaning: `${isStress ? 'stress in' : 'the allowable stress of'} what holds it ${after} least well`,
      gives,
    }),
    isOptional: true,
    read: (scope): Found | null => {
      const term = holdersBySlack(scope)?.[place - 1]?.[gives]
      return term === undefined ? { type: 'none' } : { type: 'figure', term }
    },
  }
}

/** All kinds of holders, the weakest first; null where a figure is missing, all of which are then named. */
function holdersBySlack(scope: Scope): Held[] | null {
  const force = tankForce().read(scope)
  const kinds = holderKinds.filter(kind => holdersOf(scope, kind).length > 0)
  if (kinds.length === 0)
    scope.notebook.need('strap/width', 'no strap, bracket, bolt or weld that holds it says what it can carry')
  for (const part of silentHolders(scope))
    scope.notebook.note(`${part.name} is left out: what it can carry is not written.`)
  const held = kinds.map(kind => holderAt(kind, force?.type === 'figure' ? force.term : null, scope))
  const whole = held.filter(one => one !== null)
  return whole.length < held.length || whole.length === 0 ? null : whole.sort((one, other) => other.share - one.share)
}

function holderAt(kind: HolderKind, force: Term | null, scope: Scope): Held | null {
  const found = Object.entries(ways[kind].inputs).map(([symbol, input]) => {
    const set = each(
      { symbol, meaning: input.meaning, dimension: input.dimension ?? 'ratio', of: one => holdersOf(one, kind) },
      input,
    )
    return [symbol, set.read(scope)] as const
  })
  const terms = Object.fromEntries(
    found.flatMap(([symbol, set]) => (set?.type === 'figures' ? [[symbol, set.terms] as const] : [])),
  )
  if (force === null || Object.keys(terms).length < found.length) return null
  const [stress, allowed] = [
    workFormula([stressLine(kind)], { ...terms, F: force }),
    workFormula([allowedLine(kind)], terms),
  ]
  return { kind, stress, allowed, share: workOut(stress) / workOut(allowed) }
}

function sayRanking(held: readonly Held[]): string {
  const each = held.map(
    ({ kind, stress, allowed, share }) =>
      `${kind}s ${megapascals(stress)} of ${megapascals(allowed)} MPa, ${digitsOf(share * 100, 3)} %`,
  )
  const [weakest] = held
  const times =
    weakest === undefined ? '' : ` They would carry ${digitsOf(1 / weakest.share, 3)} times the design force.`
  return `Weakest first: ${each.join('; ')}.${times}`
}

const megapascals = (term: Term): string => digitsOf(workOut(term) / 1e6, 3)
