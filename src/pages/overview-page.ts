import type { Verdict } from '../checker/verdict.ts'
import { pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { RailNote } from './blocks.ts'
import type { Inline } from './cells.ts'
import { tally, verdictOrder } from './checks-page.ts'
import { listed, plain, wordsCell } from './inline.ts'
import { money } from './money.ts'
import { longDate } from './page-dates.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope, saidWords } from './page-scope.ts'
import { sessionRule } from './session-rule.ts'
import { sessionTable } from './sessions-page.ts'
import { hasSheet } from './sheet.ts'
import { drawSideView } from './side-view.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page, Term } from './site-data.ts'
import { column, heading, row, table, words } from './tables.ts'
import { verdictAddress } from './thing-addresses.ts'
import { threeAnswers } from './three-answers.ts'

/** The first page: what it is, drawn from its own figures, where it stands, how it was made, and where each reader begins. */
export function makeOverviewPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, 'index.html')
  const { build } = atlas.record
  return simplePage(scope, {
    title: build.title.text,
    section: null,
    gutter: gutterOf(scope),
    rows: [
      ...(build.summary === null ? [] : [textRow(words('lede', saidWords(build.summary)))]),
      wideRow(threeAnswers(scope)),
      wideRow(...drawSideView(scope)),
      { ...textRow(heading('Where it stands', 'stands'), ...stands(scope)), rail: atAGlance(scope) },
      wideRow(heading('When was it worked on?', 'sessions'), ...sessionRule(scope), sessionTable(scope, 5)),
      textRow(heading('Ways in', 'ways'), waysIn(scope)),
      ...sumRow(scope),
    ],
  })
}

function gutterOf(scope: PageScope): Term[] {
  const { build, sessions, ledger } = scope.record
  const hours = sessions.reduce((sum, session) => sum + Number(session.hours ?? 0), 0)
  return [
    ...(build.started === null ? [] : [{ term: 'Begun', words: [plain(longDate(build.started))] }]),
    { term: 'Sessions', words: [plain(String(sessions.length))] },
    { term: 'Hours', words: [plain(hours.toFixed(1))] },
    ...(scope.atlas.withheld.has('cost')
      ? []
      : [{ term: 'Spent', words: [plain(money(ledger.total, ledger.currency))] }]),
  ]
}

function stands(scope: PageScope): PartOfPage[] {
  const { verdicts } = scope.atlas
  const rows = verdictOrder.flatMap(verdict => {
    const of = verdicts.filter(one => one.verdict === verdict)
    if (of.length === 0) return []
    return [
      row([
        { kind: 'marks', marks: [{ verdict, text: verdict, href: null }], otherwise: '' },
        wordsCell(String(of.length)),
        wordsCell(verdict === 'pass' ? [scope.link('all others', pageAddress('checks'))] : which(scope, of)),
      ]),
    ]
  })
  return [
    words('lede', roadWords(scope)),
    table({
      caption: 'The checks by verdict',
      columns: [column('Verdict'), column('Checks', 'num'), column('Which', 'wide')],
      rows,
      foot: [row([wordsCell('Asked'), wordsCell(String(verdicts.length)), wordsCell('')])],
    }),
  ]
}

/** The first few by name; the rest are a number that leads to all. */
function which(scope: PageScope, of: readonly Verdict[]): Inline[] {
  const named = of.slice(0, 4).map(verdict => [scope.link(answerWords(verdict), verdictAddress(verdict))])
  return listed(
    of.length > 4 ? [...named, [scope.link(`${of.length - 4} more`, `${pageAddress('checks')}#open`)]] : named,
  )
}

function answerWords({ subject, aspect, working }: Verdict): string {
  const title = working.title.toLowerCase()
  const of = [subject === 'vehicle' ? '' : working.subject.name, aspect ?? ''].filter(Boolean).join(', ')
  return of === '' ? title : `${title} (${of})`
}

function roadWords(scope: PageScope): Inline[] {
  const { jobs, temporary } = scope.record
  const holding = [...jobs, ...temporary].filter(one => one.open && one.before === 'road').length
  const failed = scope.atlas.verdicts.filter(({ verdict }) => verdict === 'fail').length
  if (holding + failed === 0) return [plain('Nothing that the notes name holds up the road.')]
  const parts = [
    holding === 0
      ? null
      : scope.link(`${holding} ${holding === 1 ? 'job or fix' : 'jobs and fixes'}`, `${pageAddress('jobs')}#road`),
    failed === 0
      ? null
      : scope.link(`${failed} ${failed === 1 ? 'failed check' : 'failed checks'}`, `${pageAddress('checks')}#open`),
  ]
  return [
    ...listed(
      parts.filter(part => part !== null).map(part => [part]),
      ' and ',
    ),
    plain(holding + failed === 1 ? ' stands between it and the road.' : ' stand between it and the road.'),
  ]
}

/** In the margin: the figures that everyone asks for first. */
function atAGlance(scope: PageScope): RailNote[] {
  const { record, atlas } = scope
  const on = record.parts.filter(part => part.onVehicle).length
  const note = (of: string, says: readonly Inline[]): RailNote => ({
    figure: 0,
    of: [plain(of)],
    words: says,
    marks: [],
  })
  return [
    note(`${on} parts`, [plain('on it, '), scope.link(`${record.parts.length} in the story`, pageAddress('parts'))]),
    note(`${record.measurements.filter(({ superseded }) => !superseded).length} figures`, [
      plain('named and traced, '),
      scope.link('the index', pageAddress('measurements')),
    ]),
    ...(hasSheet(atlas, 'wiring')
      ? [
          note(`${record.circuits.length} circuits`, [
            plain('from source to earth, '),
            scope.link('wiring', pageAddress('wiring')),
          ]),
        ]
      : []),
    {
      figure: 0,
      of: [plain(`${atlas.verdicts.length} questions`)],
      words: [plain('asked of the record')],
      marks: tally(atlas.verdicts),
    },
  ]
}

/** The sums of the record and of the manifest, whole: any program that works SHA-256 sums gives them again. */
function sumRow({ atlas }: PageScope): Page['rows'] {
  const { sum, manifestSum } = atlas.extras
  if (sum === undefined) return []
  const record = 'The SHA-256 sum of record.json, which holds every figure of these pages, in eights:'
  const manifest =
    'That of manifest.json, which holds the sum of every file; this page is summed in it with noughts in place of these digits:'
  return [
    textRow(
      heading('Sums', 'sum'),
      words('plain', `${record} ${sum.replace(/(.{8})(?=.)/g, '$1 ')}`),
      ...(manifestSum === undefined ? [] : [words('plain', `${manifest} ${manifestSum}`)]),
    ),
  ]
}

function waysIn(scope: PageScope): PartOfPage {
  const link = (text: string, folder: string): Inline[] =>
    hasSheet(scope.atlas, folder) ? [scope.link(text, pageAddress(folder))] : []
  const rows = [
    [
      'are building it',
      [
        link('what stands in the way', 'road'),
        link('what to measure next', 'measure-next'),
        link('every measurement', 'measurements'),
      ],
    ],
    [
      'inspect it',
      [
        ...(scope.atlas.extras.paper === true ? [[scope.link('all of it as one document', 'record.pdf')]] : []),
        link('the sheet to print', 'inspection'),
        link('the checks with their workings', 'checks'),
        link('the wiring', 'wiring'),
      ],
    ],
    [
      'may buy it',
      [
        link('what it is made of', 'parts'),
        link('how it was made', 'sessions'),
        link('photographs', 'photos'),
        link('what the builder says', 'build'),
      ],
    ],
    ['insure it', [link('what it cost', 'cost'), link('its systems', 'systems')]],
  ] as const
  return table({
    caption: 'Where each reader may begin',
    columns: [column('You'), column('Begin here', 'wide')],
    rows: rows.map(([who, links]) => row([wordsCell(who), wordsCell(listed(links.filter(one => one.length > 0)))])),
  })
}
