import { type ThingScheme, thingSchemes } from '../../plugins/things/node.ts'
import type { WeighedEvidence, WeighedPoint } from '../checker/weigh-inspection.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { Inline, Mark } from './cells.ts'
import { look, plain, wordsCell } from './inline.ts'
import { noteContext } from './note-scope.ts'
import { type PageScope, pageScope, saidWords } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, row, table, words } from './tables.ts'

/** The points that an inspector will ask about, each with its evidence: a sheet to print and sign. */
export function makeInspectionPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('inspection'))
  const { inspection } = atlas.extras
  const open = inspection.filter(point => point.open).length
  return simplePage(scope, {
    title: 'Inspection',
    longTitle: atlas.record.inspection.rule ?? 'Inspection',
    section: 'inspection',
    look: 'one-page',
    gutter: [
      { term: 'Points', words: [plain(String(inspection.length))] },
      { term: 'Open', words: [plain(String(open))] },
    ],
    rows: [
      textRow(
        words('lede', atlas.record.inspection.rule ?? 'What an inspector will ask about.'),
        words(
          'note',
          'Evidence is what the record holds. Whether it satisfies is for the inspector, by local codes and licensed practice.',
        ),
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
      column('Seen', 'narrow'),
    ],
    rows: points.map(point =>
      row(
        [
          wordsCell(saidWords(point.ask), point.before === null ? [] : [plain(`before the ${point.before}`)]),
          { kind: 'marks', marks: [stands(point)], otherwise: '' },
          { kind: 'evidence', lines: point.evidence.map(evidence => evidenceLine(scope, evidence)) },
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

function evidenceLine(
  scope: PageScope,
  evidence: WeighedEvidence,
): { readonly mark: Mark; readonly words: readonly Inline[] } {
  const scheme = thingSchemes.find(known => known === evidence.scheme) ?? null
  const link = scheme === null ? null : linkOf(scope, scheme, evidence.name)
  const lacks = evidence.lacks === null ? [] : [look('muted', `: ${evidence.lacks}`)]
  return {
    mark: { verdict: evidence.ok ? 'pass' : 'missing', text: evidence.ok ? 'held' : 'open', href: null },
    words: [plain(`${evidence.scheme} `), link ?? plain(evidence.name), ...lacks],
  }
}

function linkOf(scope: PageScope, scheme: ThingScheme, name: string): Inline | null {
  const found = noteContext(scope, { session: null, file: scope.record.build.file }).thing({ scheme, path: name })
  return found === null ? null : plain(found.text, found.href)
}
