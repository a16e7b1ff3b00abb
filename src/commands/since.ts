import { builtUpTo, publicationOf } from '../build.ts'
import { changesSince } from '../record/asked/changes-since.ts'
import { compareAnswers } from '../record/asked/compare-answers.ts'
import { changesRow } from './changes-row.ts'
import type { BuildOptions } from './options.ts'
import { readBuild, requireEdition } from './read-build.ts'
import { reportChanges } from './report-changes.ts'
import { dayBetween, sessionNamed } from './session-named.ts'

/** `oddleg since SESSION`: what the notes after it changed in the as-built record. Nothing changed is no error. */
export async function since(named: string, options: BuildOptions & { readonly edition: string }): Promise<number> {
  const built = await readBuild(options)
  requireEdition(built, options.edition)
  const { sessions } = built.record
  const last = sessionNamed(sessions, named)
  const kept = new Set(sessions.slice(0, last?.number ?? 0).map(({ id }) => id))
  const earlier = builtUpTo(built, session => kept.has(session))
  const [before, after] = [publicationOf(earlier, options.edition), publicationOf(built, options.edition)]
  const changes = changesSince(before.record, after.record)
  const answers = compareAnswers(before.verdicts, after.verdicts)
  const told = { since: last, day: dayBetween(named, last), changes, answers, record: after.record }
  process.stdout.write(
    options.json ? `${JSON.stringify(changesRow(told), null, 2)}\n` : `${reportChanges(told).join('\n')}\n`,
  )
  return 0
}
