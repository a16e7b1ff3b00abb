import type { Measurement } from '../record/record.ts'
import { anchorName } from './addresses.ts'
import type { Inline } from './cells.ts'
import { plain } from './inline.ts'
import type { PageScope } from './page-scope.ts'
import { propertyWords } from './thing-table.ts'

/** A way to put the measurements in order: under what heading each stands. */
export interface MeasurementOrder {
  /** Of its page: null for the index itself. */
  readonly folder: string | null
  readonly title: string
  readonly keyOf: (measurement: Measurement) => string
  readonly headingOf: (scope: PageScope, measurement: Measurement) => readonly Inline[]
  readonly sortKey: (scope: PageScope, measurement: Measurement) => string
}

const thingKey = ({ subject }: Measurement): string =>
  anchorName('t', subject.kind === 'part' || subject.kind === 'vehicle' ? subject.id : `${subject.kind}:${subject.id}`)

const sessionNumber = (scope: PageScope, session: string | null): number =>
  session === null ? 0 : (scope.atlas.sessions.get(session)?.number ?? 0)

/** By thing, by property, by dimension, by the session in which it was measured last. */
export const measurementOrders: readonly MeasurementOrder[] = [
  {
    folder: null,
    title: 'by thing',
    keyOf: thingKey,
    headingOf: (scope, { subject }) => [scope.thing(subject)],
    sortKey: (_, { subject }) => (subject.kind === 'vehicle' ? '0' : '1'),
  },
  {
    folder: 'by-property',
    title: 'by property',
    keyOf: ({ property }) => anchorName('p', property),
    headingOf: (_, { property }) => [plain(propertyWords(property))],
    sortKey: (_, { property }) => property,
  },
  {
    folder: 'by-dimension',
    title: 'by dimension',
    keyOf: ({ quantity }) => anchorName('d', quantity.dimension),
    headingOf: (_, { quantity }) => [plain(quantity.dimension.replaceAll('-', ' '))],
    sortKey: (_, { quantity }) => quantity.dimension,
  },
  {
    folder: 'by-session',
    title: 'by session',
    keyOf: ({ session }) => anchorName('s', session ?? 'build'),
    headingOf: (scope, { session }) => [
      plain(
        session === null
          ? 'build note'
          : `${sessionNumber(scope, session)}, ${scope.atlas.sessions.get(session)?.title.text ?? ''}`,
      ),
    ],
    sortKey: (scope, { session }) => String(sessionNumber(scope, session)).padStart(6, '0'),
  },
]
