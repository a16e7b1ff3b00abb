import { type Check, type CheckSpec, defineCheck } from '../../src/checker/check.ts'
import type { Inputs } from '../../src/checker/input.ts'
import { runChecks } from '../../src/checker/run-checks.ts'
import type { Verdict } from '../../src/checker/verdict.ts'
import { type Given, makeRecord } from './record-maker.ts'

/** A check made for one test; what it leaves out is of no interest there. */
export function makeCheck<const I extends Inputs>(
  spec: Partial<CheckSpec<I>> & Pick<CheckSpec<I>, 'subject' | 'inputs'>,
): Check {
  return defineCheck<I>({
    id: 'made',
    title: 'Made',
    question: 'What is it?',
    worthAsking: 'always',
    source: { title: 'This test', section: 'none' },
    limit: null,
    caution: null,
    examples: [],
    ...spec,
  })
}

export const run = (check: Check, given: Given): Verdict[] => runChecks(makeRecord(given), [check])
export const ask = (check: Check, given: Given): Verdict => {
  const [only, ...more] = run(check, given)
  if (only === undefined || more.length > 0) throw new Error('expected one verdict')
  return only
}
