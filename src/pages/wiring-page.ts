import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { Inline } from './cells.ts'
import { plain } from './inline.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { words } from './tables.ts'
import { earthsPart, fuseBoxPart, supplyPart } from './wiring-boxes.ts'
import { connectorsPart } from './wiring-connectors.ts'
import { vehicleRules } from './wiring-laying.ts'
import { loomPart } from './wiring-looms.ts'
import { wiringOf } from './wiring-of.ts'
import { coloursPart, numbersPart, schedulePart } from './wiring-schedule.ts'
import { terminalsPart } from './wiring-terminals.ts'

/** The wiring appendix: supply, schedule, fuse boxes way by way, connectors pin by pin, looms, earth points, indexes. */
export function makeWiringPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('wiring'))
  const { circuits, connectors, looms, earthPoints } = atlas.record
  const wiring = wiringOf(atlas)
  const count = (term: string, all: readonly unknown[]) => ({ term, words: [plain(String(all.length))] })
  return simplePage(scope, {
    title: 'Wiring',
    section: 'wiring',
    look: 'wiring',
    gutter: [
      count('Circuits', circuits),
      count('Connectors', connectors),
      count('Looms', looms),
      count('Earth points', earthPoints),
    ],
    rows: [
      textRow(words('lede', 'Every wire as it was written down, so that someone who was not there can follow it.')),
      textRow(
        words(
          'caution',
          'Disconnect the battery before touching any of this. A short in an unfused wire starts a fire; where you are unsure, an auto-electrician decides.',
        ),
        words('note', sheetWords(scope)),
      ),
      wideRow(...supplyPart(scope)),
      wideRow(...schedulePart(scope)),
      ...wiring.fuseBoxes.map(box => wideRow(...fuseBoxPart(scope, box))),
      ...connectorsPart(scope).map(parts => wideRow(...parts)),
      ...wiring.looms.map(loom => wideRow(...loomPart(scope, loom))),
      wideRow(...earthsPart(scope)),
      textRow(...(circuits.length === 0 ? [] : vehicleRules())),
      wideRow(...coloursPart(scope)),
      wideRow(...numbersPart(scope)),
      wideRow(...terminalsPart(scope)),
    ],
  })
}

/** Ways to the sheets that are made for paper. */
function sheetWords(scope: PageScope): Inline[] {
  const { looms, loose, fuseBoxes } = wiringOf(scope)
  const hasCuts = loose.length > 0 || looms.some(({ cuts }) => cuts.length > 0)
  return [
    plain('For paper: '),
    ...(hasCuts ? [scope.link('the cut list for the bench', pageAddress('wiring', 'cut-list')), plain(', ')] : []),
    ...(fuseBoxes.length > 0
      ? [scope.link('cards for the lids', pageAddress('wiring', 'lid-cards')), plain(', ')]
      : []),
    plain('or this page as it is.'),
  ]
}
