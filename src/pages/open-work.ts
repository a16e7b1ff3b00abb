import type { Job, Temporary } from '../record/record.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { Inline } from './cells.ts'
import { plain } from './inline.ts'
import { type PageScope, saidWords, spaced } from './page-scope.ts'
import { testsNotPassed } from './tests-not-passed.ts'
import { noteAddress, verdictAddress } from './thing-addresses.ts'

/** One kind of thing that stands between the vehicle and the road, each of its things leading to the words that say it. */
export interface OpenWork {
  /** The heading of its section on the page *before the road*. */
  readonly id: string
  readonly short: string
  readonly things: readonly (readonly Inline[])[]
}

/** All that stands between the vehicle and the road, kind by kind, in the order in which it matters; kinds of which there is nothing are left out. */
export function openWork(scope: PageScope): OpenWork[] {
  const { verdicts, extras } = scope.atlas
  const leading = (words: readonly Inline[], address: string): Inline[] =>
    words.map(word => ({ ...word, href: scope.to(address) }))
  const all: OpenWork[] = [
    { id: 'jobs', short: 'Hold up the road', things: held(scope, 'road') },
    {
      id: 'checks',
      short: 'Failed checks',
      things: verdicts
        .filter(({ verdict }) => verdict === 'fail')
        .map(verdict =>
          leading([plain(`${verdict.working.title}: ${verdict.working.subject.name}`)], verdictAddress(verdict)),
        ),
    },
    {
      id: 'measure',
      short: 'To measure',
      things: extras.measureNext.map(({ path }) => leading([plain(spaced(path))], pageAddress('measure-next'))),
    },
    {
      id: 'inspection',
      short: 'Open points',
      things: extras.inspection
        .filter(({ open }) => open)
        .map(({ id, ask }) => leading(saidWords(ask), `${pageAddress('inspection')}#i-${id}`)),
    },
    { id: 'before-inspection', short: 'Hold up the inspection', things: held(scope, 'inspection') },
    {
      id: 'tests',
      short: 'Tests',
      things: testsNotPassed(scope.record.tests).map(test => leading(saidWords(test.words), noteAddress(test.session))),
    },
  ]
  return all.filter(({ things }) => things.length > 0)
}

/** Open jobs and fixes that hold something up; a job leads to the item of its note. */
function held(scope: PageScope, before: string): Inline[][] {
  const { jobs, temporary } = scope.record
  const holds = (work: Job | Temporary): boolean => work.open && work.before === before
  const linked = (work: Job | Temporary, address: string): Inline[] =>
    saidWords(work.words).map(word => ({ ...word, href: scope.to(address) }))
  return [
    ...jobs.filter(holds).map(job => linked(job, `${noteAddress(job.session)}#${anchorName('j', job.id)}`)),
    ...temporary.filter(holds).map(fix => linked(fix, noteAddress(fix.session))),
  ]
}
