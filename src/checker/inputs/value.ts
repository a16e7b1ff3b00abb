import type { Dimension, Quantity } from '../../quantities/quantity.ts'
import type { Held } from '../../record/record.ts'
import type { Found, Input } from '../input.ts'
import { leafOf, statedLeaf } from '../leaf.ts'
import { lookUp, type Target } from '../look-up.ts'
import type { Scope } from '../scope.ts'
import { nonsenseOf, type Sense, senseOf } from '../sense.ts'
import type { Leaf } from '../term.ts'

export interface ValueSpec {
  /** `circuit/length`: of the subject; `build/nominal`, `vehicle/wheelbase`; else of the one part of that kind. */
  readonly of: string
  readonly symbol: string
  readonly meaning: string
  readonly dimension: Dimension
  /** How it is shown where it is not as written. */
  readonly unit: string
  /** Ratings, nominal voltages, nominal sections, thread sizes, gauges, counts. */
  readonly exact?: boolean
  /** Where its property does not tell: whether it may be zero or less. */
  readonly sense?: Sense
  /** A row of a table is read off by it, so that it has to be one size and no bound. */
  readonly isSize?: true
}

/** A figure assumed where the record has none, and the sentence that says so. */
export interface Default {
  readonly value: number
  readonly unit: string
  readonly said: string
}

/** A figure of the record. Without a default its absence is named. */
export function value(spec: ValueSpec & { readonly default?: Default }): Input<number> {
  return { ...described(spec), read: scope => readValue(spec, scope) ?? assumed(spec, scope) }
}

/** A figure that may be absent: `null` for `compute`, and no place in a formula. */
export function optional(spec: ValueSpec): Input<number | null> {
  return {
    ...described(spec),
    isOptional: true,
    read: scope => (lookUp(scope, spec.of).held === null ? { type: 'none' } : readValue(spec, scope)),
  }
}

/** A constant of nature or of the formula, such as the temperature coefficient of copper. */
export function constant(spec: {
  readonly symbol: string
  readonly meaning: string
  readonly dimension: Dimension
  readonly value: number
  readonly unit: string
}): Input<number> {
  const term = statedLeaf('constant', spec)
  return {
    symbol: spec.symbol,
    meaning: spec.meaning,
    dimension: spec.dimension,
    reads: [],
    read: () => ({ type: 'figure', term }),
  }
}

const described = ({ symbol, meaning, dimension, of }: ValueSpec) => ({ symbol, meaning, dimension, reads: [of] })

function readValue(spec: ValueSpec & { readonly default?: Default }, scope: Scope): Found | null {
  const target = lookUp(scope, spec.of)
  if (target.held === null) {
    if (target.trouble !== null || spec.default === undefined)
      scope.notebook.need(target.path, target.trouble ?? `${spec.meaning} is not written`)
    return null
  }
  return figureAt(target, spec, scope)
}

/** The figure that a target holds, or what is wrong with it in the notebook. */
export function figureAt(target: Target, spec: Omit<ValueSpec, 'of'>, scope: Scope): Found | null {
  const held = quantityHeld(target)
  if (held === null || held.value.dimension !== spec.dimension) {
    const is = held === null ? 'words' : `a ${held.value.dimension}`
    scope.notebook.refuse(target.path, `${spec.meaning} is given as ${is}, expected a ${spec.dimension}`)
    return null
  }
  const term = leafOf(
    { path: target.path, held },
    { ...spec, isExact: spec.exact ?? false },
    scope.record.build.approximateShare,
  )
  scope.notebook.see(term)
  const trouble = isNoFigure(term, spec)
    ? 'is no single figure'
    : nonsenseOf(term, spec.sense ?? senseOf(target.path, held.value))
  if (trouble === null) return { type: 'figure', term }
  scope.notebook.refuse(target.path, `${spec.meaning} ${trouble}`)
  return null
}

const isNoFigure = ({ value: size, bound }: Leaf, { isSize }: Pick<ValueSpec, 'isSize'>): boolean =>
  !Number.isFinite(size) || (isSize === true && bound !== null)

/** The quantity that a target holds, if it is one. */
export function quantityHeld({ held }: Target): Held<Quantity> | null {
  return held?.value.type === 'quantity' ? { ...held, value: held.value.quantity } : null
}

function assumed(spec: ValueSpec & { readonly default?: Default }, scope: Scope): Found | null {
  if (spec.default === undefined || lookUp(scope, spec.of).held !== null) return null
  const { value, unit, said } = spec.default
  scope.notebook.assume(said)
  return { type: 'figure', term: statedLeaf('assumed', { symbol: spec.symbol, meaning: spec.meaning, value, unit }) }
}
