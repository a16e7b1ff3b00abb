import type { Dimension } from '../../quantities/quantity.ts'
import type { Found, FoundMember, Given, Input, Inputs, Member } from '../input.ts'
import { statedLeaf } from '../leaf.ts'
import { pathOf } from '../look-up.ts'
import { type CheckSubject, type Scope, withSubject } from '../scope.ts'
import type { Selector } from '../subjects.ts'
import type { Term } from '../term.ts'
import { readAll } from './derived.ts'
import { readsOf } from './reads-of.ts'

interface EachSpec {
  readonly symbol: string
  readonly meaning: string
  readonly dimension: Dimension
  readonly of: Selector
  /** What the set is, in words: `circuits fused in the box`. An empty set is then missing; without it, it is empty. */
  readonly wanted?: string
}

/** One figure of each member of a set, for `sum`, `min` or `max` of a formula. A member whose figure is missing makes it missing. */
export function each(spec: EachSpec, input: Input<number>): Input<readonly number[]> {
  return {
    symbol: spec.symbol,
    meaning: spec.meaning,
    dimension: spec.dimension,
    ...readsOf([input]),
    read: scope => {
      const subjects = spec.of(scope)
      if (subjects.length === 0 && spec.wanted !== undefined) {
        scope.notebook.need(scope.subject.id, `no ${spec.wanted}`)
        return null
      }
      const found = subjects.map(subject => input.read(withSubject(scope, subject)))
      const terms = found.flatMap(one => (one?.type === 'figure' ? [one.term] : []))
      if (terms.length === found.length) return { type: 'figures', terms }
      return scope.leavesOut ? { type: 'figures', terms: found.map(one => termOr(one, spec.symbol)) } : null
    },
  }
}

/** What is missing counts nothing, in its place, so that factors beside it keep theirs. */
function termOr(found: Found | null, symbol: string): Term {
  if (found?.type === 'figure') return found.term
  return statedLeaf('assumed', { symbol, meaning: 'not known, left out', value: 0, unit: '1' })
}

/** The members of a set with some of what is written of each, for a check that counts offenders. */
export function members<I extends Inputs>(
  spec: { readonly meaning: string; readonly of: Selector },
  fields: I,
): Input<readonly Member<Given<I>>[]> {
  return {
    symbol: null,
    meaning: spec.meaning,
    dimension: null,
    ...readsOf(Object.values(fields)),
    read: scope => {
      const found = spec.of(scope).map(subject => memberOf(subject, fields, scope))
      const all = found.filter(member => member !== null)
      return all.length === found.length || scope.leavesOut ? { type: 'members', members: all } : null
    },
  }
}

function memberOf(subject: CheckSubject, fields: Inputs, scope: Scope): FoundMember | null {
  const found = readAll(fields, withSubject(scope, subject))
  const path =
    subject.thing === null
      ? subject.id
      : `${pathOf(subject.thing)}${subject.prefix === '' ? '' : `/${subject.prefix.slice(0, -1)}`}`
  return found === null ? null : { path, name: subject.name, fields: found }
}

/** One figure of another thing that the subject leads to: the load of the circuit that feeds it. */
export function ofAnother(selector: Selector, input: Input<number>, whenNone: Input<number>): Input<number> {
  return {
    ...input,
    ...readsOf([input, whenNone]),
    read: (scope): Found | null => {
      const [subject] = selector(scope)
      return subject === undefined ? whenNone.read(scope) : input.read(withSubject(scope, subject))
    },
  }
}
