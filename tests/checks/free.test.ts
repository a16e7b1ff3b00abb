import { describe, expect, test } from 'vitest'
import type { Check, Example } from '../../src/checker/check.ts'
import { loadChecks } from '../../src/checker/load-checks.ts'
import { toSi } from '../../src/checker/unit.ts'
import type { Verdict } from '../../src/checker/verdict.ts'
import { unitOf } from '../../src/quantities/units.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerIf, answerTo } from './answer-to.ts'
import { decimal, exact, inOtherUnit, made, ofOtherDimension, variablePaths } from './vary.ts'

const checks = await loadChecks('src/checks')

const answered = (check: Check): Example[] => check.examples.filter(({ expect: word }) => word !== 'missing')
const outcome = ({ verdict, result }: Verdict): string => JSON.stringify([verdict, result])
const openness = ({ assumed, working }: Verdict): string => JSON.stringify([assumed, working.notes, working.tables])
const without = (given: Given, path: string): Given =>
  Object.fromEntries(Object.entries(given).filter(([key]) => key !== path))

describe.each(checks.map(check => [check.id, check] as const))('%s', (_, check) => {
  test('a figure that is taken away is missing or assumed, or the answer stands without it', () => {
    const silent = answered(check).flatMap(example =>
      variablePaths(example.given)
        .filter(path => !path.includes(':'))
        .filter(path =>
          isSilentlyOther(
            answerTo(check, example),
            answerIf(check, { given: without(example.given, path), aspect: example.aspect }),
            path,
            check,
          ),
        )
        .map(path => `${path} of ${JSON.stringify(example.given)}`),
    )
    expect(silent).toEqual([])
  })

  test('a figure of another dimension is missing', () => {
    const swallowed = answered(check).flatMap(example =>
      variablePaths(example.given).flatMap(path => {
        const given = made(example.given, (quantity, at) =>
          at === path ? ofOtherDimension(quantity) : (example.given[at] ?? ''),
        )
        const [before, after] = [answerTo(check, example), answerIf(check, { given, aspect: example.aspect })]
        return after === null || after.verdict === 'missing' || outcome(after) === outcome(before)
          ? []
          : [`${path} of ${JSON.stringify(given)}: ${after.working.says}`]
      }),
    )
    expect(swallowed).toEqual([])
  })

  test('the same figures in other units give the same verdict and value', () => {
    for (const example of answered(check)) {
      const [one, other] = [exact, inOtherUnit].map(change =>
        answerTo(check, { ...example, given: made(example.given, change) }),
      )
      expect(other?.verdict).toBe(one?.verdict)
      expect(inSi(other)).toSatisfy((si: number) => Math.abs(si - inSi(one)) <= 1e-9 * Math.abs(inSi(one)))
    }
  })

  if (hasLimit(check))
    test('with exact figures it passes at its limit and not just past it', () => {
      const tried = answered(check).flatMap(example => {
        const given = made(example.given, exact)
        const verdict = answerTo(check, { ...example, given })
        return isExact(verdict) ? [atLimit(check, { ...example, given }, verdict)] : []
      })
      expect(tried.length).toBeGreaterThan(0)
      for (const { at, past } of tried)
        expect([['pass', 'waived'].includes(at), ['fail', 'marginal'].includes(past)]).toEqual([true, true])
    })
})

const inSi = (verdict: Verdict | undefined): number =>
  verdict?.result == null ? Number.NaN : toSi(verdict.result.value, verdict.result.unit)

/** What is optional makes the answer another one openly: the limit goes, or a cut-out does. */
function isSilentlyOther(before: Verdict, after: Verdict | null, path: string, check: Check): boolean {
  if (
    after === null ||
    after.verdict === 'missing' ||
    outcome(after) === outcome(before) ||
    openness(after) !== openness(before)
  )
    return false
  const isOptional = Object.values(check.inputs).some(input => input.isOptional === true && input.reads.includes(path))
  return !isOptional
}

function hasLimit(check: Check): boolean {
  return [check.limit, ...Object.values(check.aspects ?? {}).map(({ limit }) => limit)].some(
    limit => limit !== null && limit.agreesWith === undefined,
  )
}

function isExact({ result, limit }: Verdict): boolean {
  return result !== null && limit !== null && result.uncertainty === 0 && result.value !== 0
}

/** The verdicts with a limit of build.md at the result, and one a millionth nearer. */
function atLimit(check: Check, example: Example, { result, limit, subject }: Verdict): { at: string; past: string } {
  const isBelow = limit?.min != null && (result?.value ?? Number.NaN) < limit.min
  const side = limit?.max == null || isBelow ? 'min' : 'max'
  const [value, unit] = [result?.value ?? Number.NaN, unitOf(result?.unit ?? '1').symbol]
  const verdictAt = (bound: number): string =>
    answerTo(check, {
      ...example,
      given: {
        ...without(example.given, `limit/${check.id}`),
        [`limit/${check.id}/${subject}`]: `${side} ${decimal(bound)} ${unit}, this test`,
      },
    }).verdict
  const nearer = side === 'max' ? value - Math.abs(value) * 1e-6 : value + Math.abs(value) * 1e-6
  return { at: verdictAt(value), past: verdictAt(nearer) }
}
