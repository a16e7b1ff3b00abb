import type { Measurement } from '../record/record.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { Table, TableRow } from './blocks.ts'
import type { Cell } from './cells.ts'
import { drawHistory } from './history.ts'
import { look, plain, wordsCell } from './inline.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, row, table, words } from './tables.ts'
import { checkMarks, propertyWords } from './thing-table.ts'

/** Every named figure, by its thing: what stands, its sentence, what it was before, what used it. */
export function makeMeasurementsPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('measurements'))
  const paths = byPath(atlas.record.measurements)
  return simplePage(scope, {
    title: 'Measurements',
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
        { kind: 'key', of: 'lines' },
      ),
      wideRow(measurementTable(scope, paths)),
    ],
  })
}

function byPath(measurements: readonly Measurement[]): Map<string, Measurement[]> {
  const paths = new Map<string, Measurement[]>()
  for (const measurement of measurements)
    paths.set(measurement.path, [...(paths.get(measurement.path) ?? []), measurement])
  return paths
}

function measurementTable(scope: PageScope, paths: ReadonlyMap<string, readonly Measurement[]>) {
  const groups = new Map<string, { heading: Table['groups'][number]['heading']; rows: TableRow[]; id: string }>()
  for (const readings of paths.values()) {
    const last = readings.at(-1)
    if (last === undefined) continue
    const key = `${last.subject.kind}:${last.subject.id}`
    const id = anchorName('t', last.subject.kind === 'part' || last.subject.kind === 'vehicle' ? last.subject.id : key)
    const group = groups.get(key) ?? { id, heading: [scope.thing(last.subject)], rows: [] }
    group.rows.push(measurementRow(scope, readings, last))
    groups.set(key, group)
  }
  return table({
    caption: 'All named measurements',
    columns: [
      column('What'),
      column('Figure, and where it was written', 'main'),
      column('With'),
      column('Before'),
      column('Used by', 'wide'),
    ],
    groups: [...groups.values()].sort((a, b) => order(a.id) - order(b.id)),
    canFilter: true,
  })
}

/** The vehicle itself goes before its parts. */
function order(id: string): number {
  return id === 't-vehicle' ? 0 : 1
}

function measurementRow(scope: PageScope, readings: readonly Measurement[], last: Measurement): TableRow {
  const note = last.note === null ? [] : [look('said', last.note)]
  return row(
    [
      wordsCell(propertyWords(last.property), note),
      { kind: 'leader', leader: scope.leader(last.quantity.text, last) },
      wordsCell(last.with ?? ''),
      beforeCell(scope, readings),
      { kind: 'marks', marks: checkMarks(scope, last), otherwise: '' },
    ],
    anchorName('m', last.path),
  )
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
