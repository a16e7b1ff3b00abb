import type { Answer } from './answer.ts'
import { asWritten } from './formula.ts'
import { saySentence } from './say-answer.ts'
import { showFormulas } from './show-formulas.ts'
import { showContributions, showDistinct, showValues } from './show-working.ts'
import type { StandingLimit } from './standing-limit.ts'
import { type Term, workOut } from './term.ts'
import { inputsBehind, termsBehind } from './terms-behind.ts'
import { differenceFromSi, fromSi, shownUnit } from './unit.ts'
import type { Verdict, VerdictLimit, Working } from './verdict.ts'

/** Words an answer as a verdict: plain numbers for JSON, and the whole working for the pages. */
export function wordAnswer(answer: Answer): Verdict {
  const { check, scope, count } = answer
  const unit = shownUnit(ownUnit(answer), scope.record.build.units)
  const { notebook } = scope
  return {
    ...bareAnswer(answer),
    subject: scope.subject.id,
    inputs: inputsBehind(answer),
    assumed: notebook.assumed,
    missing: notebook.missing.map(({ path }) => path),
    ...(check.compute === undefined ? {} : { offenders: count?.offenders.map(({ path }) => path) ?? [] }),
    working: workingOf(answer, unit),
  }
}

/** The figures of an answer without its working, for who asks the same question of many sizes. */
export function bareAnswer(answer: Answer): Pick<Verdict, 'check' | 'aspect' | 'verdict' | 'result' | 'limit'> {
  const { check, scope, aspect, weighed, limit } = answer
  const unit = shownUnit(ownUnit(answer), scope.record.build.units)
  return {
    check: check.id,
    aspect,
    verdict: weighed.verdict,
    result: weighed.verdict === 'missing' ? null : resultIn(answer, unit),
    limit: limitIn(limit?.override ?? limit?.own ?? null, unit),
  }
}

function ownUnit({ check, aspect, result, limit }: Answer): string {
  if (result !== null) return result.term.unit
  const formula = aspect === null ? check.formula : check.aspects?.[aspect]?.formula
  const stated = formula?.at(-1)?.unit ?? '1'
  return stated === asWritten ? ((limit?.own.min ?? limit?.own.max)?.term.unit ?? '1') : stated
}

function resultIn({ result, weighed }: Answer, unit: string): Verdict['result'] {
  if (result === null) return null
  const { value, uncertainty, low, high } = result.worked
  const worst = weighed.nearest?.side === 'min' ? low : high
  return {
    value: fromSi(value, unit),
    unit,
    uncertainty: differenceFromSi(uncertainty, unit),
    worst: fromSi(worst, unit),
  }
}

function limitIn(limit: StandingLimit | null, unit: string): VerdictLimit | null {
  if (limit === null) return null
  const { min, max, who, source } = limit
  const end = (one: StandingLimit['min']): number | null => (one === null ? null : limitEnd(one.term, unit))
  const said = [...new Set([min?.said, max?.said])].filter(text => text !== undefined)
  return { min: end(min), max: end(max), unit, from: said.length > 0 ? said.join(' to ') : limit.stated, who, source }
}

/** A figure as it was set: without the noise that a float takes on its way through SI and back. */
function limitEnd(term: Term, unit: string): number | null {
  const value = fromSi(workOut(term), unit)
  if (!Number.isFinite(value)) return null
  return term.type === 'leaf' ? Number(value.toPrecision(15)) : value
}

function workingOf(answer: Answer, unit: string): Working {
  const { check, scope, result, weighed, count, limit } = answer
  const { notebook, subject } = scope
  const contributions = result === null ? [] : showContributions(result.worked.contributions, unit)
  const { title, question, source, caution } = check
  return {
    ...{ title, question, source, caution },
    subject: { kind: subject.kind, name: subject.name, place: subject.place },
    ...saySentence(answer, unit),
    ...linesOf(answer),
    contributions,
    interval: result === null ? null : { low: fromSi(result.worked.low, unit), high: fromSi(result.worked.high, unit) },
    override: overrideIn(answer, unit),
    requirement: limit?.own.requirement ?? null,
    tables: notebook.tables,
    notes: notebook.notes,
    needs: notebook.missing,
    offenders: count?.offenders ?? answer.already?.count?.offenders ?? answer.faults,
    alternatives: [],
    measureNext: weighed.verdict === 'marginal' ? sharpen(contributions) : notebook.missing,
  }
}

/** The lines of a working; where something is missing and the rest fails already, those of the rest. */
function linesOf(answer: Answer): Pick<Working, 'formula' | 'steps' | 'beside' | 'values'> {
  const { check, aspect, scope, result, limit, beside } = answer
  const known = result ?? answer.already?.result ?? null
  const steps = showDistinct(termsBehind(null, limit).concat(known === null ? [] : [known.term]))
  return {
    formula: showFormulas(check, aspect),
    steps,
    beside: showDistinct(beside, steps),
    values: showValues(termsBehind(result?.term ?? null, limit), scope.notebook),
  }
}

function overrideIn({ limit, weighed }: Answer, unit: string): Working['override'] {
  const own = limitIn(limit?.own ?? null, unit)
  if (limit?.override == null || own === null) return null
  return { default: own, verdict: weighed.byOwn ?? 'missing', why: limit.override.why, place: limit.override.place }
}

/** A marginal answer is settled soonest by the figure that carries most of the uncertainty. */
function sharpen([most]: Working['contributions']): Working['measureNext'] {
  return most === undefined
    ? []
    : [{ path: most.path, why: `${most.meaning} carries ${Math.round(most.share * 100)} % of the uncertainty` }]
}
