import type { WeighedPoint } from '../checker/weigh-inspection.ts'
import { neutralMark } from '../editions/withheld.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { Mark } from './cells.ts'
import { evidenceLine } from './evidence-line.ts'
import { plain, wordsCell } from './inline.ts'
import { type PageScope, pageScope, saidWords, spaced } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, row, table, words } from './tables.ts'

/** The points that an inspector will ask about, each with its evidence: a sheet to print and sign. */
export function makeInspectionPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('inspection'))
  const { inspection } = atlas.extras
  const { rule, authority } = atlas.record.inspection
  const open = inspection.filter(point => point.open).length
  return simplePage(scope, {
    title: 'Inspection',
    longTitle: rule ?? 'Inspection',
    section: 'inspection',
    look: 'one-page',
    gutter: [
      { term: 'Points', words: [plain(String(inspection.length))] },
      { term: 'Open', words: [plain(String(open))] },
      ...(authority === null ? [] : [{ term: 'Authority', words: saidWords(authority) }]),
    ],
    rows: [
      textRow(
        words('lede', rule ?? 'What an inspector will ask about.'),
        words('note', [
          plain(
            'This sheet approves nothing. Evidence is what the record holds; whether it satisfies is for the inspector, by local codes and licensed practice. ',
          ),
          scope.link('How the records are kept', pageAddress('inspection', 'records')),
          plain('.'),
        ]),
      ),
      wideRow(pointTable(scope, inspection), { kind: 'signature' }),
    ],
  })
}

function pointTable(scope: PageScope, points: readonly WeighedPoint[]) {
  return table({
    caption: 'Points of the inspection',
    columns: [
      column('Point', 'wide'),
      column('Stands', 'narrow'),
      column('Evidence', 'wide'),
      column('Missing'),
      column('Seen', 'narrow'),
    ],
    rows: points.map(point =>
      row(
        [
          wordsCell(saidWords(point.ask), point.before === null ? [] : [plain(`before the ${point.before}`)]),
          { kind: 'marks', marks: [stands(point)], otherwise: '' },
          { kind: 'evidence', lines: point.evidence.map(evidence => evidenceLine(scope, evidence)) },
          wordsCell(missingWords(point)),
          { kind: 'tick' },
        ],
        `i-${point.id}`,
      ),
    ),
  })
}

function stands(point: WeighedPoint): Mark {
  return point.open ? { verdict: 'missing', text: 'open', href: null } : { verdict: 'pass', text: 'held', href: null }
}

/** What keeps a point open, each by its kind: its name stands beside it among the evidence. */
function missingWords({ open, evidence }: WeighedPoint): string {
  if (!open) return ''
  if (evidence.length === 0) return 'no evidence is named'
  const wanting = evidence.filter(({ ok, ref }) => !ok && ref !== neutralMark)
  if (wanting.length === 0) return 'not told in this edition'
  return wanting.map(({ scheme, lacks }) => `${spaced(scheme)}: ${lacks ?? 'does not hold'}`).join('; ')
}
