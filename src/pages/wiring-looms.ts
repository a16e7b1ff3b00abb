import { bundleAssumption } from '../wiring/bundle-diameter.ts'
import { allowanceWords, type Cut, type Drum, sumDrums } from '../wiring/cut-list.ts'
import { drawGraph } from '../wiring/draw-graph.ts'
import { loomGraph } from '../wiring/loom-graph.ts'
import type { Loom } from '../wiring/looms.ts'
import { capital } from '../wiring/standing.ts'
import { wireLook } from '../wiring/wire-look.ts'
import { metres } from '../wiring/wire-words.ts'
import { anchorName } from './addresses.ts'
import type { TableRow } from './blocks.ts'
import type { Inline } from './cells.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, heading, row, table, words } from './tables.ts'
import { thingTable } from './thing-table.ts'
import { conductorCell, wireWith } from './wire-cell.ts'
import { drawingLinks, wiringOf, wiringPart } from './wiring-of.ts'
import { circuitLink } from './wiring-schedule.ts'

/** A loom in the appendix: how thick, how it branches, its wires. */
export function loomPart(scope: PageScope, loom: Loom): PartOfPage[] {
  return [
    heading(loom.name, anchorName('l', loom.id)),
    words('note', loomWords(loom)),
    ...branchesPart(scope, loom),
    ...(loom.cuts.length === 0
      ? []
      : [cutTable(scope, { caption: `${loom.name}, cut list`, cuts: loom.cuts, isBench: false })]),
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

interface CutTable {
  readonly caption: string
  readonly cuts: readonly Cut[]
  /** On the sheet for the bench each wire has a box to tick. */
  readonly isBench: boolean
}

/** The wires to be cut, thinnest first, one drum's wires together. */
export function cutTable(scope: PageScope, { caption, cuts, isBench }: CutTable): PartOfPage {
  const tick = isBench ? ['Cut', 'Crimped, from', 'Crimped, to'].map(label => column(label, 'narrow')) : []
  return table({
    caption,
    columns: [
      column('Wire', 'narrow'),
      column('Cable'),
      column('Written', 'num'),
      column('Cut to', 'num'),
      column('From'),
      column('To'),
      column('By way of', 'wide'),
      ...tick,
    ],
    rows: cuts.map(cut => cutRow(scope, cut, isBench)),
    note: `Cut to: ${allowanceWords}.`,
    isCaptionShown: true,
  })
}

function cutRow(scope: PageScope, cut: Cut, isBench: boolean): TableRow {
  const { wire, circuit, writtenM, cutM } = cut
  const joins = joinsOf(scope, cut)
  return row([
    wordsCell(
      [look('strong', wire.number)],
      [circuitLink(scope, circuit), ...(circuit.state === 'live' ? [] : [plain(`, ${circuit.state}`)])],
    ),
    conductorCell(wire),
    wordsCell(writtenM === null ? '' : figure(wire.length?.value.text ?? '')),
    wordsCell(cutM === null ? [look('muted', 'measure first')] : figure(metres(cutM))),
    wordsCell(capital(wire.from)),
    wordsCell(capital(wire.to)),
    wordsCell(capital(stopsBetween(cut)), joins === '' ? [] : [plain(joins)]),
    ...(isBench ? Array.from({ length: 3 }, () => ({ kind: 'tick' as const })) : []),
  ])
}

/** The stops of a run without its ends. */
function stopsBetween({ wire, circuit }: Cut): string {
  if (wire !== circuit.feed) return ''
  const start = wire.from.replace(/, way .*$/, '')
  const inner = circuit.route.filter((stop, index) => stop !== start && index < circuit.route.length - 1)
  return inner.filter(stop => !wire.cutAt.includes(stop)).join(' – ')
}

/** Where a run is cut on its way, and the ways of connectors that its circuit meets. */
function joinsOf(scope: PageScope, { wire, circuit }: Cut): string {
  if (wire !== circuit.feed) return ''
  const halves = wiringOf(scope).pairs.flatMap(({ left, right }) => (right === null ? [left] : [left, right]))
  const ways = halves.flatMap(({ name, pins }) =>
    pins.flatMap(pin => (pin.circuit === circuit.id ? [`${name}, way ${pin.pin} (${pin.number})`] : [])),
  )
  const cuts = wire.cutAt.length === 0 ? [] : [`Cut and made off at ${wire.cutAt.join(', ')}.`]
  return [...cuts, ...(ways.length === 0 ? [] : [`Also at ${ways.join('; ')}.`])].join(' ')
}

/** How much of each cable the list takes. */
export function drumTable(cuts: readonly Cut[]): PartOfPage {
  return table({
    caption: 'Cable that this takes',
    columns: [column('Cable'), column('Wires', 'num'), column('Length in all', 'num'), column('Besides', 'wide')],
    rows: sumDrums(cuts).map(drumRow),
    isCaptionShown: true,
  })
}

function drumRow({ size, colour, count, totalM, unmeasured }: Drum): TableRow {
  return row([
    { kind: 'wires', wires: [wireWith(size === '' ? 'size not written' : size, wireLook(colour))] },
    wordsCell(String(count)),
    wordsCell(figure(metres(totalM))),
    wordsCell(unmeasured === 0 ? '' : `${unmeasured} of them not measured yet, not in this length`),
  ])
}
