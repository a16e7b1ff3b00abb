import { existsSync } from 'node:fs'
import { join } from 'node:path'
import type { Check } from '../checker/check.ts'
import { runChecks } from '../checker/run-checks.ts'
import type { Verdict } from '../checker/verdict.ts'
import { limitInOthers, resultInOthers } from '../pages/result-in-others.ts'
import type { ReadOptions } from '../quantities/quantity.ts'
import type { Explanation } from './explain-check.ts'
import { readBuild } from './read-build.ts'

/** Every subject that a check is asked of in the build of a folder, with its answer; nothing where the folder holds no build. */
export async function answersHere(check: Check, build: string): Promise<Explanation['sections']> {
  if (!existsSync(join(build, 'content', 'build.md'))) return []
  const { record } = await readBuild({ build, date: undefined, json: false, strict: false })
  const lines = runChecks(record, [check]).flatMap(verdict => answerLines(verdict, record.build.reading.gallon))
  return [{ heading: 'In this build', lines: lines.length === 0 ? ['asked of nothing'] : lines }]
}

function answerLines(verdict: Verdict, gallon: ReadOptions['gallon']): string[] {
  const { working, subject, aspect } = verdict
  const others = [resultInOthers(verdict, gallon), limitInOthers(verdict, gallon)]
    .filter(text => text !== null)
    .join('; ')
  const steps = [...working.steps, ...working.beside].map(
    ({ symbol, values, result }) => `  ${symbol.text} = ${values.text} = ${result.text}`,
  )
  return [
    `${subject}${aspect === null ? '' : `, ${aspect}`}: ${verdict.verdict}. ${working.says}${others === '' ? '' : ` In other units: ${others}.`}`,
    ...steps,
    ...working.needs.map(({ path, why }) => `  measure next: ${path} (${why})`),
  ]
}
