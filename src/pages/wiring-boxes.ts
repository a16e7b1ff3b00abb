import { drawFuseBox } from '../wiring/draw-fuse-box.ts'
import { drawGraph } from '../wiring/draw-graph.ts'
import { fuseColour } from '../wiring/fuse-colours.ts'
import type { FuseBoxSheet, FuseWay } from '../wiring/fuse-ways.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { TableRow } from './blocks.ts'
import { figure, listed, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, standing } from './page-scope.ts'
import { column, heading, row, table, words } from './tables.ts'
import { heldCell, standingCell } from './thing-table.ts'
import { conductorCell } from './wire-cell.ts'
import { drawingLinks, wiringOf, wiringPart } from './wiring-of.ts'
import { circuitLink } from './wiring-schedule.ts'

/** The supply as one drawing. */
export function supplyPart(scope: PageScope): PartOfPage[] {
  const placed = scope.atlas.extras.wiring?.supply ?? null
  if (placed === null) return []
  return [
    heading('The supply', 'supply'),
    wiringPart(
      drawGraph(placed.graph, placed.placing, drawingLinks(scope)),
      'Battery, generator, the feeds and their fuses, what hangs on the battery itself, and the earths. Dashed: by the chassis. Not to scale.',
    ),
  ]
}

/** A fuse box drawn way by way, and the same as a table. */
export function fuseBoxPart(scope: PageScope, box: FuseBoxSheet): PartOfPage[] {
  const spare =
    box.spare === 0 ? 'No way is spare. ' : `${box.spare} ${box.spare === 1 ? 'way is' : 'ways are'} spare. `
  const unplaced =
    box.unplaced.length === 0
      ? []
      : [
          plain('No way is written for '),
          ...listed(box.unplaced.map(circuit => [circuitLink(scope, circuit)])),
          plain('. '),
        ]
  return [
    heading(box.name, anchorName('f', box.id)),
    words('note', [
      plain(spare),
      ...unplaced,
      plain('The box itself: '),
      scope.thing({ kind: 'part', id: box.id }),
      plain('. '),
      scope.link('A card for its lid', `${pageAddress('wiring', 'lid-cards')}#${anchorName('f', box.id)}`),
      plain('.'),
    ]),
    wiringPart(drawFuseBox(box, drawingLinks(scope))),
    table({
      caption: `${box.name}, way by way`,
      columns: [
        column('Way', 'narrow'),
        column('Circuit', 'wide'),
        column('Fuse', 'figure'),
        column('Its colour'),
        column('Load', 'figure'),
        column('Cable'),
        column('State'),
      ],
      rows: box.ways.flatMap(way => wayRows(scope, way)),
      note: 'Colours of blade fuses by DIN 72581-3 and ISO 8820-3, as public lists print them; a fuse up to 40 A of which no type is written is taken for one. Go by the number on the fuse.',
      isCaptionShown: true,
    }),
  ]
}

function wayRows(scope: PageScope, way: FuseWay): TableRow[] {
  if (way.circuits.length === 0)
    return [
      row([wordsCell(way.way), wordsCell('spare'), ...Array.from({ length: 5 }, () => wordsCell(''))], null, 'gone'),
    ]
  return way.circuits.map(circuit =>
    row([
      wordsCell(way.way),
      wordsCell([circuitLink(scope, circuit)]),
      heldCell(scope, circuit.fuse?.rating ?? null),
      wordsCell(circuit.fuse?.rating == null ? '' : (fuseColour(circuit.fuse.rating.value, circuit.fuse.type) ?? '')),
      heldCell(scope, circuit.load),
      conductorCell(circuit.feed),
      wordsCell(way.state === 'used' ? '' : way.state === 'shared' ? 'shared way' : way.state),
    ]),
  )
}

/** Earth points, and what ends at each. */
export function earthsPart(scope: PageScope): PartOfPage[] {
  const { earthPoints } = scope.record
  if (earthPoints.length === 0) return []
  const { circuits } = wiringOf(scope)
  const rows = earthPoints.map(point => {
    const here = circuits.filter(({ earth, state }) => earth?.id === point.id && state !== 'removed')
    const ends = here.map(circuit => [
      circuitLink(scope, circuit),
      ...(circuit.back === null
        ? []
        : [
            plain(` (${circuit.back.number}, `),
            ...figure(circuit.back.area?.value.text ?? ''),
            plain(` ${circuit.back.look.written})`),
          ]),
    ])
    return row(
      [
        wordsCell(point.name),
        standingCell(scope, standing(point.properties, 'count')),
        wordsCell(String(here.length)),
        standingCell(scope, standing(point.properties, 'resistance')),
        wordsCell(listed(ends)),
      ],
      anchorName('e', point.id),
    )
  })
  return [
    heading('Earth points', 'earths'),
    table({
      caption: 'Earth points',
      columns: [
        column('Point'),
        column('Room for', 'figure'),
        column('Ends there', 'num'),
        column('Resistance', 'figure'),
        column('Circuits', 'wide'),
      ],
      rows,
    }),
  ]
}
