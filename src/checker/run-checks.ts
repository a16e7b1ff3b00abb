import type { AsBuiltRecord } from '../record/record.ts'
import { answer } from './answer.ts'
import type { Check, WorthAsking } from './check.ts'
import { lookUp } from './look-up.ts'
import { Notebook } from './notebook.ts'
import type { CheckSubject, Scope } from './scope.ts'
import type { Verdict } from './verdict.ts'
import { alternativesOf } from './what-if.ts'
import { wordAnswer } from './word-answer.ts'

/** Asks every check of everything that it is worth asking of. Pure; sorted by check, subject and aspect. */
export function runChecks(record: AsBuiltRecord, checks: readonly Check[]): Verdict[] {
  const verdicts = checks.flatMap(check => runCheck(record, check)).sort(compareVerdicts)
  const answered = new Set(
    verdicts.flatMap(({ working }) => (working.subject.kind === 'path' ? [] : (working.requirement ?? []))),
  )
  return verdicts.filter(verdict => !isAnsweredElsewhere(verdict, answered))
}

/** A requirement that nobody measured, because another check works it out and holds it against its limit. */
function isAnsweredElsewhere({ subject, verdict, working }: Verdict, answered: ReadonlySet<string>): boolean {
  return working.subject.kind === 'path' && verdict === 'missing' && answered.has(subject)
}

function runCheck(record: AsBuiltRecord, check: Check): Verdict[] {
  const candidates = check.subject.find(record)
  const askings = record.askings.filter(asking => asking.check === check.id)
  const isNamed = ({ id, kind }: CheckSubject): boolean =>
    askings.some(({ subjects }) => subjects?.some(name => name === id || name === `${kind}:${id}`) ?? false)
  const isAskedOfAll = askings.some(({ subjects }) => subjects === null)
  return candidates.flatMap(({ subject, isCurrent }) => {
    const isAsked = isNamed(subject) || (isCurrent && isAskedOfAll)
    if (!isCurrent && !isAsked) return []
    return answersFor(check, { record, subject }, isAsked)
  })
}

function answersFor(check: Check, ground: Pick<Scope, 'record' | 'subject'>, isAsked: boolean): Verdict[] {
  const scope = (): Scope => ({ ...ground, notebook: new Notebook() })
  if (!isAsked && !isWorthAsking(check.worthAsking, scope())) return []
  if (check.aspects === undefined) return [answerOne(check, null, scope)]
  return Object.entries(check.aspects)
    .filter(([, { worthAsking }]) => worthAsking === undefined || isWorthAsking(worthAsking, scope()))
    .map(([name]) => answerOne(check, name, scope))
}

function answerOne(check: Check, aspect: string | null, scope: () => Scope): Verdict {
  const verdict = wordAnswer(answer(check, aspect, scope()))
  if (check.whatIf === undefined || !['fail', 'marginal', 'waived'].includes(verdict.verdict)) return verdict
  return { ...verdict, working: { ...verdict.working, alternatives: alternativesOf(check, aspect, scope()) } }
}

/** True where the record has at least one of these. */
export function isWorthAsking(worth: WorthAsking, scope: Scope): boolean {
  if (typeof worth === 'function') return worth(scope)
  return worth === 'always' || worth.some(pattern => lookUp(scope, pattern).held !== null)
}

function compareVerdicts(one: Verdict, other: Verdict): number {
  return (
    compareText(one.check, other.check) ||
    compareText(one.subject, other.subject) ||
    compareText(one.aspect ?? '', other.aspect ?? '')
  )
}

const compareText = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0)
