import type { Check, Example } from '../../src/checker/check.ts'
import { runChecks } from '../../src/checker/run-checks.ts'
import type { Verdict } from '../../src/checker/verdict.ts'
import { exampleId, type Given, makeRecord } from '../checker/record-maker.ts'

/** What a check answers about the thing of an example; the only answer, where no thing bears its name. */
export function answerTo(check: Check, { given, aspect }: Pick<Example, 'given' | 'aspect'>): Verdict {
  const found = answersTo(check, given).filter(verdict => verdict.aspect === (aspect ?? null))
  const verdict = found.find(({ subject }) => subject === exampleId || subject.startsWith(`${exampleId}/`)) ?? found[0]
  if (verdict === undefined)
    throw new Error(`Unexpected silence of ${check.id} on ${JSON.stringify(given)}, expected an answer`)
  return verdict
}

/** All that a check answers of what is given. */
export function answersTo(check: Check, given: Given): Verdict[] {
  return runChecks(makeRecord(given), [check])
}

/** `load 7 A, length 3 m → pass` */
export function nameOf({ given, expect, aspect }: Example): string {
  const said = Object.entries(given).map(([path, text]) => `${path.replace(/^[a-z-]+\//, '')} ${text}`)
  return `${aspect === undefined ? '' : `${aspect}: `}${said.join(', ')} → ${expect}`
}
