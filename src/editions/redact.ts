import type { AsBuiltRecord } from '../record/record.ts'
import type { PublishableRecord } from './publishable.ts'

/** The record as an edition may see it. `full` withholds nothing; any other edition throws until it can be redacted whole. */
export function redact(record: AsBuiltRecord, edition: string): PublishableRecord {
  if (edition !== 'full') throw new Error(`Unexpected edition \`${edition}\`, expected \`full\``)
  return { ...record, edition } as PublishableRecord
}
