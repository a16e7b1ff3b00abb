import type { Dimension } from '../../quantities/quantity.ts'
import type { Found, Input } from '../input.ts'
import { lookUp } from '../look-up.ts'
import { Notebook } from '../notebook.ts'
import { type Scope, withNotebook } from '../scope.ts'
import { readsOf } from './reads-of.ts'

interface ChoiceSpec {
  readonly symbol: string | null
  readonly meaning: string
  readonly dimension: Dimension | null
}

/** The first of several ways to know a figure that the record has; where none, what the last one wants is named. What is written wrongly is not passed over. */
export function firstGiven<T>(spec: ChoiceSpec, ...ways: readonly [Input<T>, ...Input<T>[]]): Input<T> {
  return {
    ...spec,
    ...readsOf(ways),
    read: scope => {
      const attempts = ways.map(way => attempt(way, scope))
      const chosen =
        attempts.find(({ found, notebook }) => found !== null || notebook.missing.some(({ isWritten }) => isWritten)) ??
        attempts.at(-1)
      if (chosen === undefined) return null
      scope.notebook.takeOver(chosen.notebook)
      return chosen.found
    },
  }
}

/** One input or another, by words of the record such as `return: chassis`. */
export function byWords<T>(
  spec: ChoiceSpec & { readonly of: string },
  ways: Readonly<Record<string, Input<T>>>,
  otherwise: Input<T>,
): Input<T> {
  return {
    ...spec,
    ...readsOf([...Object.values(ways), otherwise], [spec.of]),
    read: scope => {
      const { path, held } = lookUp(scope, spec.of)
      const said = held?.value.type === 'words' ? held.value.words.text.trim() : ''
      if (held === null || !Object.hasOwn(ways, said)) return otherwise.read(scope)
      scope.notebook.use({ path, words: said, place: held.place, session: held.session, figure: held.figure })
      return (ways[said] ?? otherwise).read(scope)
    },
  }
}

/** One input or another, by the dimension in which the record gives a property: amperes or watts. */
export function byDimension<T>(
  spec: ChoiceSpec & { readonly of: string },
  ways: Partial<Record<Dimension, Input<T>>>,
  otherwise: Input<T>,
): Input<T> {
  const all = [...Object.values(ways), otherwise]
  return {
    ...spec,
    ...readsOf(all, [spec.of]),
    read: scope => {
      const { held } = lookUp(scope, spec.of)
      const dimension = held?.value.type === 'quantity' ? held.value.quantity.dimension : null
      return ((dimension === null ? undefined : ways[dimension]) ?? otherwise).read(scope)
    },
  }
}

/** One input where a property is given, another where it is not. */
export function ifGiven<T>(spec: ChoiceSpec & { readonly of: string }, given: Input<T>, otherwise: Input<T>): Input<T> {
  return {
    ...spec,
    ...readsOf([given, otherwise], [spec.of]),
    read: scope => (lookUp(scope, spec.of).held === null ? otherwise : given).read(scope),
  }
}

function attempt<T>(way: Input<T>, scope: Scope): { found: Found | null; notebook: Notebook } {
  const notebook = new Notebook()
  return { found: way.read(withNotebook(scope, notebook)), notebook }
}
