import { addAmounts } from '../record/asked/add-amounts.ts'
import { type AmountGroup, type AskedLine, groupLines, type Whereabouts } from '../record/asked/split-ledger.ts'
import type { TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { plain, wordsCell } from './inline.ts'
import { inMoney } from './money-cells.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, saidWords } from './page-scope.ts'
import { column, row, table } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

type Lines = readonly AskedLine[]

const sumOf = (scope: PageScope, lines: Lines): string =>
  addAmounts(
    lines.map(({ line }) => line.amount),
    scope.record.ledger.currency,
  )
const sumCell = (scope: PageScope, lines: Lines): Cell =>
  wordsCell(lines.length === 0 ? '' : inMoney(scope, sumOf(scope, lines)))

/** What was paid, by where the money is now; what is bolted on stands beside it. */
export function sumTable(scope: PageScope, lines: Lines): PartOfPage {
  const { ledger } = scope.record
  const line = (name: string, some: Lines, sub: readonly Inline[] = []): TableRow =>
    row([wordsCell(name, sub), wordsCell(inMoney(scope, sumOf(scope, some)))])
  const where = (place: Whereabouts): Lines => lines.filter(({ whereabouts }) => whereabouts === place)
  const on = where('on the vehicle')
  const spare =
    ledger.onVehicle === sumOf(scope, on)
      ? []
      : [plain(`${inMoney(scope, ledger.onVehicle)} of it for the quantities that are fitted`)]
  return table({
    caption: 'Where the money is',
    columns: [column('What', 'wide'), column('Amount', 'num')],
    rows: [
      line('Donors', where('donor')),
      line('Parts that are on the vehicle', on, spare),
      line('Parts that are not, less what came back for them', where('not on the vehicle')),
      line('Materials, tools and services', where('used up')),
    ],
    foot: [row([wordsCell('Paid in all'), wordsCell(inMoney(scope, ledger.total))])],
  })
}

/** Each system's money by where it is; donors stand in a row of their own. */
export function systemTable(scope: PageScope, lines: Lines): PartOfPage {
  const places: readonly Whereabouts[] = ['donor', 'on the vehicle', 'not on the vehicle', 'used up']
  const cells = (some: Lines): Cell[] => [
    ...places.map(place =>
      sumCell(
        scope,
        some.filter(({ whereabouts }) => whereabouts === place),
      ),
    ),
    sumCell(scope, some),
  ]
  return table({
    caption: 'Money by system',
    columns: [
      column('System', 'wide'),
      column('Donors', 'num'),
      column('In parts on the vehicle', 'num'),
      column('In parts that are not', 'num'),
      column('Used up', 'num'),
      column('In all', 'num'),
    ],
    rows: systemGroups(scope, lines).map(({ key, lines: own }) =>
      row([wordsCell(systemName(scope, key)), ...cells(own)]),
    ),
    foot: [row([wordsCell('Paid in all'), ...cells(lines)])],
  })
}

/** Lines under their systems in the order of build.md, then those of no system, then the donors. */
export function systemGroups(scope: PageScope, lines: Lines): AmountGroup[] {
  const order = [...scope.record.systems.map(({ id }) => id), '', donorKey]
  const place = (key: string): number => (order.includes(key) ? order.indexOf(key) : scope.record.systems.length - 0.5)
  const groups = groupLines(lines, scope.record.ledger.currency, ({ line }) =>
    line.of === 'donor' ? donorKey : (line.system ?? ''),
  )
  return groups.sort((one, other) => place(one.key) - place(other.key))
}

const donorKey = '(donors)' // no identifier: those have no brackets

function systemName(scope: PageScope, key: string): readonly Inline[] {
  if (key === donorKey) return [plain('Donors')]
  return key === '' ? [plain('Of no system')] : [scope.thing({ kind: 'system', id: key })]
}

/** What each session cost, and what that made in all. */
export function sessionTable(scope: PageScope, lines: Lines): PartOfPage {
  const groups = groupLines(lines, scope.record.ledger.currency, ({ line }) => line.session ?? '')
  return table({
    caption: 'Money by session',
    columns: [
      column('Session', 'narrow'),
      column('What was done', 'wide'),
      column('Amounts', 'num'),
      column('Amount', 'num'),
      column('Up to here', 'num'),
    ],
    rows: groups.map(({ key, lines: own, amount }) => {
      const session = scope.atlas.sessions.get(key)
      return row([
        { kind: 'balloon', balloon: scope.balloon(key === '' ? null : key), words: [] },
        wordsCell([scope.link(session?.title.text ?? 'the build note', noteAddress(session?.id ?? null))]),
        wordsCell(String(own.length)),
        wordsCell(inMoney(scope, amount)),
        wordsCell(inMoney(scope, own.at(-1)?.running ?? amount)),
      ])
    }),
    foot: [
      row([
        wordsCell('Together'),
        wordsCell(''),
        wordsCell(String(lines.length)),
        sumCell(scope, lines),
        wordsCell(''),
      ]),
    ],
  })
}

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
