import { type AskedLine, groupLines } from '../record/asked/split-ledger.ts'
import type { Cell, Inline } from './cells.ts'
import { sumCell } from './cost-sums.ts'
import { plain, wordsCell } from './inline.ts'
import { inMoney } from './money-cells.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, saidWords } from './page-scope.ts'
import { column, row, table } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

type Lines = readonly AskedLine[]

/** Who was paid, in the words of the notes, the dearest first. */
export function supplierTable(scope: PageScope, lines: Lines): PartOfPage {
  const bought = lines.filter(({ line }) => line.of !== 'donor')
  const groups = groupLines(bought, scope.record.ledger.currency, ({ supplier }) => supplier?.text ?? '')
  const cells = (some: Lines): Cell[] => [
    wordsCell(String(some.length)),
    sumCell(
      scope,
      some.filter(({ line }) => line.of !== 'returned'),
    ),
    sumCell(
      scope,
      some.filter(({ line }) => line.of === 'returned'),
    ),
    sumCell(scope, some),
  ]
  return table({
    caption: 'Money by supplier, donors left out',
    columns: [
      column('From', 'wide'),
      column('Amounts', 'num'),
      column('Paid', 'num'),
      column('Came back', 'num'),
      column('In all', 'num'),
    ],
    rows: groups
      .sort((one, other) => Number(other.amount) - Number(one.amount))
      .map(({ lines: own }) => row([wordsCell(supplierName(scope, own)), ...cells(own)])),
    foot: [row([wordsCell('Together'), ...cells(bought)])],
  })
}

function supplierName(scope: PageScope, [first]: Lines): readonly Inline[] {
  const words = first?.supplier ?? null
  if (words === null) return [plain('not said')]
  const donor = scope.record.donors.find(({ id }) => id === words.text.trim())
  return donor === undefined ? saidWords(words) : [scope.thing({ kind: 'donor', id: donor.id })]
}

/** What was paid in other currencies, at which rate, and what that came to; nothing where all was paid in one. */
export function currencyTable(scope: PageScope, lines: Lines): PartOfPage[] {
  const foreign = lines.filter(({ rate }) => rate !== null)
  if (foreign.length === 0) return []
  const groups = groupLines(foreign, scope.record.ledger.currency, ({ line }) => line.written.currency)
  return [
    table({
      caption: 'Other currencies',
      columns: [column('Currency'), column('One of it is', 'num'), column('Amounts', 'num'), column('Came to', 'num')],
      rows: groups.map(({ key, lines: own, amount }) => {
        const rate = own[0]?.rate ?? '1'
        return row([
          wordsCell(key),
          wordsCell([scope.link(`${rate} ${scope.record.ledger.currency}`, noteAddress(null))]),
          wordsCell(String(own.length)),
          wordsCell(inMoney(scope, amount)),
        ])
      }),
      foot: [row([wordsCell('Together'), wordsCell(''), wordsCell(String(foreign.length)), sumCell(scope, foreign)])],
      note: 'Each line is multiplied by its quantity, converted, and then rounded to the smallest coin.',
    }),
  ]
}
