import { describe, expect, test } from 'vitest'
import { loadChecks } from '../../src/checker/load-checks.ts'
import { runChecks } from '../../src/checker/run-checks.ts'
import { makeRecord } from '../checker/record-maker.ts'
import { answerTo, nameOf } from './answer-to.ts'
import { weaknessesOf } from './weak-examples.ts'

const checks = await loadChecks('src/checks')

describe.each(checks.map(check => [check.id, check] as const))('%s', (_, check) => {
  test('its examples are distinct and come out each way that they can', () => {
    expect(weaknessesOf(check)).toEqual([])
  })

  test.each(check.examples.map(example => [nameOf(example), example] as const))('%s', (_name, example) => {
    const verdict = answerTo(check, example)
    expect(verdict.verdict, verdict.working.says).toBe(example.expect)
    expect([...verdict.missing].sort()).toEqual([...(example.missing ?? [])].sort())
    if (example.value === undefined) expect(verdict.result).toBeNull()
    else
      expect(Math.abs((verdict.result?.value ?? Number.NaN) - example.value)).toBeLessThanOrEqual(
        halfOfLastDigit(example.value),
      )
  })

  test('every verdict leads to the places of the figures and words that it used', () => {
    for (const verdict of check.examples.map(example => answerTo(check, example))) {
      for (const { file, line, column } of verdict.inputs)
        expect([file, line, column]).toEqual([
          expect.stringMatching(/^content\//),
          expect.any(Number),
          expect.any(Number),
        ])
    }
  })

  test('the same record gives the same verdicts, and is not changed by them', () => {
    for (const { given } of check.examples) {
      const record = makeRecord(given)
      const before = JSON.stringify(record)
      const [first, second] = [runChecks(record, [check]), runChecks(record, [check])]
      expect(JSON.stringify(first)).toBe(JSON.stringify(second))
      expect(JSON.stringify(record)).toBe(before)
    }
  })
})

/** A value worked by hand holds to its last digit. */
function halfOfLastDigit(value: number): number {
  const decimals = String(value).split('.')[1]?.length ?? 0
  return 0.5 * 10 ** -decimals * (1 + 1e-9)
}
