import type { ReadOptions } from '../quantities/quantity.ts'

/** What build.md sets that changes what a note states. */
export interface StateOptions extends ReadOptions {
  /** What "about" is worth, as a share: 0.05. */
  readonly approximate: number
}
