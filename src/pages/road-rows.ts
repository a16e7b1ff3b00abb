import type { Verdict } from '../checker/verdict.ts'
import type { Job, Temporary } from '../record/record.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import { type PageScope, saidWords } from './page-scope.ts'
import { stoodWords } from './stood.ts'
import { setterWords } from './subject-checks.ts'
import { row } from './tables.ts'
import { testsNotPassed } from './tests-not-passed.ts'
import { noteAddress } from './thing-addresses.ts'

const line = (what: readonly Inline[], stands: Cell, since: readonly Inline[]): TableRow =>
  row([wordsCell(what), stands, wordsCell(since), { kind: 'tick' }])

/** Open jobs and temporary fixes that hold something up. */
export function workRows(scope: PageScope, before: string): TableRow[] {
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

/** Checks that fail. */
export function failedRows(scope: PageScope): TableRow[] {
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

/** What must be measured before a question can be answered. */
export function missingRows(scope: PageScope): TableRow[] {
  return scope.atlas.extras.measureNext.map(({ path, why }) =>
    line([look('path', path, scope.to(pageAddress('measure-next')))], wordsCell(''), [plain(why)]),
  )
}

/** Points of the inspection that are open, and what they lack. */
export function pointRows(scope: PageScope): TableRow[] {
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

/** Tests that did not pass when they were made last. */
export function testRows(scope: PageScope): TableRow[] {
  return testsNotPassed(scope.record.tests).map(test =>
    line(
      saidWords(test.words),
      wordsCell(test.result === 'fail' ? 'failed' : 'passed in part', test.note === null ? [] : saidWords(test.note)),
      [scope.link(scope.balloon(test.session).says, noteAddress(test.session))],
    ),
  )
}
