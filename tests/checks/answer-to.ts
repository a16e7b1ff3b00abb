import type { Check, Example } from '../../src/checker/check.ts'
import { runChecks } from '../../src/checker/run-checks.ts'
import type { Verdict } from '../../src/checker/verdict.ts'
import { exampleId, type Given, makeRecord } from '../checker/record-maker.ts'

interface Asked {
  readonly given: Given
  readonly aspect: string | undefined
}

/** What a check answers about the thing of an example; the only answer, where no thing bears its name. */
export function answerTo(check: Check, { given, aspect }: Pick<Example, 'given' | 'aspect'>): Verdict {
  const verdict = answerIf(check, { given, aspect })
  if (verdict === null)
    throw new Error(`Unexpected silence of ${check.id} on ${JSON.stringify(given)}, expected an answer`)
  return verdict
}

const known = new WeakMap<Check, Map<string, Verdict | null>>()

/** The same; null where the check is silent. The same question is worked once, and no aspect but the one asked for. */
export function answerIf(check: Check, { given, aspect }: Asked): Verdict | null {
  const answers = known.get(check) ?? new Map<string, Verdict | null>()
  known.set(check, answers)
  const asked = `${aspect ?? ''} ${JSON.stringify(given)}`
  const found = answers.get(asked)
  if (found !== undefined) return found
  const verdict = workAnswer(check, { given, aspect })
  answers.set(asked, verdict)
  return verdict
}

function workAnswer(check: Check, { given, aspect }: Asked): Verdict | null {
  const own = aspect === undefined ? undefined : check.aspects?.[aspect]
  const one = aspect === undefined || own === undefined ? check : { ...check, aspects: { [aspect]: own } }
  const found = answersTo(one, given).filter(verdict => verdict.aspect === (aspect ?? null))
  return found.find(({ subject }) => subject === exampleId || subject.startsWith(`${exampleId}/`)) ?? found[0] ?? null
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
