import { addAmounts } from '../record/asked/add-amounts.ts'
import { type DonorAccount, donorAccounts } from '../record/asked/donor-accounts.ts'
import type { Part } from '../record/record.ts'
import { anchorName } from './addresses.ts'
import type { TableRow } from './blocks.ts'
import type { Cell } from './cells.ts'
import { listed, plain, wordsCell } from './inline.ts'
import { inMoney, moneyCell } from './money-cells.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, row, table } from './tables.ts'

/** What each donor gave, what is still to come, what is gone; each row is an anchor. */
export function donorParts(scope: PageScope): PartOfPage {
  return table({
    caption: 'What the donors gave',
    columns: [
      column('Donor'),
      column('On the vehicle', 'wide'),
      column('Still to come', 'wide'),
      column('Gone', 'wide'),
    ],
    rows: donorAccounts(scope.record).map(({ donor, gave, toCome, gone }) =>
      row(
        [wordsCell(donor.name), namesCell(scope, gave), namesCell(scope, toCome), goneCell(scope, gone)],
        anchorName('d', donor.id),
      ),
    ),
  })
}

/** What each donor cost, and what came back from selling its rest; nothing where the edition withholds cost. */
export function donorMoney(scope: PageScope): PartOfPage[] {
  const accounts = donorAccounts(scope.record)
  if (scope.atlas.withheld.has('cost') || accounts.length === 0) return []
  return [
    table({
      caption: 'What the donors cost',
      columns: [
        column('Donor', 'wide'),
        column('Parts on the vehicle', 'num'),
        column('Cost', 'figure'),
        column('Its priced parts', 'num'),
        column('Came back', 'num'),
        column('In the end', 'num'),
      ],
      rows: accounts.map(account => moneyRow(scope, account)),
      foot: accounts.length > 1 ? [footRow(scope, accounts)] : [],
      note: 'In the end: what was paid for the donor and for parts of it that were priced by themselves, less what came back.',
    }),
  ]
}

function moneyRow(scope: PageScope, { donor, gave, pricedParts, cameBack, net }: DonorAccount): TableRow {
  return row([
    wordsCell([scope.thing({ kind: 'donor', id: donor.id })]),
    wordsCell(String(gave.length)),
    costCell(scope, donor.id),
    wordsCell(inMoney(scope, pricedParts)),
    wordsCell(inMoney(scope, cameBack)),
    wordsCell(inMoney(scope, net)),
  ])
}

function footRow(scope: PageScope, accounts: readonly DonorAccount[]): TableRow {
  const sum = (of: (account: DonorAccount) => string): Cell =>
    wordsCell(inMoney(scope, addAmounts(accounts.map(of), scope.record.ledger.currency)))
  return row([
    wordsCell('Together'),
    wordsCell(String(accounts.reduce((count, { gave }) => count + gave.length, 0))),
    sum(({ cost }) => cost ?? '0'),
    sum(({ pricedParts }) => pricedParts),
    sum(({ cameBack }) => cameBack),
    sum(({ net }) => net),
  ])
}

function namesCell(scope: PageScope, parts: readonly Part[]): Cell {
  return wordsCell(listed(parts.map(({ id }) => [scope.thing({ kind: 'part', id })])))
}

function goneCell(scope: PageScope, parts: readonly Part[]): Cell {
  return wordsCell(listed(parts.map(({ id, state }) => [scope.thing({ kind: 'part', id }), plain(` (${state})`)])))
}

function costCell(scope: PageScope, donor: string): Cell {
  const line = scope.record.ledger.lines.find(known => known.of === 'donor' && known.thing?.id === donor)
  return line === undefined ? wordsCell('') : moneyCell(scope, line.written, line)
}
