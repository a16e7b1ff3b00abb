import { layingNotes, layingRules } from '../wiring/laying-rules.ts'
import type { Loom } from '../wiring/looms.ts'
import { wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { column, heading, row, table, words } from './tables.ts'

/** How it is clipped, bent and led through metal. */
export function layingTable({ cuts, bundleMm, sleeve, measured }: Loom): PartOfPage {
  const measuredMm = measured === null ? null : (measured.value.si ?? 0) * 1000
  const rules = layingRules({ cuts, diameterMm: measuredMm ?? bundleMm, isSheathed: sleeve !== null })
  return table({
    caption: 'How to lay it',
    columns: [column('Rule', 'wide'), column('Here'), column('Whose')],
    rows: rules.map(({ asks, here, source }) => row([wordsCell(asks), wordsCell(here), wordsCell(source)])),
    note: 'Rules for boats and aircraft, as pages that quote them print them; none was found for cars. Local rules and licensed practice decide.',
    isCaptionShown: true,
  })
}

/** What holds for the vehicle as a whole. */
export function vehicleRules(): PartOfPage[] {
  return [heading('Earth, battery, shock', 'vehicle-rules'), ...layingNotes.map(note => words('note', note))]
}
