import type { PublishableRecord } from '../../editions/publishable.ts'
import type { Connector, Pin, Thing, Volume } from '../../record/record.ts'
import { type ExportTable, exportTable, type Field, field } from './export-table.ts'
import { placeFields, sessionFields } from './place-fields.ts'
import { standingText } from './standing-text.ts'

/** Circuits, pins, fuse boxes, looms, earth points and volumes, as written; a column for each property that one of them has. */
export function wiringTables(record: PublishableRecord): ExportTable[] {
  return [
    thingsTable('circuits', record.circuits, [
      field('state', 'text', circuit => standingText(circuit.properties, 'state') ?? 'live'),
    ]),
    pinsTable(record),
    fuseWaysTable(record),
    thingsTable('looms', record.looms),
    thingsTable('earth-points', record.earthPoints),
    volumesTable(record),
  ]
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
}

function pinsTable(record: PublishableRecord): ExportTable {
  const pins = record.connectors.flatMap(connector => connector.pins.map((pin): PlacedPin => ({ ...pin, connector })))
  return exportTable('pins', pins, [
    field('connector', 'text', ({ connector }) => connector.id),
    field('mates', 'text', ({ connector }) => connector.mates),
    field('pin', 'text', ({ pin }) => pin),
    ...propertyFields<PlacedPin>(pins, []),
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
