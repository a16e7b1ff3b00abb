import { addAmounts } from '../record/asked/add-amounts.ts'
import { type AmountGroup, type AskedLine, groupLines, type Whereabouts } from '../record/asked/split-ledger.ts'
import type { TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { plain, wordsCell } from './inline.ts'
import { inMoney } from './money-cells.ts'
import { largestAmounts } from './most-of-it.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, row, table } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

type Lines = readonly AskedLine[]

const sumOf = (scope: PageScope, lines: Lines): string =>
  addAmounts(
    lines.map(({ line }) => line.amount),
    scope.record.ledger.currency,
  )
/** The sum of lines; empty where there are none. */
export const sumCell = (scope: PageScope, lines: Lines): Cell =>
  wordsCell(lines.length === 0 ? '' : inMoney(scope, sumOf(scope, lines)))

/** What was paid, by where the money is now; what is bolted on stands beside it. */
export function sumTable(scope: PageScope, lines: Lines): PartOfPage {
  const { ledger } = scope.record
  const line = (name: string, some: Lines, sub: readonly Inline[] = []): TableRow =>
    row([
      wordsCell(name, sub),
      wordsCell(inMoney(scope, sumOf(scope, some))),
      wordsCell(String(some.length)),
      wordsCell(largestAmounts(scope, some)),
    ])
  const where = (place: Whereabouts): Lines => lines.filter(({ whereabouts }) => whereabouts === place)
  const on = where('on the vehicle')
  const spare =
    ledger.onVehicle === sumOf(scope, on)
      ? []
      : [plain(`${inMoney(scope, ledger.onVehicle)} of it for the quantities that are fitted`)]
  return table({
    caption: 'Where the money is',
    columns: [column('What', 'wide'), column('Amount', 'num'), column('Amounts', 'num'), column('The largest', 'wide')],
    rows: [
      line('Donors', where('donor')),
      line('Parts that are on the vehicle', on, spare),
      line('Parts that are not, less what came back for them', where('not on the vehicle')),
      line('Materials, tools and services', where('used up')),
    ],
    foot: [
      row([
        wordsCell('Paid in all'),
        wordsCell(inMoney(scope, ledger.total)),
        wordsCell(String(lines.length)),
        wordsCell([plain('every amount', '#ledger')]),
      ]),
    ],
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

/** No identifier: those have no brackets. */
export const donorKey = '(donors)'

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
