import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { TableRow } from './blocks.ts'
import { look, plain, wordsCell } from './inline.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, row, table, words } from './tables.ts'

/** A sheet to take to the vehicle: what to measure, why, and room to write it down. */
export function makeMeasureNextPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('measure-next'))
  const { measureNext } = atlas.extras
  const lede =
    measureNext.length === 0
      ? 'Nothing is missing for the questions that were asked.'
      : 'In this order the fewest measurements answer the most questions. Print it, take it to the vehicle, write the figures into the next note.'
  return simplePage(scope, {
    title: 'Measure next',
    section: 'measure-next',
    look: 'one-page',
    gutter: [{ term: 'To measure', words: [plain(String(measureNext.length))] }],
    rows: [
      textRow(words('lede', lede)),
      measureNext.length === 0
        ? wideRow()
        : wideRow(
            table({
              caption: 'What to measure next',
              columns: [
                column('No.', 'narrow'),
                column('What', 'wide'),
                column('Why'),
                column('Settles', 'wide'),
                column('Measured', 'figure'),
              ],
              rows: measureNext.map((next, index) => nextRow(scope, { ...next, number: index + 1 })),
            }),
            { kind: 'signature' },
          ),
    ],
  })
}

function nextRow(
  scope: PageScope,
  next: { path: string; why: string; settles: readonly string[]; number: number },
): TableRow {
  const waiting = scope.atlas.verdicts.filter(({ working }) =>
    working.measureNext.some(({ path }) => path === next.path),
  )
  const marks = waiting.map(verdict =>
    scope.mark(verdict, `${verdict.working.title.toLowerCase()}, ${verdict.working.subject.name}`),
  )
  return row([
    wordsCell(String(next.number)),
    wordsCell([look('path', next.path)]),
    wordsCell(next.why),
    { kind: 'marks', marks, otherwise: '' },
    { kind: 'tick' },
  ])
}
