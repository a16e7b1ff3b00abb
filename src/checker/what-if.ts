import type { Quantity } from '../quantities/quantity.ts'
import { answer } from './answer.ts'
import type { Check } from './check.ts'
import { lookUp } from './look-up.ts'
import { nextTo } from './next-sizes.ts'
import { Notebook } from './notebook.ts'
import type { Scope } from './scope.ts'
import type { WorkedAlternative } from './verdict.ts'
import { wordAnswer } from './word-answer.ts'

/** How the same question would be answered with the sizes next to the one fitted: the next cable. Empty where the check offers none. */
export function alternativesOf(check: Check, aspect: string | null, scope: Scope): WorkedAlternative[] {
  const { whatIf } = check
  const fitted = whatIf === undefined ? null : figureAt(whatIf.of[0], scope)
  const sizes = fitted === null ? [] : (whatIf?.sizes[fitted.unit] ?? [])
  if (whatIf === undefined || fitted === null || sizes.length === 0) return []
  return nextTo(fitted, sizes).map(size => {
    const verdict = wordAnswer(
      answer(check, aspect, { ...scope, notebook: new Notebook(), instead: insteadOf(whatIf.of, size, scope) }),
    )
    return { said: size.text, isFitted: size.si === fitted.si, verdict: verdict.verdict, result: verdict.result }
  })
}

function figureAt(pattern: string, scope: Scope): Quantity | null {
  const value = lookUp(scope, pattern).held?.value
  return value?.type === 'quantity' ? value.quantity : null
}

/** The properties that would change together: a cable there and its return. */
function insteadOf(patterns: readonly string[], quantity: Quantity, scope: Scope): ReadonlyMap<string, Quantity> {
  const given = patterns.map(pattern => lookUp(scope, pattern)).filter(({ held }) => held !== null)
  return new Map(given.map(({ path }) => [path, quantity]))
}
