import type { Verdict } from '../checker/verdict.ts'
import type { Job, Temporary } from '../record/record.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope, saidWords } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { stoodWords } from './stood.ts'
import { setterWords } from './subject-checks.ts'
import { column, heading, row, table, words } from './tables.ts'
import { testsNotPassed } from './tests-not-passed.ts'
import { noteAddress } from './thing-addresses.ts'

/** All that the record knows to stand between this vehicle and the road, as a list to print and tick. */
export function makeRoadPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('road'))
  const sections = [
    {
      title: 'Jobs and temporary fixes that hold up the road',
      id: 'jobs',
      short: 'Hold up the road',
      last: 'Since',
      rows: workRows(scope, 'road'),
    },
    { title: 'Checks that fail', id: 'checks', short: 'Failed checks', last: 'Whose limit', rows: failedRows(scope) },
    {
      title: 'Measurements that are missing',
      id: 'measure',
      short: 'To measure',
      last: 'Why',
      rows: missingRows(scope),
    },
    {
      title: 'Points of the inspection that are open',
      id: 'inspection',
      short: 'Open points',
      last: 'Before',
      rows: pointRows(scope),
    },
    {
      title: 'Jobs and temporary fixes that hold up the inspection',
      id: 'before-inspection',
      short: 'Hold up the inspection',
      last: 'Since',
      rows: workRows(scope, 'inspection'),
    },
    {
      title: 'Tests that did not pass when they were last made',
      id: 'tests',
      short: 'Tests',
      last: 'In',
      rows: testRows(scope),
    },
  ].filter(({ rows }) => rows.length > 0)
  const count = sections.reduce((sum, { rows }) => sum + rows.length, 0)
  const lede =
    count === 0
      ? 'Nothing that the record knows stands between this vehicle and the road.'
      : `${count === 1 ? 'One thing stands' : `${count} things stand`} between this vehicle and the road, as far as the record knows.`
  return simplePage(scope, {
    title: 'Before the road',
    section: 'road',
    look: 'one-page',
    gutter: sections.map(({ short, rows }) => ({ term: short, words: [plain(String(rows.length))] })),
    rows: [
      textRow(
        words('lede', lede),
        words(
          'caution',
          'A list that is empty is no approval. Whether a vehicle may go on the road is decided by local codes and licensed practice; brakes, steering, fuel and lights want a second pair of eyes before it moves.',
        ),
      ),
      ...sections.map(({ title, id, last, rows }) => wideRow(heading(title, id), checkList(title, last, rows))),
      ...(count === 0 ? [] : [wideRow({ kind: 'signature' })]),
    ],
  })
}

function checkList(caption: string, last: string, rows: readonly TableRow[]): PartOfPage {
  return table({
    caption,
    columns: [column('What', 'wide'), column('How it stands', 'wide'), column(last), column('Done', 'narrow')],
    rows,
  })
}

const line = (what: readonly Inline[], stands: Cell, since: readonly Inline[]): TableRow =>
  row([wordsCell(what), stands, wordsCell(since), { kind: 'tick' }])

function workRows(scope: PageScope, before: string): TableRow[] {
  const { jobs, temporary } = scope.record
  const holds = (work: Job | Temporary): boolean => work.open && work.before === before
  return [
    ...jobs
      .filter(holds)
      .map(job =>
        line(linked(scope, saidWords(job.words), anchorName('j', job.id)), wordsCell('open job'), since(scope, job)),
      ),
    ...temporary
      .filter(holds)
      .map(fix =>
        line(linked(scope, saidWords(fix.words), anchorName('f', fix.id)), fixCell(scope, fix), since(scope, fix)),
      ),
  ]
}

function linked(scope: PageScope, said: readonly Inline[], anchor: string): Inline[] {
  return said.map(word => ({ ...word, href: scope.to(`${pageAddress('jobs')}#${anchor}`) }))
}

function fixCell(scope: PageScope, fix: Temporary): Cell {
  const part = fix.part === null ? [] : [plain(' on '), scope.thing({ kind: 'part', id: fix.part })]
  return wordsCell(
    [plain('temporary fix'), ...part],
    fix.until === null ? [] : [plain('until '), ...saidWords(fix.until)],
  )
}

function since(scope: PageScope, work: Job | Temporary): Inline[] {
  return [scope.link(stoodWords(scope, work), noteAddress(work.session))]
}

function failedRows(scope: PageScope): TableRow[] {
  return scope.atlas.verdicts
    .filter(({ verdict }) => verdict === 'fail')
    .map(verdict => line(questionWords(scope, verdict), wordsCell(figure(verdict.working.says)), limitWords(verdict)))
}

function questionWords(scope: PageScope, verdict: Verdict): Inline[] {
  const { title, subject } = verdict.working
  const name = verdict.subject === 'vehicle' ? '' : `: ${subject.name}`
  const aspect = verdict.aspect === null ? '' : `, ${verdict.aspect.replaceAll('-', ' ')}`
  return [plain(`${title}${name}${aspect}`, scope.mark(verdict).href)]
}

const limitWords = ({ limit }: Verdict): Inline[] => (limit === null ? [] : [plain(setterWords(limit.who))])

function missingRows(scope: PageScope): TableRow[] {
  return scope.atlas.extras.measureNext.map(({ path, why }) =>
    line([look('path', path, scope.to(pageAddress('measure-next')))], wordsCell(''), [plain(why)]),
  )
}

function pointRows(scope: PageScope): TableRow[] {
  return scope.atlas.extras.inspection
    .filter(({ open }) => open)
    .map(point => {
      const lacks = point.evidence.filter(({ ok }) => !ok).map(({ ref }) => ref)
      const missing = point.evidence.length === 0 ? 'no evidence is named' : `open: ${lacks.join(', ')}`
      return line(
        saidWords(point.ask).map(word => ({ ...word, href: scope.to(`${pageAddress('inspection')}#i-${point.id}`) })),
        wordsCell(missing),
        point.before === null ? [] : [plain(`the ${point.before}`)],
      )
    })
}

function testRows(scope: PageScope): TableRow[] {
  return testsNotPassed(scope.record.tests).map(test =>
    line(
      saidWords(test.words),
      wordsCell(test.result === 'fail' ? 'failed' : 'passed in part', test.note === null ? [] : saidWords(test.note)),
      [scope.link(scope.balloon(test.session).says, noteAddress(test.session))],
    ),
  )
}
