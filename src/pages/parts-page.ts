import type { Part } from '../record/record.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { billOfMaterials, bySystem, fromWords, nameCell, priceCell } from './bill-of-materials.ts'
import { cameAndWent } from './came-and-went.ts'
import { donorMoney, donorParts } from './donors-table.ts'
import { plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { isGone, stateCell } from './part-states.ts'
import { partsAnswer } from './parts-answer.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, heading, row, table, words } from './tables.ts'

/** What is on the vehicle, what waits beside it, and what came and went; then the donors. */
export function makePartsPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('parts'))
  const { on, waiting, gone } = whereParts(atlas.record.parts)
  return simplePage(scope, {
    title: 'Parts',
    section: 'parts',
    gutter: [
      { term: 'On the vehicle', words: [plain(String(on.length))] },
      { term: 'Waiting', words: [plain(String(waiting.length))] },
      { term: 'Came and went', words: [plain(String(gone.length))] },
    ],
    rows: [
      ...(on.length === 0 ? [] : [wideRow(partsAnswer(scope, on))]),
      textRow(words('plain', 'Below: where each part came from, and what did not stay.'), {
        kind: 'key',
        of: 'states',
      }),
      ...partSections(scope, atlas.record.parts),
      atlas.record.donors.length === 0
        ? wideRow()
        : wideRow(heading('Donors', 'donors'), donorParts(scope), ...donorMoney(scope)),
    ],
  })
}

/** Parts by where they are: on the vehicle, at hand beside it, or gone. */
function whereParts(parts: readonly Part[]): Record<'on' | 'waiting' | 'gone', Part[]> {
  return {
    on: parts.filter(part => part.onVehicle),
    waiting: parts.filter(part => !part.onVehicle && !isGone(part.state)),
    gone: parts.filter(part => !part.onVehicle && isGone(part.state)),
  }
}

/** A bill of materials, what waits, and what came and went, each under its heading where there is any. */
export function partSections(scope: PageScope, parts: readonly Part[]) {
  const { on, waiting, gone } = whereParts(parts)
  const section = (title: string, id: string, some: readonly Part[], make: typeof billOfMaterials) =>
    some.length === 0 ? wideRow() : wideRow(heading(title, id), make(scope, some, title))
  return [
    section('On the vehicle', 'on', on, billOfMaterials),
    section('Not fitted yet', 'waiting', waiting, waitingTable),
    section('Came and went', 'gone', gone, cameAndWent),
  ]
}

/** Parts that are at hand or on their way, by system. */
function waitingTable(scope: PageScope, parts: readonly Part[], caption: string): PartOfPage {
  const withCost = !scope.atlas.withheld.has('cost')
  return table({
    caption,
    columns: [
      column('Part', 'wide'),
      column('State'),
      column('From'),
      column('Qty', 'num'),
      ...(withCost ? [column('Each', 'figure')] : []),
    ],
    groups: bySystem(scope, parts, part =>
      row([
        nameCell(scope, part),
        stateCell(
          part.state,
          '',
          part.replaces === null ? [] : [plain('in place of '), scope.thing({ kind: 'part', id: part.replaces })],
        ),
        wordsCell(fromWords(scope, part)),
        wordsCell(part.qty),
        ...(withCost ? [priceCell(scope, part)] : []),
      ]),
    ),
    canFilter: parts.length > 12,
  })
}
