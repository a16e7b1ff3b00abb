import type { Test } from '../record/record.ts'

/** Tests that did not pass when they were made last; the same words are the same test. */
export function testsNotPassed(tests: readonly Test[]): Test[] {
  const last = new Map<string, Test>()
  for (const test of tests) last.set(test.what.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim(), test)
  return [...last.values()].filter(({ result }) => result !== 'pass')
}
