import type { Session } from '../record/record.ts'
import { type Atlas, figureKey } from './atlas.ts'
import { plain } from './inline.ts'
import { money } from './money.ts'
import { type PrintedNote, printNote } from './note-rows.ts'
import { noteContext } from './note-scope.ts'
import { longDate } from './page-dates.ts'
import type { PageRow } from './page-row.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { railNotes } from './rail-notes.ts'
import { sessionHead } from './session-head.ts'
import { makeSheet } from './sheet.ts'
import type { Page, Term } from './site-data.ts'
import { noteAddress } from './thing-addresses.ts'

/** A session's page: its words as written with what used each figure beside them, then what stood at the head of the note. */
export function makeSessionPage(atlas: Atlas, session: Session): Page {
  const scope = pageScope(atlas, noteAddress(session.id))
  const printed = printNote(session.body, noteContext(scope, { session: session.id, file: session.file }))
  for (const [figure, sentence] of printed.sentences) atlas.sentences.set(figureKey(session.id, figure), sentence)
  const [before, after] = [-1, 1].map(step => neighbour(scope, session.number - 1 + step))
  return {
    sheet: makeSheet(atlas, {
      address: scope.address,
      title: `Session ${session.number}: ${session.title.text}`,
      section: 'sessions',
    }),
    title: session.title.text,
    wide: false,
    gutter: sessionGutter(scope, session),
    rows: [...noteRows(scope, session.id, printed), ...sessionHead(scope, session, printed)],
    before: before ?? null,
    after: after ?? null,
    look: 'session',
  }
}

/** The blocks of a note, each with its notes in the margin. */
export function noteRows(scope: PageScope, session: string | null, printed: PrintedNote): PageRow[] {
  return printed.rows.map(({ html, wide, figures }) => ({
    wide,
    parts: [{ kind: 'note', html }],
    rail: railNotes(scope, session, figures),
  }))
}

function sessionGutter(scope: PageScope, session: Session): Term[] {
  const spent = scope.atlas.withheld.has('cost') ? undefined : scope.record.ledger.bySession[session.id]
  return [
    { term: 'Session', words: [plain(`${session.number} of ${scope.record.sessions.length}`)] },
    ...(session.date === '' ? [] : [{ term: 'Date', words: [plain(longDate(session.date))] }]),
    ...(session.by === null ? [] : [{ term: 'By', words: [plain(session.by.text)] }]),
    ...(session.hours === null ? [] : [{ term: 'Hours', words: [plain(session.hours)] }]),
    ...(spent === undefined || Number(spent) === 0
      ? []
      : [{ term: 'Spent', words: [plain(money(spent, scope.record.ledger.currency))] }]),
  ]
}

function neighbour(scope: PageScope, index: number) {
  const session = scope.record.sessions[index]
  return session === undefined || index < 0
    ? null
    : { text: `${session.number}, ${session.title.text}`, href: scope.to(noteAddress(session.id)) }
}
