import type { Check } from '../checker/check.ts'
import { pageAddress } from './addresses.ts'
import type { TableRow } from './blocks.ts'
import { look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, spaced } from './page-scope.ts'
import { provenanceOf } from './provenance.ts'
import { setterWords } from './subject-checks.ts'
import { column, heading, row, table, words } from './tables.ts'

/** Check by check: where its formula is from, where its limit, and what of both nobody looked up. Read off the files of the checks. */
export function provenanceParts(scope: PageScope): PartOfPage[] {
  const { checks } = scope.atlas.extras
  if (checks.length === 0) return []
  return [
    heading('Where formulas and limits are from', 'sources'),
    words(
      'note',
      'As the file of each check says it. What is from memory or common practice has no page to be read in.',
    ),
    table({
      caption: 'Sources of the checks',
      columns: [
        column('Check'),
        column('Formula', 'wide'),
        column('Limit', 'wide'),
        column('From memory, or without a source', 'wide'),
      ],
      rows: checks.map(check => sourceRow(scope, check)),
      canFilter: true,
    }),
  ]
}

function sourceRow(scope: PageScope, check: Check): TableRow {
  const { formula, limits, unseen } = provenanceOf(check)
  const said = limits.flatMap(({ aspects, who, source }, index) => [
    ...(index === 0 ? [] : [plain('; ')]),
    ...(aspects.length === 0 ? [] : [look('strong', `${aspects.map(spaced).join(', ')}: `)]),
    plain(`${setterWords(who)}: ${source}`),
  ])
  return row([
    wordsCell([scope.link(check.title, pageAddress('checks', check.id))]),
    wordsCell(formula),
    wordsCell(said.length === 0 ? 'none: it is a working' : said),
    wordsCell(unseen.join('; ')),
  ])
}
