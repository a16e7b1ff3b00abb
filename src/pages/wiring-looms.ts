import { bundleAssumption } from '../wiring/bundle-diameter.ts'
import { drawGraph } from '../wiring/draw-graph.ts'
import { loomGraph } from '../wiring/loom-graph.ts'
import type { Loom } from '../wiring/looms.ts'
import { anchorName } from './addresses.ts'
import type { Inline } from './cells.ts'
import { figure, plain } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { heading, words } from './tables.ts'
import { thingTable } from './thing-table.ts'
import { cutTable } from './wiring-cuts.ts'
import { layingTable } from './wiring-laying.ts'
import { drawingLinks, wiringPart } from './wiring-of.ts'

/** A loom in the appendix: how thick, how it branches, its wires. */
export function loomPart(scope: PageScope, loom: Loom): PartOfPage[] {
  return [
    heading(loom.name, anchorName('l', loom.id)),
    words('note', loomWords(loom)),
    ...branchesPart(scope, loom),
    ...(loom.cuts.length === 0
      ? []
      : [cutTable(scope, { caption: `${loom.name}, cut list`, cuts: loom.cuts, isBench: false }), layingTable(loom)]),
    ...thingTable(scope, loom.thing, { caption: 'Of the loom itself', isCaptionShown: true, not: ['name'] }),
  ]
}

/** The branches of a loom as a drawing. */
export function branchesPart(scope: PageScope, loom: Loom): PartOfPage[] {
  if (loom.cuts.length === 0) return []
  const placed = scope.atlas.extras.wiring?.looms.get(loom.id)
  const drawing = drawGraph(placed?.graph ?? loomGraph(loom), placed?.placing ?? null, drawingLinks(scope))
  return [
    wiringPart(
      drawing,
      'Stops as the notes name them, not to scale. A length stands where circuits of known length end at both ends of it.',
    ),
  ]
}

/** How many wires, how thick, and against what sleeve. */
export function loomWords({ cuts, bundleMm, notInBundle, sleeve, measured }: Loom): Inline[] {
  if (cuts.length === 0) return [plain('No circuit is written down as running in it.')]
  const left =
    notInBundle === 0 ? '' : `, ${notInBundle} ${notInBundle === 1 ? 'wire' : 'wires'} of unknown size left out`
  const thick =
    bundleMm === null
      ? []
      : [
          plain(', worked out at '),
          ...figure(`${bundleMm.toFixed(1)} mm`),
          plain(` over all (${bundleAssumption}${left})`),
        ]
  const sleeved = sleeve === null ? [] : [plain('; sleeve '), ...figure(sleeve.value.text)]
  const found = measured === null ? [] : [plain('; measured at its fattest '), ...figure(measured.value.text)]
  const differs = measured !== null && bundleMm !== null && (measured.value.si ?? 0) * 1000 > bundleMm * 1.3 // ours: tape and sleeve add less than that
  const more = differs ? ' More is in it than the circuits that name this loom.' : ''
  return [
    plain(`${cuts.length} ${cuts.length === 1 ? 'wire' : 'wires'}`),
    ...thick,
    ...sleeved,
    ...found,
    plain(`.${more}`),
  ]
}
