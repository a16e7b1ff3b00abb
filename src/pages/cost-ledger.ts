import { addAmounts } from '../record/asked/add-amounts.ts'
import type { AskedLine } from '../record/asked/split-ledger.ts'
import type { LedgerLine } from '../record/record.ts'
import type { Cell } from './cells.ts'
import { look, plain, wordsCell } from './inline.ts'
import { inMoney, moneyCell } from './money-cells.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, saidWords } from './page-scope.ts'
import { column, row, table } from './tables.ts'
import { subjectAddress } from './thing-addresses.ts'

const kinds: Readonly<Record<LedgerLine['of'], string>> = {
  donor: 'donor',
  part: 'part',
  spend: 'bought',
  returned: 'came back',
}

/** Every amount in the order of the notes: as written, at its rate, and what that made in all. */
export function ledgerTable(scope: PageScope, lines: readonly AskedLine[]): PartOfPage {
  const { currency, total } = scope.record.ledger
  return table({
    caption: 'Every amount',
    columns: [
      column('What', 'wide'),
      column('Kind'),
      column('From'),
      column('Qty', 'num'),
      column('Each, as written', 'figure'),
      column('Rate', 'num'),
      column('Amount', 'num'),
      column('Up to here', 'num'),
    ],
    rows: lines.map(({ line, supplier, rate, running }) =>
      row([
        whatCell(scope, line),
        wordsCell(kinds[line.of]),
        wordsCell(supplier === null ? [] : saidWords(supplier)),
        wordsCell(line.qty),
        moneyCell(scope, line.written, line),
        wordsCell(rate === null ? '' : `× ${rate}`),
        wordsCell(inMoney(scope, line.amount)),
        wordsCell(inMoney(scope, running)),
      ]),
    ),
    foot: [
      row([
        wordsCell('Paid in all'),
        ...blanks(5),
        wordsCell(
          inMoney(
            scope,
            addAmounts(
              lines.map(({ line }) => line.amount),
              currency,
            ),
          ),
        ),
        wordsCell(inMoney(scope, total)),
      ]),
    ],
    canFilter: true,
  })
}

/** What was returned or sold, when and why, and what it brought. */
export function returnsTable(scope: PageScope, lines: readonly AskedLine[]): PartOfPage[] {
  const back = lines.filter(({ line }) => line.of === 'returned')
  if (back.length === 0) return []
  const sum = addAmounts(
    back.map(({ line }) => line.amount),
    scope.record.ledger.currency,
  )
  return [
    table({
      caption: 'What came back',
      columns: [
        column('What', 'wide'),
        column('How'),
        column('Why', 'wide'),
        column('Qty', 'num'),
        column('Each, as written', 'figure'),
        column('Amount', 'num'),
      ],
      rows: back.map(({ line }) => {
        const event = scope.record.parts
          .find(({ id }) => id === line.thing?.id)
          ?.events.find(({ cost, session }) => session === line.session && cost?.place.line === line.place.line)
        return row([
          whatCell(scope, line),
          wordsCell(event?.action ?? ''),
          wordsCell(event?.why ? [look('said', event.why.value.text)] : []),
          wordsCell(line.qty),
          moneyCell(scope, line.written, line),
          wordsCell(inMoney(scope, line.amount)),
        ])
      }),
      foot: [row([wordsCell('Together'), ...blanks(4), wordsCell(inMoney(scope, sum))])],
    }),
  ]
}

function whatCell(scope: PageScope, line: LedgerLine): Cell {
  if (line.thing === null) return wordsCell(line.words === null ? line.what : saidWords(line.words))
  return wordsCell([plain(line.what, scope.to(subjectAddress(line.thing)))])
}

const blanks = (count: number): Cell[] => Array.from({ length: count }, () => wordsCell(''))
