import type { Built } from '../build.ts'
import { takenOut, withheldNames } from '../editions/withheld-names.ts'
import { verdictRow } from '../exports/verdict-row.ts'
import { comparePlaces } from '../findings/place.ts'
import { makeNoteMemory } from '../notes/note-memory.ts'
import { countAll, countWords, statusOf } from './counts.ts'
import type { BuildOptions } from './options.ts'
import { readBuildAndPictures, requireKnown } from './read-build.ts'
import { reportFindings, showsColour } from './report-findings.ts'
import { reportTaken, takenRow } from './report-taken.ts'
import { reportVerdicts } from './report-verdicts.ts'
import { untilStopped } from './until-stopped.ts'
import { watchContent } from './watch-content.ts'

interface CheckOptions extends BuildOptions {
  /** Undefined: withheld words of every edition are told, and nothing of what one leaves out. */
  readonly edition: string | undefined
  readonly watch: boolean
}

/** `oddleg check`: findings of the notes and verdicts of the checks; exit status 1 for an error or a failed check. */
export async function check(options: CheckOptions): Promise<number> {
  const memory = makeNoteMemory()
  const once = async (): Promise<number> => {
    const built = await readBuildAndPictures(options, memory)
    if (options.edition !== undefined) requireKnown(built, options.edition)
    return tell(built, options)
  }
  const status = await once()
  if (!options.watch) return status
  const stop = watchContent(options.build, () => {
    process.stderr.write('\n')
    once().catch((cause: unknown) =>
      process.stderr.write(`oddleg: ${cause instanceof Error ? cause.message : String(cause)}\n`),
    )
  })
  await untilStopped()
  stop()
  return 0
}

function tell(built: Built, { json, strict, edition }: CheckOptions): number {
  const { stated, verdicts } = built
  const editions = edition === undefined ? stated.editions.map(({ name }) => name) : [edition]
  const findings = [...built.findings, ...withheldNames(stated, editions)].sort(comparePlaces)
  const counts = countAll(findings, verdicts)
  const taken = edition === undefined ? null : takenOut(stated, edition)
  if (json) {
    const withheld = taken === null ? {} : { withheld: taken.map(takenRow) }
    process.stdout.write(
      `${JSON.stringify({ findings, checks: verdicts.map(verdictRow), counts, ...withheld }, null, 2)}\n`,
    )
    return statusOf(counts, strict)
  }
  const colour = showsColour(process.stdout)
  const parts = [
    taken === null ? '' : reportTaken(taken, edition ?? ''),
    reportFindings(findings, colour),
    reportVerdicts(verdicts, colour),
  ].filter(part => part !== '')
  if (parts.length > 0) process.stdout.write(`${parts.join('\n\n')}\n`)
  process.stderr.write(`\n${countWords(counts)}\n`)
  return statusOf(counts, strict)
}
