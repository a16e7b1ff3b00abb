import type { Connector } from '../record/record.ts'
import type { Atlas } from './atlas.ts'
import { look, plain } from './inline.ts'
import { pageScope } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { subjectChecks } from './subject-checks.ts'
import { heading, words } from './tables.ts'
import { subjectAddress } from './thing-addresses.ts'
import { thingTable } from './thing-table.ts'
import { connectorPair, pairParts } from './wiring-connectors.ts'

/** A connector pin by pin, beside the half that it plugs into. */
export function makeConnectorPage(atlas: Atlas, connector: Connector): Page {
  const scope = pageScope(atlas, subjectAddress({ kind: 'connector', id: connector.id }))
  const mate = atlas.record.connectors.find(other => other.id === connector.mates) ?? null
  const pair = connectorPair(scope, connector.id)
  const lede = connector.mates === null ? 'Plugs into nothing that the notes name.' : null
  return simplePage(scope, {
    title: connector.name,
    longTitle: `${connector.name}, connector`,
    section: 'wiring',
    look: 'wiring',
    gutter: [
      { term: 'Connector', words: [look('path', connector.id)] },
      { term: 'Number', words: [plain(pair?.left.number ?? '')] },
      { term: 'Ways used', words: [plain(String(connector.pins.length))] },
      ...(connector.mates === null
        ? []
        : [{ term: 'Mates', words: [scope.thing({ kind: 'connector', id: connector.mates })] }]),
    ],
    rows: [
      textRow(
        words(
          'lede',
          lede ?? [
            plain('Plugs into '),
            scope.thing({ kind: 'connector', id: connector.mates ?? '' }),
            plain(': each way beside the one that it meets.'),
          ],
        ),
      ),
      wideRow(heading('Way by way', 'pins'), ...(pair === null ? [] : pairParts(scope, pair))),
      wideRow(
        ...thingTable(scope, connector, {
          caption: 'Of the connector itself',
          isCaptionShown: true,
          not: ['name', 'mates'],
        }),
      ),
      wideRow(...subjectChecks(scope, mate === null ? [connector.id] : [connector.id, mate.id])),
    ],
  })
}
