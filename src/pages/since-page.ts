import { type Changes, changesSince } from '../record/asked/changes-since.ts'
import { compareAnswers } from '../record/asked/compare-answers.ts'
import { addHours } from '../record/asked/standing-time.ts'
import type { Job } from '../record/record.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas, Before } from './atlas.ts'
import { plain } from './inline.ts'
import { workLines } from './jobs-page.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import { answerTable, figureTable, moneyTable, partTable, statementTable } from './since-tables.ts'
import type { Page } from './site-data.ts'
import { hoursText } from './stood.ts'
import { heading, words } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

const nothingBefore = 'before the first session'

/** What changed in the as-built record since it stood as `extras.before`: folded from the notes, without any other memory. */
export function makeSincePage(atlas: Atlas): Page {
  const { before } = atlas.extras
  if (!before) throw new Error('Unexpected page of changes without a record to compare with')
  const scope = pageScope(atlas, pageAddress('since'))
  const changes = changesSince(before.record, atlas.record)
  const answers = compareAnswers(before.verdicts, atlas.verdicts)
  const section = (title: string, id: string, parts: readonly PartOfPage[]) =>
    parts.length === 0 ? wideRow() : wideRow(heading(title, id), ...parts)
  const last = before.session === null ? null : (atlas.sessions.get(before.session) ?? null)
  return simplePage(scope, {
    title: 'What changed',
    longTitle: `Changes since ${last === null ? nothingBefore : `session ${last.number}`}`,
    section: 'since',
    gutter: [
      { term: 'Sessions', words: [plain(String(changes.sessions.length))] },
      { term: 'Hours', words: [plain(hoursText(addHours(changes.sessions)))] },
    ],
    rows: [
      lede(scope, before, changes),
      section('Checks that came out otherwise', 'checks', answerTable(scope, answers)),
      section('Parts', 'parts', partTable(scope, changes)),
      section('Measurements', 'measurements', figureTable(scope, changes)),
      section('Circuits', 'circuits', statementTable(scope, 'circuit', changes.circuits)),
      section('Connectors', 'connectors', statementTable(scope, 'connector', changes.connectors)),
      ...workSections(scope, changes),
      section('Money', 'money', moneyTable(scope, changes)),
    ],
  })
}

function lede(scope: PageScope, before: Before, { sessions }: Changes) {
  const last = before.session === null ? null : (scope.atlas.sessions.get(before.session) ?? null)
  const since =
    last === null
      ? plain(nothingBefore)
      : scope.link(`session ${last.number}, ${last.title.text}`, noteAddress(last.id))
  const named = sessions.flatMap(({ id, number, title }, at) => [
    ...(at === 0 ? [] : [plain('; ')]),
    scope.link(`${number}, ${title.text}`, noteAddress(id)),
  ])
  return textRow(
    words('lede', [plain('Since '), since, plain('.')]),
    words(
      'plain',
      named.length === 0 ? 'No session has been written since.' : [plain('Written since: '), ...named, plain('.')],
    ),
    words(
      'note',
      'The record is folded twice from the notes, up to there and up to the last; what the build note says counts as it is now.',
    ),
  )
}

function workSections(scope: PageScope, { opened, closed }: Changes) {
  const isJob = (work: Changes['opened'][number]): work is Job => 'text' in work
  const lines = (some: Changes['opened']): PartOfPage => ({
    kind: 'jobs',
    jobs: workLines(scope, { jobs: some.filter(isJob), fixes: some.flatMap(work => (isJob(work) ? [] : [work])) }).map(
      line => ({ ...line, id: null }),
    ),
  })
  return [
    opened.length === 0 ? wideRow() : textRow(heading('Jobs and temporary fixes opened', 'opened'), lines(opened)),
    closed.length === 0 ? wideRow() : textRow(heading('Jobs and temporary fixes closed', 'closed'), lines(closed)),
  ]
}
