import type { Measurement } from '../record/record.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { Table, TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { drawHistory } from './history.ts'
import { figure, listed, look, plain, wordsCell } from './inline.ts'
import { type MeasurementOrder, measurementOrders } from './measurement-orders.ts'
import { inOtherUnits } from './other-units.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, row, table, words } from './tables.ts'
import { checkMarks, propertyWords } from './thing-table.ts'

/** Every named figure in one order: what stands, its sentence, what it was before, what used it. */
export function makeMeasurementsPage(atlas: Atlas, order: MeasurementOrder): Page {
  const scope = pageScope(atlas, addressOf(order))
  const paths = byPath(atlas.record.measurements)
  return simplePage(scope, {
    title: order.folder === null ? 'Measurements' : `Measurements, ${order.title}`,
    section: 'measurements',
    gutter: [
      { term: 'Named figures', words: [plain(String(paths.size))] },
      { term: 'Readings', words: [plain(String(atlas.record.measurements.length))] },
    ],
    rows: [
      textRow(
        words(
          'lede',
          'Each line leads from a figure to the words in which it was written; the number in the balloon is the session.',
        ),
        words('plain', otherOrders(scope, order)),
        { kind: 'key', of: 'lines' },
      ),
      wideRow(measurementTable(scope, paths, order)),
    ],
  })
}

const addressOf = ({ folder }: MeasurementOrder): string =>
  folder === null ? pageAddress('measurements') : pageAddress('measurements', folder)

function otherOrders(scope: PageScope, own: MeasurementOrder): Inline[] {
  const links = measurementOrders.map(order => [
    order === own ? look('strong', order.title) : scope.link(order.title, addressOf(order)),
  ])
  return [plain('In order '), ...listed(links), plain('.')]
}

function byPath(measurements: readonly Measurement[]): Map<string, Measurement[]> {
  const paths = new Map<string, Measurement[]>()
  for (const measurement of measurements)
    paths.set(measurement.path, [...(paths.get(measurement.path) ?? []), measurement])
  return paths
}

function measurementTable(
  scope: PageScope,
  paths: ReadonlyMap<string, readonly Measurement[]>,
  order: MeasurementOrder,
) {
  const groups = new Map<
    string,
    { heading: Table['groups'][number]['heading']; rows: TableRow[]; id: string; at: string }
  >()
  for (const readings of paths.values()) {
    const last = readings.at(-1)
    if (last === undefined) continue
    const id = order.keyOf(last)
    const group = groups.get(id) ?? {
      id,
      at: order.sortKey(scope, last),
      heading: order.headingOf(scope, last),
      rows: [],
    }
    group.rows.push(measurementRow(scope, readings, order))
    groups.set(id, group)
  }
  return table({
    caption: 'All named measurements',
    columns: [
      column('What'),
      column('Figure, and where it was written', 'main'),
      column('In other units', 'num'),
      column('With'),
      column('Before'),
      column('Used by', 'wide'),
    ],
    groups: [...groups.values()]
      .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
      .map(({ at: _, ...group }) => group),
    canFilter: true,
  })
}

function measurementRow(scope: PageScope, readings: readonly Measurement[], order: MeasurementOrder): TableRow {
  const last = readings.at(-1)
  if (last === undefined) throw new Error('Unexpected path without a reading, expected one at least')
  const note = last.note === null ? [] : [look('said', last.note)]
  return row(
    [
      whatCell(scope, last, { note, order }),
      { kind: 'leader', leader: scope.leader(last.quantity.text, last) },
      wordsCell(figure(inOtherUnits(last.quantity, scope.record.build.reading.gallon) ?? '')),
      wordsCell(last.with ?? ''),
      beforeCell(scope, readings),
      { kind: 'marks', marks: checkMarks(scope, last), otherwise: '' },
    ],
    anchorName('m', last.path),
  )
}

/** The property, and of what where the heading does not say it. */
function whatCell(
  scope: PageScope,
  { property, subject }: Measurement,
  { note, order }: { note: readonly Inline[]; order: MeasurementOrder },
): Cell {
  if (order.folder === null) return wordsCell(propertyWords(property), note)
  const of =
    order.folder === 'by-property'
      ? [scope.thing(subject)]
      : [scope.thing(subject), plain(`, ${propertyWords(property)}`)]
  return wordsCell(of, note)
}

/** Earlier readings: in words up to two, drawn from three readings up. */
function beforeCell(scope: PageScope, readings: readonly Measurement[]): Cell {
  const drawing = readings.length >= 3 ? drawHistory(scope, readings) : null
  if (drawing !== null) return { kind: 'drawing', drawing }
  const earlier = readings.slice(0, -1)
  return wordsCell(
    earlier.flatMap((reading, index) => [
      ...(index > 0 ? [plain(', ')] : []),
      scope.link(
        reading.quantity.text,
        reading.session === null
          ? pageAddress('build')
          : `${pageAddress('sessions', reading.session)}#${reading.figure ?? ''}`,
      ),
      plain(` (${scope.balloon(reading.session).text})`),
    ]),
  )
}
