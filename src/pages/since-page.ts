import type { Verdict } from '../checker/verdict.ts'
import { type Changes, changesSince, type StatementChange } from '../record/asked/changes-since.ts'
import { type AnswerChange, compareAnswers } from '../record/asked/compare-answers.ts'
import { addHours } from '../record/asked/standing-time.ts'
import type { Job } from '../record/record.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas, Before } from './atlas.ts'
import { nameCell } from './bill-of-materials.ts'
import type { Mark } from './cells.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import { workLines } from './jobs-page.ts'
import { inMoney, moneyCell } from './money-cells.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope, valueText } from './page-scope.ts'
import { stateCell } from './part-states.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { hoursText } from './stood.ts'
import { column, heading, row, table, words } from './tables.ts'
import { noteAddress, subjectAddress } from './thing-addresses.ts'
import { heldLeader, propertyWords } from './thing-table.ts'

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

function answerTable(scope: PageScope, answers: readonly AnswerChange<Verdict>[]): PartOfPage[] {
  if (answers.length === 0) return []
  const mark = (verdict: Verdict | null): readonly Mark[] =>
    verdict === null ? [] : [{ verdict: verdict.verdict, text: verdict.verdict, href: null }]
  return [
    table({
      caption: 'Checks that came out otherwise',
      columns: [column('Check', 'wide'), column('Before'), column('Now'), column('How it stands', 'wide')],
      rows: answers.map(({ before, after }) => {
        const name = nameOf(after ?? before)
        return row([
          wordsCell([after === null ? plain(name) : plain(name, scope.mark(after).href)]),
          { kind: 'marks', marks: mark(before), otherwise: 'not asked' },
          { kind: 'marks', marks: mark(after), otherwise: 'asked no more' },
          wordsCell(after === null ? '' : figure(after.working.says)),
        ])
      }),
      canFilter: answers.length > 12,
    }),
  ]
}

function nameOf(verdict: Verdict | null): string {
  if (verdict === null) return ''
  const { title, subject } = verdict.working
  return [title, verdict.subject === 'vehicle' ? '' : subject.name, verdict.aspect?.replaceAll('-', ' ') ?? '']
    .filter(text => text !== '')
    .join(', ')
}

function partTable(scope: PageScope, { parts }: Changes): PartOfPage[] {
  if (parts.length === 0) return []
  return [
    table({
      caption: 'Parts that are new or stand otherwise',
      columns: [column('Part', 'wide'), column('Before'), column('Now'), column('In', 'narrow'), column('Why', 'wide')],
      rows: parts.map(({ before, after }) => {
        const last = after.events.at(-1)
        return row([
          nameCell(scope, after),
          before === null ? wordsCell('new') : stateCell(before.state),
          stateCell(after.state),
          last === undefined
            ? wordsCell('')
            : {
                kind: 'balloon',
                balloon: scope.balloon(last.session),
                words: [scope.link('note', noteAddress(last.session))],
              },
          wordsCell(last?.why ? [look('said', last.why.value.text)] : []),
        ])
      }),
      canFilter: parts.length > 12,
    }),
  ]
}

function figureTable(scope: PageScope, { measurements }: Changes): PartOfPage[] {
  if (measurements.length === 0) return []
  return [
    table({
      caption: 'Measurements that are new or were made again',
      columns: [column('What', 'wide'), column('Before', 'figure'), column('Now', 'figure')],
      rows: measurements.map(({ before, after }) =>
        row([
          wordsCell([look('path', after.path)]),
          before === null ? wordsCell('') : { kind: 'leader', leader: scope.leader(before.quantity.text, before) },
          { kind: 'leader', leader: scope.leader(after.quantity.text, after) },
        ]),
      ),
      canFilter: measurements.length > 12,
    }),
  ]
}

function statementTable(
  scope: PageScope,
  kind: 'circuit' | 'connector',
  changes: readonly StatementChange[],
): PartOfPage[] {
  if (changes.length === 0) return []
  return [
    table({
      caption: `What is said otherwise of a ${kind}`,
      columns: [
        column(kind === 'circuit' ? 'Circuit' : 'Connector'),
        column('What'),
        column('Before'),
        column('Now', 'figure'),
      ],
      rows: changes.map(({ thing, key, before, held }) =>
        row([
          wordsCell([scope.link(thing.name, subjectAddress({ kind, id: thing.id }))]),
          wordsCell(propertyWords(key)),
          wordsCell(before === null ? '' : valueText(before)),
          { kind: 'leader', leader: heldLeader(scope, held) },
        ]),
      ),
      canFilter: changes.length > 12,
    }),
  ]
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

function moneyTable(scope: PageScope, { money, paid }: Changes): PartOfPage[] {
  if (scope.atlas.withheld.has('cost') || money.length === 0) return []
  return [
    table({
      caption: 'Amounts since then',
      columns: [column('What', 'wide'), column('Each, as written', 'figure'), column('Amount', 'num')],
      rows: money.map(line =>
        row([
          wordsCell(line.thing === null ? line.what : [plain(line.what, scope.to(subjectAddress(line.thing)))]),
          moneyCell(scope, line.written, line),
          wordsCell(inMoney(scope, line.amount)),
        ]),
      ),
      foot: [row([wordsCell('Together'), wordsCell(''), wordsCell(inMoney(scope, paid))])],
    }),
  ]
}
