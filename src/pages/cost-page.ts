import { askLedger } from '../record/asked/split-ledger.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { ledgerTable, returnsTable } from './cost-ledger.ts'
import { moneyBySystem, moneyOverTime } from './cost-plots.ts'
import { sessionTable, sumTable, systemTable } from './cost-sums.ts'
import { currencyTable, supplierTable } from './cost-suppliers.ts'
import { donorMoney } from './donors-table.ts'
import { plain } from './inline.ts'
import { inMoney } from './money-cells.ts'
import type { PartOfPage } from './page-parts.ts'
import { pageScope } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { heading, words } from './tables.ts'

/** What was paid and what came back, added up in every way that somebody asks; every amount leads to its words. */
export function makeCostPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('cost'))
  const { ledger } = atlas.record
  const lines = askLedger(atlas.record)
  const section = (title: string, id: string, parts: readonly PartOfPage[]) =>
    parts.length === 0 ? wideRow() : wideRow(heading(title, id), ...parts)
  return simplePage(scope, {
    title: 'Cost',
    section: 'cost',
    gutter: [
      { term: 'Paid in all', words: [plain(inMoney(scope, ledger.total))] },
      { term: 'On the vehicle', words: [plain(inMoney(scope, ledger.onVehicle))] },
      { term: 'Amounts', words: [plain(String(lines.length))] },
    ],
    rows: [
      textRow(
        words(
          'lede',
          'What was paid, in the notes’ own figures. A part that was rejected stays in the cost and leaves the vehicle.',
        ),
      ),
      wideRow(sumTable(scope, lines)),
      section('When did the money go?', 'time', [...moneyOverTime(scope, lines), sessionTable(scope, lines)]),
      section('Which system took it?', 'systems', [...moneyBySystem(scope, lines), systemTable(scope, lines)]),
      section('By supplier', 'suppliers', [supplierTable(scope, lines)]),
      section('By donor', 'donors', donorMoney(scope)),
      section('What came back', 'returns', returnsTable(scope, lines)),
      section('Other currencies', 'currencies', currencyTable(scope, lines)),
      section('Every amount', 'ledger', [ledgerTable(scope, lines)]),
    ],
  })
}
