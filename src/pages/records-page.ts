import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { correctionsOf, correctionTable } from './corrections.ts'
import { plain, wordsCell } from './inline.ts'
import { keptRules } from './kept-records.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope, saidWords } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { column, heading, row, table, words } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

/** How the record is kept: by which published rules and how far, which notes it is made of, and all that was corrected. */
export function makeRecordsPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('inspection', 'records'))
  const { sessions, measurements } = atlas.record
  return simplePage(scope, {
    title: 'How these records are kept',
    section: 'inspection',
    gutter: [
      { term: 'Notes', words: [plain(String(sessions.length))] },
      { term: 'Corrections', words: [plain(String(correctionsOf(measurements).length))] },
    ],
    rows: [
      textRow(
        words(
          'lede',
          'One note after each session, dated; a later note corrects an earlier one and takes nothing of it away.',
        ),
        words('note', [
          plain(
            'The program that set this out approves nothing, and its marks are no opinion of an authority. What is said below is how far the record goes. ',
          ),
          scope.link('The points of the inspection', pageAddress('inspection')),
          plain('.'),
        ]),
      ),
      ...keptRules.map(source =>
        wideRow(heading(source.title, source.id), words('note', source.says), ruleTable(source)),
      ),
      wideRow(heading('The notes', 'notes'), noteTable(scope)),
      wideRow(heading('What was corrected', 'corrections'), correctionTable(scope)),
    ],
  })
}

function ruleTable({ title, rules }: (typeof keptRules)[number]): PartOfPage {
  return table({
    caption: title,
    columns: [column('What it asks', 'wide'), column('Followed', 'narrow'), column('Here', 'wide')],
    rows: rules.map(({ asks, here, isFollowed }) => row([wordsCell(asks), wordsCell(isFollowed), wordsCell(here)])),
  })
}

function noteTable(scope: PageScope): PartOfPage {
  const rows = scope.record.sessions.map(({ id, number, date, title, by, file }) =>
    row([
      wordsCell([scope.link(String(number), noteAddress(id))]),
      wordsCell(date),
      wordsCell(saidWords(title)),
      wordsCell(by === null ? 'not said' : saidWords(by)),
      wordsCell(file),
    ]),
  )
  return table({
    caption: 'The notes that the record is made of',
    columns: [
      column('Session', 'narrow'),
      column('Date', 'narrow'),
      column('Title', 'wide'),
      column('Written by'),
      column('File'),
    ],
    rows,
    note: 'A note names its writer with by: at its head, or build.md does for all that name nobody. Nothing proves who wrote it.',
  })
}
