import type { Aspect, Check, Count, Offender } from './check.ts'
import { symbolsNeeded, workWhatIsThere } from './formula.ts'
import { statedLeaf } from './leaf.ts'
import type { Limit } from './limit.ts'
import { Notebook } from './notebook.ts'
import { plainOf } from './plain.ts'
import { propagateTerm, type Worked } from './propagate.ts'
import { Reading } from './reading.ts'
import { resolveLimit } from './resolve-limit.ts'
import type { Scope } from './scope.ts'
import type { ResolvedLimit } from './standing-limit.ts'
import type { Term } from './term.ts'
import { dimensionOf } from './unit.ts'
import { type Weighed, weigh } from './weigh.ts'
import { remarkBeside, workBeside } from './work-beside.ts'

/** One answer, worked out and weighed, before it is worded. */
export interface Answer {
  readonly check: Check
  readonly scope: Scope
  readonly aspect: string | null
  /** Null where an input is missing, or the result is no number. */
  readonly result: { readonly term: Term; readonly worked: Worked } | null
  /** Of a check that counts. */
  readonly count: Count | null
  /** What fails it whatever its figure. */
  readonly faults: readonly Offender[]
  readonly limit: ResolvedLimit | null
  readonly weighed: Weighed
  readonly beside: readonly Term[]
  /** Where something is missing and what is known fails already: the answer without what is missing. */
  readonly already: Answer | null
}

/** Answers a check's question for one subject, in one aspect where it has several. */
export function answer(check: Check, aspect: string | null, scope: Scope): Answer {
  for (const note of check.notes ?? []) scope.notebook.note(note)
  const reading = new Reading(check, scope)
  const { formula, limit: stated } = partOf(check, aspect)
  const count = check.compute === undefined ? null : countOf(check, reading)
  const term = formula === null ? countTerm(count) : formulaTerm(formula, reading)
  reading.readLimit(stated)
  const [faults, result] = [faultsOf(check, reading), resultOf(term, scope)]
  const limit = limitFor(stated, result, reading)
  const weighed = failIf(faults, weigh(result, limit, scope.leavesOut ? new Notebook() : scope.notebook))
  remarkBeside(check, reading)
  if (result !== null && weighed.verdict !== 'missing')
    for (const note of check.afterword?.({ aspect, nearest: weighed.nearest, ...result }, scope) ?? [])
      scope.notebook.note(note)
  const beside = workBeside(check, reading)
  let known: Answer | null | undefined
  return {
    ...{ check, scope, aspect, result, count, faults, limit, weighed, beside },
    get already() {
      // Worked out where it is worded only: sizes that are merely tried have no words.
      known ??= weighed.verdict === 'missing' ? failsAlready(check, aspect, scope) : null
      return known
    },
  }
}

function limitFor(stated: Limit | null, result: Answer['result'], reading: Reading): ResolvedLimit | null {
  return resolveLimit(stated, {
    check: reading.check.id,
    scope: reading.scope,
    words: reading.words(stated?.by),
    symbols: reading.symbols,
    result: result?.worked ?? null,
    dimension: result === null ? null : dimensionOf(result.term.unit),
  })
}

/** The answer that leaves out what is missing, if it fails: whatever the missing figures turn out to be, they can only add to it. */
function failsAlready(check: Check, aspect: string | null, scope: Scope): Answer | null {
  if (check.onlyWorsens === undefined || scope.leavesOut === true) return null
  const known = answer(check, aspect, { ...scope, notebook: new Notebook(), leavesOut: true })
  return known.weighed.verdict === 'fail' ? known : null
}

function partOf(check: Check, aspect: string | null): { formula: Aspect['formula'] | null; limit: Aspect['limit'] } {
  if (aspect === null) return { formula: check.formula ?? null, limit: check.limit }
  const found = check.aspects?.[aspect]
  if (found === undefined) throw new Error(`Unexpected aspect \`${aspect}\` of \`${check.id}\``)
  return found
}

function formulaTerm(formula: Aspect['formula'], reading: Reading): Term | null {
  const terms = reading.terms(symbolsNeeded(formula))
  if (terms === null) return null
  const term = workWhatIsThere(formula, terms)
  if (term === null)
    for (const symbol of Object.keys(terms).filter(name => terms[name] === 'absent')) reading.needSymbol(symbol)
  return term
}

function countOf(check: Check, reading: Reading): Count | null {
  const found = reading.all()
  if (found === null || check.compute === undefined) return null
  const count = check.compute(plainOf(check.inputs, found) as never)
  for (const note of count.notes ?? []) reading.scope.notebook.note(note)
  return count
}

function countTerm(count: Count | null): Term | null {
  if (count === null) return null
  return statedLeaf('constant', {
    symbol: 'n',
    meaning: 'count',
    value: count.count ?? count.offenders.length,
    unit: '1',
  })
}

/** Infinite or not a number is no result: the record does not say enough to work with. */
function resultOf(term: Term | null, scope: Scope): Answer['result'] {
  if (term === null) return null
  const worked = propagateTerm(term)
  if ([worked.value, worked.uncertainty].every(Number.isFinite)) return { term, worked }
  const paths = [...worked.slopes.keys()].filter(id => id.includes('/'))
  const [path = scope.subject.id] = paths
  scope.notebook.need(path, `with ${paths.join(', ') || 'these figures'} the working has no finite result`)
  return null
}

function faultsOf(check: Check, reading: Reading): readonly Offender[] {
  const found = check.alsoFails === undefined ? null : reading.all()
  return found === null || check.alsoFails === undefined ? [] : check.alsoFails(plainOf(check.inputs, found) as never)
}

const failIf = (faults: readonly Offender[], weighed: Weighed): Weighed =>
  faults.length === 0 || weighed.verdict === 'missing' ? weighed : { ...weighed, verdict: 'fail' }
