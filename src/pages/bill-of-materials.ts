import { addAmounts } from '../record/asked/add-amounts.ts'
import type { Part } from '../record/record.ts'
import type { Table, TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { look, plain, wordsCell } from './inline.ts'
import { massOf, massText } from './masses.ts'
import { inMoney, moneyCell } from './money-cells.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, saidWords, spaced, standing } from './page-scope.ts'
import { photoCell } from './part-photo.ts'
import { column, row, table } from './tables.ts'
import { noteAddress, subjectAddress } from './thing-addresses.ts'
import { standingCell } from './thing-table.ts'

/** What is on the vehicle, by system: from where, since which session, how much of it, its mass, its price, its picture; with the sums. */
export function billOfMaterials(scope: PageScope, parts: readonly Part[], caption: string): PartOfPage {
  const withCost = !scope.atlas.withheld.has('cost')
  const costs = withCost ? [column('Each', 'figure'), column('In all', 'num')] : []
  return table({
    caption,
    columns: [
      column('Part', 'wide'),
      column('From'),
      column('Fitted', 'narrow'),
      column('Qty', 'num'),
      column('Mass of one', 'figure'),
      ...costs,
      column('Picture'),
    ],
    groups: bySystem(scope, parts, part => billRow(scope, part, withCost)),
    foot: [footRow(scope, parts, withCost)],
    canFilter: parts.length > 12,
  })
}

function billRow(scope: PageScope, part: Part, withCost: boolean): TableRow {
  const costs = withCost
    ? [priceCell(scope, part), wordsCell(part.value === null ? '' : inMoney(scope, part.value))]
    : []
  return row([
    nameCell(scope, part),
    wordsCell(fromWords(scope, part)),
    fittedCell(scope, part),
    wordsCell(part.qty),
    standingCell(scope, standing(part.properties, 'mass')),
    ...costs,
    photoCell(scope, part),
  ])
}

function footRow(scope: PageScope, parts: readonly Part[], withCost: boolean): TableRow {
  const masses = parts.map(massOf).filter(mass => mass !== null)
  const weighed =
    masses.length === 0
      ? wordsCell('')
      : wordsCell(
          massText(
            scope,
            masses.reduce((sum, mass) => sum + mass, 0),
          ),
          [plain(`${masses.length} of ${parts.length} parts weighed, each by its quantity`)],
        )
  const value = addAmounts(
    parts.flatMap(part => part.value ?? []),
    scope.record.ledger.currency,
  )
  const costs = withCost ? [wordsCell(''), wordsCell(inMoney(scope, value))] : []
  return row([wordsCell('Together'), wordsCell(''), wordsCell(''), wordsCell(''), weighed, ...costs, wordsCell('')])
}

/** Rows under their systems, in the order of build.md; those of no system last. */
export function bySystem(scope: PageScope, parts: readonly Part[], rowOf: (part: Part) => TableRow): Table['groups'] {
  const declared = scope.record.systems.map(system => system.id)
  const systems = [...new Set([...declared, ...parts.map(part => part.system).filter(id => id !== null)])]
  const group = (id: string | null, heading: readonly Inline[]) => ({
    id: null,
    heading,
    rows: parts.filter(part => part.system === id).map(rowOf),
  })
  return [...systems.map(id => group(id, [scope.thing({ kind: 'system', id })])), group(null, [plain('Of no system')])]
}

/** The part's name, leading to its page; under it identifier, kind and the maker's number. */
export function nameCell(scope: PageScope, part: Part): Cell {
  const number = standing(part.properties, 'number')
  const maker = number?.value.type === 'words' ? [plain(', '), ...saidWords(number.value.words)] : []
  const kind = part.partKind === null ? [] : [plain(`, ${spaced(part.partKind)}`)]
  return wordsCell(
    [scope.link(part.name, subjectAddress({ kind: 'part', id: part.id }))],
    [look('path', part.id), ...kind, ...maker],
  )
}

/** The session that put it where it is, and what was done to it since. */
function fittedCell(scope: PageScope, part: Part): Cell {
  const fitting = part.events.findLast(({ action }) => action === 'fitted')
  if (fitting === undefined) return wordsCell('')
  const changes = part.events
    .slice(part.events.indexOf(fitting) + 1)
    .map(event => [
      plain(', '),
      scope.link(`${event.action} in ${scope.balloon(event.session).text}`, noteAddress(event.session)),
    ])
  return {
    kind: 'balloon',
    balloon: scope.balloon(fitting.session),
    words: [scope.link(fittedText(scope, fitting.session), noteAddress(fitting.session)), ...changes.flat()],
  }
}

function fittedText(scope: PageScope, session: string | null): string {
  return (session === null ? null : scope.atlas.sessions.get(session)?.date) || scope.balloon(session).says
}

/** The donor, or the words that were written. */
export function fromWords(scope: PageScope, part: Part): Inline[] {
  if (part.donor !== null) return [scope.thing({ kind: 'donor', id: part.donor })]
  return part.from === null ? [] : saidWords(part.from.value)
}

/** The price of one as written; a part of a donor without one came with it. */
export function priceCell(scope: PageScope, part: Part): Cell {
  if (part.cost === null) return wordsCell(part.donor === null ? '' : 'with its donor')
  return moneyCell(scope, part.cost.value, part.cost)
}
