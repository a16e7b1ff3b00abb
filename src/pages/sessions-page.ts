import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { plain, wordsCell } from './inline.ts'
import { longDate } from './page-dates.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { sessionRule } from './session-rule.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { firstSentence } from './summary.ts'
import { column, row, table, words } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

/** All sessions, newest first, under their rule. */
export function makeSessionsPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('sessions'))
  const { sessions } = atlas.record
  const hours = sessions.reduce((sum, session) => sum + Number(session.hours ?? 0), 0)
  return simplePage(scope, {
    title: 'Sessions',
    section: 'sessions',
    gutter: [
      { term: 'Sessions', words: [plain(String(sessions.length))] },
      { term: 'Hours', words: [plain(hours.toFixed(1))] },
    ],
    rows: [
      textRow(words('lede', 'How it was made, session by session, in the builder’s own words.')),
      wideRow(...sessionRule(scope), sessionTable(scope)),
    ],
  })
}

/** Number and date, what was done, the note's first sentence, hours. */
export function sessionTable(scope: PageScope, latest = Number.POSITIVE_INFINITY) {
  const sessions = [...scope.record.sessions].reverse().slice(0, latest)
  return table({
    caption: 'Sessions, newest first',
    columns: [column('Session', 'narrow'), column('What was done', 'wide'), column('Hours', 'num')],
    rows: sessions.map(session =>
      row([
        {
          kind: 'balloon',
          balloon: scope.balloon(session.id),
          words: [plain(session.date === '' ? '' : longDate(session.date))],
        },
        wordsCell(
          [scope.link(session.title.text, noteAddress(session.id))],
          [{ text: firstSentence(session.body), href: null, look: 'said' }],
        ),
        wordsCell(session.hours ?? ''),
      ]),
    ),
  })
}
