import type { Measurement } from '../record/record.ts'
import type { TableRow } from './blocks.ts'
import { look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, row, table, words } from './tables.ts'
import { subjectAddress } from './thing-addresses.ts'

/** A figure that stood until a later note measured the same again. */
interface Correction {
  readonly before: Measurement
  readonly after: Measurement
}

/** Every measurement that a later note replaced by another, in the order of the later notes. One that it found again the same is no correction. */
export function correctionsOf(measurements: readonly Measurement[]): Correction[] {
  const last = new Map<string, Measurement>()
  return measurements.flatMap(after => {
    const before = last.get(after.path)
    last.set(after.path, after)
    const isOther =
      before !== undefined && before.session !== after.session && before.quantity.text !== after.quantity.text
    return isOther ? [{ before, after }] : []
  })
}

/** The table of corrections: old and new, both dates, both leading to the sentences that say so. */
export function correctionTable(scope: PageScope): PartOfPage {
  const corrections = correctionsOf(scope.record.measurements)
  if (corrections.length === 0) return words('plain', 'No measurement was corrected by a later note.')
  return table({
    caption: 'Measurements that a later note corrected',
    columns: [
      column('What', 'wide'),
      column('As it stood', 'figure'),
      column('Written', 'narrow'),
      column('As corrected', 'figure'),
      column('Written', 'narrow'),
      column('What the later note adds', 'wide'),
    ],
    rows: corrections.map(one => correctionRow(scope, one)),
  })
}

function correctionRow(scope: PageScope, { before, after }: Correction): TableRow {
  return row([
    wordsCell([look('path', after.path, scope.to(subjectAddress(after.subject)))]),
    { kind: 'leader', leader: scope.leader(before.quantity.text, before) },
    wordsCell(dateWords(scope, before)),
    { kind: 'leader', leader: scope.leader(after.quantity.text, after) },
    wordsCell(dateWords(scope, after)),
    wordsCell([
      ...(after.with === null ? [] : [plain(`with ${after.with}`)]),
      ...(after.note === null ? [] : [look('said', `${after.with === null ? '' : ', '}${after.note}`)]),
    ]),
  ])
}

function dateWords(scope: PageScope, { session }: Measurement): string {
  return session === null ? 'build note' : (scope.atlas.sessions.get(session)?.date ?? '')
}
