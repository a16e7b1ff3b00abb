import type { Verdict } from '../checker/verdict.ts'

/**
 * The verdicts of an edition, asked again of what it may see. One that comes out otherwise than in the whole record is
 * not told: a check must never pass for want of what was withheld.
 */
export function tellVerdicts(whole: readonly Verdict[], seen: readonly Verdict[]): Verdict[] {
  const known = new Map(whole.map(verdict => [keyOf(verdict), verdict]))
  return seen.map(verdict => (isSame(verdict, known.get(keyOf(verdict))) ? verdict : untold(verdict)))
}

const keyOf = ({ check, subject, aspect }: Verdict): string => `${check} ${subject} ${aspect ?? ''}`

function isSame(seen: Verdict, whole: Verdict | undefined): boolean {
  return whole !== undefined && answerOf(seen) === answerOf(whole)
}

const answerOf = ({ verdict, result, limit, offenders, missing }: Verdict): string =>
  JSON.stringify([verdict, result, limit?.min, limit?.max, offenders?.length, missing.length])

function untold(verdict: Verdict): Verdict {
  const { title, question, source, caution, subject, formula } = verdict.working
  return {
    check: verdict.check,
    subject: verdict.subject,
    aspect: verdict.aspect,
    verdict: 'missing',
    result: null,
    limit: null,
    inputs: [],
    assumed: [],
    missing: [],
    working: {
      title,
      question,
      source,
      caution,
      subject,
      formula,
      says: 'Not told in this edition: the answer stands on words that the edition withholds',
      beyondBy: null,
      steps: [],
      beside: [],
      values: [],
      contributions: [],
      interval: null,
      override: null,
      requirement: null,
      tables: [],
      notes: [],
      needs: [],
      offenders: [],
      measureNext: [],
      alternatives: [],
    },
  }
}
