import { drawLidCard } from '../wiring/draw-lid-card.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { plain } from './inline.ts'
import type { PageRow } from './page-row.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { heading, words } from './tables.ts'
import { cutTable } from './wiring-cuts.ts'
import { drumTable, terminalTable } from './wiring-drums.ts'
import { layingTable } from './wiring-laying.ts'
import { branchesPart, loomWords } from './wiring-looms.ts'
import { wiringOf, wiringPart } from './wiring-of.ts'
import { tailsRow } from './wiring-tails.ts'

const caution =
  'Disconnect the battery first. Use the crimping tool that the terminal’s maker names, and pull every crimp before it goes in. Local rules and licensed practice decide.'

const notTold =
  'What these sheets cannot tell, since no note does: the terminal where it says “terminal not written”, how far apart branches lie where no length stands, and how far along its run a wire is cut for a relay or switch. Look at the vehicle, measure, and write them down.'

/** The sheets that leave the house: the cut list for the bench, the cards for the lids. */
export function makeWiringSheets(atlas: Atlas): Page[] {
  const { looms, loose, fuseBoxes } = wiringOf(atlas)
  const hasCuts = loose.length > 0 || looms.some(({ cuts }) => cuts.length > 0)
  return [...(hasCuts ? [cutListPage(atlas)] : []), ...(fuseBoxes.length > 0 ? [lidCardsPage(atlas)] : [])]
}

function cutListPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('wiring', 'cut-list'))
  const { looms, loose } = wiringOf(atlas)
  return simplePage(scope, {
    title: 'Cut list',
    section: 'wiring',
    look: 'bench',
    wide: true,
    rows: [
      textRow(
        words('lede', [
          plain('A sheet a loom, to take to the bench. '),
          scope.link('Back to the wiring', pageAddress('wiring')),
        ]),
        words('caution', caution),
        words('note', notTold),
      ),
      ...looms
        .filter(({ cuts }) => cuts.length > 0)
        .map(loom =>
          wideRow(
            heading(loom.name, anchorName('l', loom.id)),
            words('note', loomWords(loom)),
            cutTable(scope, { caption: 'Wires', cuts: loom.cuts, isBench: true }),
            drumTable(loom.cuts),
            terminalTable(scope, loom.cuts),
            layingTable(loom),
            ...branchesPart(scope, loom),
          ),
        ),
      ...looseRow(scope, loose),
      ...tailsRow(scope),
    ],
  })
}

function looseRow(scope: PageScope, cuts: Parameters<typeof drumTable>[0]): PageRow[] {
  if (cuts.length === 0) return []
  return [
    wideRow(
      heading('In no loom', 'loose'),
      cutTable(scope, { caption: 'Wires', cuts, isBench: true }),
      drumTable(cuts),
      terminalTable(scope, cuts),
    ),
  ]
}

function lidCardsPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('wiring', 'lid-cards'))
  return simplePage(scope, {
    title: 'Cards for the lids',
    section: 'wiring',
    rows: [
      textRow(
        words('lede', [
          plain('To be cut out and put inside the lids: way, rating in amperes, what it feeds. '),
          scope.link('Back to the wiring', pageAddress('wiring')),
        ]),
      ),
      ...wiringOf(atlas).fuseBoxes.map(box =>
        wideRow(heading(box.name, anchorName('f', box.id)), wiringPart(drawLidCard(box))),
      ),
    ],
  })
}
