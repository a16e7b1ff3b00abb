import type { PlacedFact } from './fold-properties.ts'
import { compareText } from './order-sessions.ts'
import type { PropertyStore } from './property-store.ts'
import type { Measurement } from './record.ts'
import { pathText } from './resolve-name.ts'

/** Every observation of a figure, by path, then as the notes follow each other. */
export function listMeasurements(placed: readonly PlacedFact[], store: PropertyStore): Measurement[] {
  return placed
    .flatMap(entry => measurementOf(entry, store) ?? [])
    .map((measurement, at) => ({ measurement, at }))
    .sort((one, other) => compareText(one.measurement.path, other.measurement.path) || one.at - other.at)
    .map(({ measurement }) => measurement)
}

function measurementOf({ fact, subject, held }: PlacedFact, store: PropertyStore): Measurement | null {
  if (!fact.observed || fact.value.type !== 'quantity') return null
  const history = store.history(subject, fact.key)
  return {
    path: pathText(subject, fact.key),
    subject,
    property: fact.key,
    quantity: fact.value.quantity,
    with: fact.with?.text ?? null,
    note: fact.note?.text ?? null,
    withWords: fact.with,
    noteWords: fact.note,
    session: fact.session,
    place: fact.place,
    figure: fact.figure,
    superseded: history.slice(history.indexOf(held) + 1).some(({ session }) => session !== fact.session),
  }
}
