import type { Verdict } from '../checker/verdict.ts'
import type { WeighedPoint } from '../checker/weigh-inspection.ts'
import type { Finding } from '../findings/finding.ts'
import type { PublishableRecord } from './publishable.ts'

declare const published: unique symbol

/** Everything that an edition publishes, with nothing in it that the edition withholds. Only `redact` makes one. */
export interface Publication {
  readonly [published]: true
  readonly record: PublishableRecord
  readonly verdicts: readonly Verdict[]
  readonly inspection: readonly WeighedPoint[]
  readonly findings: readonly Finding[]
  /** Pictures that something in it shows, relative to the build folder; no other is published. */
  readonly photos: readonly string[]
  /** Notes of which the edition withholds nothing, whose sums may be told. */
  readonly wholeNotes: readonly string[]
}
