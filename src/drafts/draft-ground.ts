import type { ReadOptions } from '../quantities/quantity.ts'
import type { AsBuiltRecord } from '../record/record.ts'

/** What a draft is made beside: the record as it stands, and how the build writes its figures. */
export interface DraftGround {
  readonly record: Pick<AsBuiltRecord, 'parts' | 'circuits' | 'systems' | 'jobs' | 'build'>
  readonly options: ReadOptions
}
