import type { Span } from '../tree/source.ts'

/** A mark that did not come out as one: where it begins, and what was expected. */
export interface FailedMark {
  /** From its colon to the end of its name. */
  readonly span: Span
  readonly reason: string
  readonly mend: string | null
}
