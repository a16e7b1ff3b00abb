import type { Point, Position } from 'unist'
import type { VFile } from 'vfile'
import type { Rule } from '../../src/findings/finding.ts'

/** A mistake in a note, told on its file as any linter plugin tells it. */
interface Report {
  readonly rule: Rule
  readonly place: Position | Point | undefined
  /** One sentence that quotes what was written and says what was expected. */
  readonly reason: string
  readonly actual?: string
  /** What to write instead. */
  readonly mend?: string | null
}

export function report(file: VFile, { rule, place, reason, actual, mend }: Report): void {
  const message = file.message(reason, { place, ruleId: rule, source: 'oddleg' })
  if (actual !== undefined) message.actual = actual
  if (mend === undefined || mend === null) return
  message.expected = [mend]
  message.note = mend
}
