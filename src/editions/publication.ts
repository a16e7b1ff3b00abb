import type { Verdict } from '../checker/verdict.ts'
import type { WeighedPoint } from '../checker/weigh-inspection.ts'
import type { Finding } from '../findings/finding.ts'
import type { PublishableRecord } from './publishable.ts'

/** Everything that an edition publishes, with nothing in it that the edition withholds. */
export interface Publication {
  readonly record: PublishableRecord
  readonly verdicts: readonly Verdict[]
  readonly inspection: readonly WeighedPoint[]
  readonly findings: readonly Finding[]
}
