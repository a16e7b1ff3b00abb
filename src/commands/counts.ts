import type { Verdict, VerdictWord } from '../checker/verdict.ts'
import type { Finding, Severity } from '../findings/finding.ts'

export type Counts = Readonly<Record<Severity | VerdictWord, number>>

/** How often each severity and each verdict came out. */
export function countAll(findings: readonly Finding[], verdicts: readonly Verdict[]): Counts {
  const severity = (word: Severity): number => findings.filter(found => found.severity === word).length
  const verdict = (word: VerdictWord): number => verdicts.filter(found => found.verdict === word).length
  return {
    error: severity('error'),
    warning: severity('warning'),
    note: severity('note'),
    pass: verdict('pass'),
    marginal: verdict('marginal'),
    fail: verdict('fail'),
    missing: verdict('missing'),
    waived: verdict('waived'),
  }
}

/** Exit status of a check: 1 where a note has an error or a check failed; with strict a warning or a marginal check too. */
export function statusOf(counts: Counts, strict: boolean): 0 | 1 {
  if (counts.error > 0 || counts.fail > 0) return 1
  return strict && (counts.warning > 0 || counts.marginal > 0) ? 1 : 0
}

const words: readonly (readonly [keyof Counts, string, string])[] = [
  ['error', 'error', 'errors'],
  ['warning', 'warning', 'warnings'],
  ['note', 'note', 'notes'],
  ['fail', 'failed check', 'failed checks'],
  ['marginal', 'marginal', 'marginal'],
  ['missing', 'missing', 'missing'],
  ['waived', 'waived', 'waived'],
  ['pass', 'passed', 'passed'],
]

/** `2 warnings; 1 failed check, 3 missing, 41 passed`. */
export function countWords(counts: Counts): string {
  const said = words
    .filter(([key]) => counts[key] > 0)
    .map(([key, one, more]) => `${counts[key]} ${counts[key] === 1 ? one : more}`)
  return said.length === 0 ? 'nothing found and nothing to check' : said.join(', ')
}
