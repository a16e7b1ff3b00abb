import type { Verdict } from '../checker/verdict.ts'

/** A verdict as `check --json` and record.json print it: all but what only the pages show of its working. */
export function verdictRow({ working: _, ...row }: Verdict): Omit<Verdict, 'working'> {
  return row
}
