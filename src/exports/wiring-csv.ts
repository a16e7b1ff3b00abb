import type { AsBuiltRecord } from '../record/record.ts'
import type { Circuit } from '../wiring/circuit.ts'
import { allowanceWords, type Cut } from '../wiring/cut-list.ts'
import type { Pair, PairRow, PinWire } from '../wiring/pair-connectors.ts'
import { readWiring } from '../wiring/wiring.ts'
import { tableCsv } from './csv.ts'
import type { PublishedFile } from './publish-folder.ts'
import { type ExportTable, exportTable, type Field, field } from './tables/export-table.ts'

/** The wiring as three sheets for a bench: the schedule, the cut list, the connectors way against way. */
export function wiringCsv(record: AsBuiltRecord): PublishedFile[] {
  const { circuits, pairs, looms, loose } = readWiring(record)
  const cuts = [
    ...looms.flatMap(loom => loom.cuts.map(cut => ({ cut, loom: loom.name }))),
    ...loose.map(cut => ({ cut, loom: '' })),
  ]
  const rows = pairs.flatMap(pair => pair.rows.map(row => ({ pair, row })))
  return [scheduleTable(circuits), cutTable(cuts), connectorTable(rows)].map(table => ({
    path: `wiring/${table.name}.csv`,
    content: tableCsv(table),
  }))
}

const text = <R>(name: string, of: (row: R) => string | null | undefined): Field<R> =>
  field(name, 'text', row => of(row) ?? null)

function scheduleTable(circuits: readonly Circuit[]): ExportTable {
  return exportTable('schedule', circuits, [
    text('wire', ({ number }) => number),
    text('circuit', ({ id }) => id),
    text('feeds', ({ feeds }) => feeds),
    text('state', ({ state }) => state),
    text('use', ({ use }) => use),
    text('duty', ({ duty }) => duty),
    text('supply', ({ supply }) => supply),
    text('load', ({ load }) => load?.value.text),
    text('fuse box', ({ fuse }) => fuse?.box),
    text('way', ({ fuse }) => fuse?.way),
    text('fuse', ({ fuse }) => fuse?.rating?.value.text),
    text('through', ({ through }) => through.map(({ name }) => name).join('; ')),
    text('size', ({ feed }) => feed.area?.value.text),
    text('colour', ({ feed }) => feed.look.written),
    text('colour code', ({ feed }) => feed.look.code),
    text('length', ({ feed }) => feed.length?.value.text),
    text('return', circuit => circuit.return),
    text('return size', ({ back }) => back?.area?.value.text),
    text('return colour', ({ back }) => back?.look.written),
    text('earth', ({ earth }) => earth?.name),
    text('loom', ({ loom }) => loom),
    text('route', ({ route }) => route.join('; ')),
    text('zone', ({ zone }) => zone),
    text('remarks', ({ doubts }) => doubts.join(' ')),
  ])
}

function cutTable(cuts: readonly { cut: Cut; loom: string }[]): ExportTable {
  return exportTable('cut-list', cuts, [
    text('loom', ({ loom }) => loom),
    text('wire', ({ cut }) => cut.wire.number),
    text('circuit', ({ cut }) => cut.circuit.id),
    text('state', ({ cut }) => cut.circuit.state),
    text('size', ({ cut }) => cut.wire.area?.value.text),
    text('colour', ({ cut }) => cut.wire.look.written),
    text('colour code', ({ cut }) => cut.wire.look.code),
    field('length m', 'number', ({ cut }) => cut.writtenM),
    field('cut to m', 'number', ({ cut }) => cut.cutM),
    text('from', ({ cut }) => cut.wire.from),
    text('to', ({ cut }) => cut.wire.to),
    text('cut at', ({ cut }) => cut.wire.cutAt.join('; ')),
    text('allowance', () => allowanceWords),
  ])
}

interface MatedRow {
  readonly pair: Pair
  readonly row: PairRow
}

function connectorTable(rows: readonly MatedRow[]): ExportTable {
  return exportTable('connectors', rows, [
    ...sideFields('', ({ pair }) => pair.left.name, { way: row => row.leftWay, pin: row => row.left }),
    text('meets', ({ row }) => row.state),
    ...sideFields('other ', ({ pair }) => pair.right?.name, { way: row => row.rightWay, pin: row => row.right }),
    text('remarks', ({ row }) => row.doubt),
  ])
}

interface Side {
  readonly way: (row: PairRow) => string | null
  readonly pin: (row: PairRow) => PinWire | null
}

function sideFields(
  lead: string,
  name: (row: MatedRow) => string | null | undefined,
  { way, pin }: Side,
): Field<MatedRow>[] {
  return [
    text(`${lead}connector`, name),
    text(`${lead}way`, ({ row }) => way(row)),
    text(`${lead}wire`, ({ row }) => pin(row)?.number),
    text(`${lead}size`, ({ row }) => pin(row)?.area?.value.text),
    text(`${lead}colour`, ({ row }) => pin(row)?.look.written),
    text(`${lead}carries`, ({ row }) => pin(row)?.carries),
    text(`${lead}to`, ({ row }) => pin(row)?.to),
    text(`${lead}circuit`, ({ row }) => pin(row)?.circuit),
  ]
}
