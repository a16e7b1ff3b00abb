import type { Aspect, Check, Count, Offender } from './check.ts'
import { symbolsNeeded, workIfWhole, workWhatIsThere } from './formula.ts'
import { statedLeaf } from './leaf.ts'
import { Notebook } from './notebook.ts'
import { plainOf } from './plain.ts'
import { propagateTerm, type Worked } from './propagate.ts'
import { Reading } from './reading.ts'
import { type ResolvedLimit, resolveLimit } from './resolve-limit.ts'
import { type Scope, withNotebook } from './scope.ts'
import type { Term } from './term.ts'
import { type Weighed, weigh } from './weigh.ts'

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
}

/** Answers a check's question for one subject, in one aspect where it has several. */
export function answer(check: Check, aspect: string | null, scope: Scope): Answer {
  const reading = new Reading(check, scope)
  const { formula, limit: stated } = partOf(check, aspect)
  for (const note of check.notes ?? []) scope.notebook.note(note)
  const count = check.compute === undefined ? null : countOf(check, reading)
  const term = formula === null ? countTerm(count) : formulaTerm(formula, reading)
  reading.readLimit(stated)
  const words = reading.words(stated?.by)
  const faults = faultsOf(check, reading)
  const result = resultOf(term, scope)
  const limit = resolveLimit(stated, {
    check: check.id,
    scope,
    words,
    symbols: reading.symbols,
    result: result?.worked ?? null,
  })
  const weighed = failIf(faults, weigh(result, limit, scope.notebook))
  remarkOf(check, reading)
  return { check, scope, aspect, result, count, faults, limit, weighed, beside: besideOf(check, reading) }
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

/** Lines that stand beside the answer, each where all that it needs is there. What they lack is not missing. */
function besideOf(check: Check, reading: Reading): Term[] {
  const { notebook } = reading.scope
  if (check.beside === undefined || notebook.missing.length > 0) return []
  const attempt = new Notebook()
  const aside = new Reading(check, withNotebook(reading.scope, attempt))
  const lines = check.beside
  const terms = lines
    .map((_, at) => workIfWhole(lines.slice(0, at + 1), symbol => aside.term(symbol)))
    .filter(term => term !== null)
  if (terms.length > 0) notebook.takeOver(withoutMissing(attempt))
  return terms
}

function withoutMissing(attempt: Notebook): Notebook {
  attempt.missing.length = 0
  return attempt
}

/** A sentence about values that the answer does not turn on, where all of them are there. */
function remarkOf(check: Check, reading: Reading): void {
  const { notebook } = reading.scope
  if (check.remark === undefined || notebook.missing.length > 0) return
  const attempt = new Notebook()
  const aside = new Reading(check, withNotebook(reading.scope, attempt))
  const values: Record<string, { value: number; uncertainty: number }> = {}
  for (const symbol of check.remark.of) {
    const term = aside.term(symbol)
    if (term === null || term === 'absent' || !('type' in term)) return
    values[symbol] = propagateTerm(term)
  }
  const sentence = check.remark.say(values)
  if (sentence === null) return
  notebook.takeOver(attempt)
  notebook.note(sentence)
}
