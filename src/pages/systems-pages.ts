import type { Thing } from '../record/record.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { tally } from './checks-page.ts'
import { wordOf } from './circuit-page.ts'
import { plain, wordsCell } from './inline.ts'
import { massBySystem } from './mass-plot.ts'
import { money } from './money.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { partSections } from './parts-page.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { verdictTable } from './subject-checks.ts'
import { column, heading, row, table, words } from './tables.ts'
import { subjectAddress } from './thing-addresses.ts'

/** The systems of the vehicle, in the order of build.md. */
export function makeSystemsPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('systems'))
  const cost = !atlas.withheld.has('cost')
  const mass = massBySystem(scope)
  return simplePage(scope, {
    title: 'Systems',
    section: 'systems',
    rows: [
      textRow(words('lede', 'The vehicle by its systems: parts, circuits, checks and cost of each.')),
      wideRow(
        table({
          caption: 'Systems',
          columns: [
            column('System', 'wide'),
            column('Parts on', 'num'),
            column('Circuits', 'num'),
            column('Checks'),
            ...(cost ? [column('Paid', 'num')] : []),
          ],
          rows: atlas.record.systems.map(system => {
            const { parts, circuits, verdicts } = membersOf(scope, system)
            const paid = atlas.record.ledger.bySystem[system.id]
            return row([
              wordsCell([scope.thing({ kind: 'system', id: system.id })]),
              wordsCell(String(parts.filter(part => part.onVehicle).length)),
              wordsCell(String(circuits.length)),
              { kind: 'marks', marks: tally(verdicts), otherwise: '' },
              ...(cost ? [wordsCell(paid === undefined ? '' : money(paid, atlas.record.ledger.currency))] : []),
            ])
          }),
        }),
      ),
      ...(mass.length === 0 ? [] : [wideRow(heading('Which system weighs most?', 'mass'), ...mass)]),
    ],
  })
}

/** One system: its parts, its circuits, what was asked of them. */
export function makeSystemPage(atlas: Atlas, system: Thing): Page {
  const scope = pageScope(atlas, subjectAddress({ kind: 'system', id: system.id }))
  const { parts, circuits, verdicts } = membersOf(scope, system)
  const paid = atlas.withheld.has('cost') ? undefined : atlas.record.ledger.bySystem[system.id]
  return simplePage(scope, {
    title: system.name,
    section: 'systems',
    gutter: [
      { term: 'Parts on', words: [plain(String(parts.filter(part => part.onVehicle).length))] },
      { term: 'Circuits', words: [plain(String(circuits.length))] },
      ...(paid === undefined ? [] : [{ term: 'Paid', words: [plain(money(paid, atlas.record.ledger.currency))] }]),
    ],
    rows: [
      parts.length === 0 ? textRow(words('lede', 'No part is written down for it.')) : wideRow(),
      ...partSections(scope, parts),
      circuits.length === 0 ? wideRow() : wideRow(heading('Circuits', 'circuits'), circuitTable(scope, circuits)),
      verdicts.length === 0
        ? wideRow()
        : wideRow(heading('Checks', 'checks'), verdictTable(scope, verdicts, 'Checks of the system')),
    ],
  })
}

function circuitTable(scope: PageScope, circuits: readonly Thing[]) {
  return table({
    caption: 'Circuits of the system',
    columns: [column('Circuit', 'wide'), column('State'), column('Feeds', 'wide')],
    rows: circuits.map(circuit =>
      row([
        wordsCell([scope.thing({ kind: 'circuit', id: circuit.id })]),
        wordsCell(wordOf(circuit, 'state') ?? 'live'),
        wordsCell(wordOf(circuit, 'feeds') ?? ''),
      ]),
    ),
  })
}

function membersOf(scope: PageScope, system: Thing) {
  const parts = scope.record.parts.filter(part => part.system === system.id)
  const circuits = scope.record.circuits.filter(circuit => wordOf(circuit, 'system') === system.id)
  const ids = new Set([...parts, ...circuits].map(({ id }) => id))
  const verdicts = scope.atlas.verdicts.filter(({ subject }) => ids.has(subject.split('/')[0] ?? ''))
  return { parts, circuits, verdicts }
}
