import type { PublishableRecord } from '../../editions/publishable.ts'
import type { Connector, Pin, Thing, Volume } from '../../record/record.ts'
import { allowanceWords } from '../../wiring/cut-list.ts'
import type { PairRow, PinWire } from '../../wiring/pair-connectors.ts'
import { readWiring, type Wiring } from '../../wiring/wiring.ts'
import { type ExportTable, exportTable, type Field, field } from './export-table.ts'
import { placeFields, sessionFields } from './place-fields.ts'
import { standingText } from './standing-text.ts'

/** Circuits, connectors, pins, the cut list, fuse boxes, looms, earth points and volumes; a column for each property that one of them has. */
export function wiringTables(record: PublishableRecord): ExportTable[] {
  const wiring = readWiring(record)
  return [
    circuitsTable(record, wiring),
    thingsTable('connectors', record.connectors),
    pinsTable(record, wiring),
    cutTable(wiring),
    fuseWaysTable(record),
    thingsTable('looms', record.looms),
    thingsTable('earth-points', record.earthPoints),
    volumesTable(record),
  ]
}

/** The schedule: what each circuit says of itself, its wire's number, and what a reader should know before trusting it. */
function circuitsTable(record: PublishableRecord, { circuits }: Wiring): ExportTable {
  const read = new Map(circuits.map(circuit => [circuit.id, circuit]))
  const first: Field<Thing>[] = [
    field('wire', 'text', ({ id }) => read.get(id)?.number ?? null),
    field('state', 'text', circuit => standingText(circuit.properties, 'state') ?? 'live'),
    field('colour code', 'text', ({ id }) => read.get(id)?.feed.look.code ?? null),
    field('remarks', 'text', ({ id }) => read.get(id)?.doubts.join(' ') || null),
  ]
  return thingsTable('circuits', record.circuits, first)
}

/** Every wire to be cut, with what is crimped on its ends. */
function cutTable({ looms, loose }: Wiring): ExportTable {
  const rows = [
    ...looms.flatMap(loom => loom.cuts.map(cut => ({ ...cut, loom: loom.name }))),
    ...loose.map(cut => ({ ...cut, loom: null })),
  ]
  const text = (name: string, of: (row: (typeof rows)[number]) => string | null | undefined) =>
    field<(typeof rows)[number]>(name, 'text', row => of(row) ?? null)
  return exportTable('cut-list', rows, [
    text('loom', ({ loom }) => loom),
    text('wire', ({ wire }) => wire.number),
    text('circuit', ({ circuit }) => circuit.id),
    text('state', ({ circuit }) => circuit.state),
    text('size', ({ wire }) => wire.area?.value.text),
    text('colour', ({ wire }) => wire.look.written),
    text('colour code', ({ wire }) => wire.look.code),
    field('length m', 'number', ({ writtenM }) => writtenM),
    field('cut to m', 'number', ({ cutM }) => cutM),
    text('from', ({ wire }) => wire.from),
    text('terminal from', ({ wire }) => wire.terminals.from),
    text('to', ({ wire }) => wire.to),
    text('terminal to', ({ wire }) => wire.terminals.to),
    text('cut at', ({ wire }) => wire.cutAt.join('; ')),
    text('allowance', () => allowanceWords),
  ])
}

function thingsTable(name: string, things: readonly Thing[], first: readonly Field<Thing>[] = []): ExportTable {
  const taken = ['name', ...first.map(column => column.name)]
  return exportTable(name, things, [
    field('id', 'text', ({ id }) => id),
    field('name', 'text', thing => thing.name),
    ...first,
    ...propertyFields<Thing>(things, taken),
    ...placeFields<Thing>(thing => thing.first),
  ])
}

interface PlacedPin extends Pin {
  readonly connector: Connector
  /** Its number and its terminal, and how it stands against the other half. */
  readonly wire: PinWire | null
  readonly row: PairRow | null
}

function pinsTable(record: PublishableRecord, { pairs }: Wiring): ExportTable {
  const rows = pairs.flatMap(pair => pair.rows)
  const rowAt = (connector: string, way: string): PairRow | null =>
    rows.find(({ left, right }) => [left, right].some(one => one?.connector === connector && one.pin === way)) ?? null
  const pins = record.connectors.flatMap(connector =>
    connector.pins.map((pin): PlacedPin => {
      const row = rowAt(connector.id, pin.pin)
      const wire = row?.left?.connector === connector.id ? row.left : (row?.right ?? null)
      return { ...pin, connector, wire, row }
    }),
  )
  return exportTable('pins', pins, [
    field('wire', 'text', ({ wire }) => wire?.number ?? null),
    field('connector', 'text', ({ connector }) => connector.id),
    field('mates', 'text', ({ connector }) => connector.mates),
    field('pin', 'text', ({ pin }) => pin),
    field('stands', 'text', ({ row }) => row?.state ?? null),
    field('meets way', 'text', ({ row, wire }) => (wire === row?.left ? row?.rightWay : row?.leftWay) ?? null),
    field('terminal', 'text', ({ wire }) => wire?.terminal ?? null),
    field('remarks', 'text', ({ row }) => row?.doubt ?? null),
    ...propertyFields<PlacedPin>(pins, ['terminal']),
    ...sessionFields<PlacedPin>(record, ({ session }) => session),
    ...placeFields<PlacedPin>(({ place }) => place),
  ])
}

/** `fuse.rating` is the column `fuse rating`; columns stand in the order in which the notes first name them. */
function propertyFields<R extends Pick<Thing, 'properties'>>(rows: readonly R[], taken: readonly string[]): Field<R>[] {
  const keys = [...new Set(rows.flatMap(({ properties }) => Object.keys(properties)))].filter(
    key => !key.startsWith('pins.') && !taken.includes(key),
  )
  return keys.map(key => field(key.replaceAll('.', ' '), 'text', ({ properties }) => standingText(properties, key)))
}

function fuseWaysTable(record: PublishableRecord): ExportTable {
  const ways = record.fuseBoxes.flatMap(box => [
    ...box.used.map(({ way, circuits }) => ({ box, way, circuits })),
    ...box.unplaced.map(circuit => ({ box, way: null, circuits: [circuit] })),
  ])
  return exportTable('fuse-ways', ways, [
    field('box', 'text', ({ box }) => box.id),
    field('ways of the box', 'number', ({ box }) => box.ways),
    field('way', 'text', ({ way }) => way),
    field('circuits', 'text', ({ circuits }) => circuits.join('; ')),
  ])
}

function volumesTable(record: PublishableRecord): ExportTable {
  return exportTable('volumes', record.volumes, [
    field('part', 'text', ({ part }) => part),
    field('outside', 'text', ({ outside }) => outside?.value.text ?? null),
    field('wall', 'text', ({ wall }) => wall?.value.text ?? null),
    field('less', 'text', ({ less }: Volume) =>
      less.length === 0 ? null : less.map(({ value }) => value.text).join('; '),
    ),
  ])
}
