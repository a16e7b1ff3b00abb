import type { PublishableRecord } from '../../editions/publishable.ts'
import type { Part, PartEvent } from '../../record/record.ts'
import { noteUrl } from '../addresses.ts'
import { showsCost } from '../shows-cost.ts'
import { type ExportTable, exportTable, type Field, field } from './export-table.ts'
import { placeFields, sessionFields } from './place-fields.ts'
import { standingOf, standingText } from './standing-text.ts'

/** Every part that a note names: what is on the vehicle and what came and went. */
export function partsTable(record: PublishableRecord): ExportTable {
  return exportTable('parts', record.parts, [
    field('id', 'text', part => part.id),
    field('name', 'text', part => part.name),
    field('kind', 'text', part => part.partKind),
    field('system', 'text', part => part.system),
    field('state', 'text', part => part.state),
    field('on vehicle', 'flag', part => part.onVehicle),
    field('qty', 'number', part => Number(part.qty)),
    field('from', 'text', part => part.from?.value.text ?? null),
    field('donor', 'text', part => part.donor),
    ...sessionFields<Part>(record, part => lastFitting(part)?.session, 'fitted '),
    field('number', 'text', part => standingText(part.properties, 'number')),
    field('mass as written', 'text', part => standingText(part.properties, 'mass')),
    field('mass of one kg', 'number', massOf),
    ...(showsCost(record) ? costFields : []),
    field('replaces', 'text', part => part.replaces),
    field('replaced by', 'text', part => part.replacedBy),
    field('photos', 'text', part => standingText(part.properties, 'photos')),
    ...placeFields<Part>(part => part.first),
  ])
}

const costFields: readonly Field<Part>[] = [
  field('cost of one', 'money', part => part.cost?.value.amount ?? null),
  field('currency', 'text', part => part.cost?.value.currency ?? null),
  field('value fitted', 'money', part => (part.onVehicle ? part.value : null)),
]

/** The event that put it where it is; null while it is not on the vehicle. */
function lastFitting(part: Part): PartEvent | null {
  return part.onVehicle ? (part.events.findLast(({ action }) => action === 'fitted') ?? null) : null
}

function massOf({ properties }: Part): number | null {
  const held = standingOf(properties, 'mass')
  return held?.value.type === 'quantity' && held.value.quantity.dimension === 'mass' ? held.value.quantity.si : null
}

interface PartStep {
  readonly part: Part
  readonly event: PartEvent
  readonly acts: boolean
}

/** All that happened to each part, in the order of the notes. */
export function partHistoryTable(record: PublishableRecord): ExportTable {
  const order = new Map([null, ...record.sessions.map(({ id }) => id)].map((id, at) => [id, at]))
  const steps = record.parts.flatMap(part =>
    [
      ...part.events.map((event): PartStep => ({ part, event, acts: true })),
      ...part.mentions.map((event): PartStep => ({ part, event, acts: false })),
    ].sort((one, other) => (order.get(one.event.session) ?? 0) - (order.get(other.event.session) ?? 0)),
  )
  return exportTable('part-history', steps, [
    field('part', 'text', ({ part }) => part.id),
    ...sessionFields<PartStep>(record, ({ event }) => event.session),
    field('action', 'text', ({ event, acts }) => (acts ? event.action : null)),
    field('fits', 'text', ({ event }) => event.fits),
    field('qty', 'number', ({ event }) => Number(event.qty)),
    field('from', 'text', ({ event }) => event.from?.value.text ?? null),
    field('why', 'text', ({ event }) => event.why?.value.text ?? null),
    ...(showsCost(record)
      ? [
          field<PartStep>('cost of one', 'money', ({ event }) => event.cost?.value.amount ?? null),
          field<PartStep>('currency', 'text', ({ event }) => event.cost?.value.currency ?? null),
        ]
      : []),
    ...placeFields<PartStep>(({ event }) => event.place),
    field('page', 'text', ({ event }) => noteUrl(event.session)),
  ])
}
