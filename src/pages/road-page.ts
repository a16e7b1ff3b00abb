import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { TableRow } from './blocks.ts'
import { plain, wordsCell } from './inline.ts'
import { withRest } from './most-of-it.ts'
import { openWork } from './open-work.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { failedRows, missingRows, pointRows, testRows, workRows } from './road-rows.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, heading, row, table, words } from './tables.ts'

/** All that the record knows to stand between this vehicle and the road, as a list to print and tick. */
export function makeRoadPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('road'))
  const sections = [
    {
      title: 'Jobs and temporary fixes that hold up the road',
      id: 'jobs',
      short: 'Hold up the road',
      last: 'Since',
      rows: workRows(scope, 'road'),
    },
    { title: 'Checks that fail', id: 'checks', short: 'Failed checks', last: 'Whose limit', rows: failedRows(scope) },
    {
      title: 'Measurements that are missing',
      id: 'measure',
      short: 'To measure',
      last: 'Why',
      rows: missingRows(scope),
    },
    {
      title: 'Points of the inspection that are open',
      id: 'inspection',
      short: 'Open points',
      last: 'Before',
      rows: pointRows(scope),
    },
    {
      title: 'Jobs and temporary fixes that hold up the inspection',
      id: 'before-inspection',
      short: 'Hold up the inspection',
      last: 'Since',
      rows: workRows(scope, 'inspection'),
    },
    {
      title: 'Tests that did not pass when they were last made',
      id: 'tests',
      short: 'Tests',
      last: 'In',
      rows: testRows(scope),
    },
  ].filter(({ rows }) => rows.length > 0)
  const count = sections.reduce((sum, { rows }) => sum + rows.length, 0)
  const lede =
    count === 0
      ? 'Nothing that the record knows stands between this vehicle and the road.'
      : `${count === 1 ? 'One thing stands' : `${count} things stand`} between this vehicle and the road, as far as the record knows.`
  return simplePage(scope, {
    title: 'Before the road',
    section: 'road',
    look: 'one-page',
    gutter: sections.map(({ short, rows }) => ({ term: short, words: [plain(String(rows.length))] })),
    rows: [
      textRow(words('lede', lede)),
      ...(count === 0 ? [] : [wideRow(summary(scope))]),
      textRow(
        words(
          'caution',
          'A list that is empty is no approval. Whether a vehicle may go on the road is decided by local codes and licensed practice; brakes, steering, fuel and lights want a second pair of eyes before it moves.',
        ),
      ),
      ...sections.map(({ title, id, last, rows }) => wideRow(heading(title, id), checkList(title, last, rows))),
      ...(count === 0 ? [] : [wideRow({ kind: 'signature' })]),
    ],
  })
}

/** How many of each kind there are, and the first of them by name. */
function summary(scope: PageScope): PartOfPage {
  return table({
    caption: 'What is still to do',
    columns: [column('Kind'), column('How many', 'num'), column('The first of them', 'wide')],
    rows: openWork(scope).map(({ id, short, things }) =>
      row([
        wordsCell([plain(short, `#${id}`)]),
        wordsCell(String(things.length)),
        wordsCell(withRest(things.slice(0, 2), things.length - 2)),
      ]),
    ),
  })
}

function checkList(caption: string, last: string, rows: readonly TableRow[]): PartOfPage {
  return table({
    caption,
    columns: [column('What', 'wide'), column('How it stands', 'wide'), column(last), column('Done', 'narrow')],
    rows,
  })
}
