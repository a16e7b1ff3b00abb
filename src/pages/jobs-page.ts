import { standingTime } from '../record/asked/standing-time.ts'
import type { Job, Temporary } from '../record/record.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import type { Inline } from './cells.ts'
import { plain } from './inline.ts'
import { fixState, noteName } from './job-state.ts'
import type { JobLine, PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope, saidWords } from './page-scope.ts'
import { simplePage, textRow } from './simple-page.ts'
import type { Page } from './site-data.ts'
import { daysText, stoodWords } from './stood.ts'
import { heading, words } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

/** Jobs and temporary fixes: first what holds up the road, then the inspection, then the rest, then what is done. */
export function makeJobsPage(atlas: Atlas): Page {
  const scope = pageScope(atlas, pageAddress('jobs'))
  const { jobs, temporary } = atlas.record
  const open = { jobs: jobs.filter(job => job.open), fixes: temporary.filter(fix => fix.open) }
  const before = (what: string | null) => ({
    jobs: open.jobs.filter(job => job.before === what),
    fixes: open.fixes.filter(fix => fix.before === what),
  })
  const done = { jobs: jobs.filter(job => !job.open), fixes: temporary.filter(fix => !fix.open) }
  const holding =
    open.jobs.filter(job => job.before === 'road').length + open.fixes.filter(fix => fix.before === 'road').length
  return simplePage(scope, {
    title: 'Jobs and temporary fixes',
    section: 'jobs',
    look: 'one-page',
    gutter: [
      { term: 'Open jobs', words: [plain(String(open.jobs.length))] },
      { term: 'Fixes in place', words: [plain(String(open.fixes.length))] },
      { term: 'Done', words: [plain(String(done.jobs.length))] },
    ],
    rows: [
      textRow(
        words(
          'lede',
          holding === 0
            ? 'No job and no temporary fix holds up the road.'
            : `${holding === 1 ? 'One thing holds' : `${holding} things hold`} up the road.`,
        ),
        words('plain', [
          plain('With failed checks, missing measurements and open points of the inspection: '),
          scope.link('what stands before the road', pageAddress('road')),
          plain('.'),
        ]),
      ),
      ...section(scope, 'Before the road', 'road', before('road')),
      ...section(scope, 'Before the inspection', 'inspection', before('inspection')),
      ...section(scope, 'Whenever there is time', 'open', before(null)),
      ...section(scope, 'Done', 'done', done),
    ],
  })
}

interface Work {
  readonly jobs: readonly Job[]
  readonly fixes: readonly Temporary[]
}

function section(scope: PageScope, title: string, id: string, work: Work) {
  const lines = workLines(scope, work)
  return lines.length === 0 ? [] : [textRow(heading(title, id), { kind: 'jobs', jobs: lines } satisfies PartOfPage)]
}

/** Jobs, then fixes, as lines that lead to the notes which name them. */
export function workLines(scope: PageScope, { jobs, fixes }: Work): JobLine[] {
  return [
    ...jobs.map(
      (job): JobLine => ({
        id: anchorName('j', job.id),
        shape: job.open ? 'open' : 'done',
        words: saidWords(job.words),
        state: jobWords(scope, job),
        balloon: {
          ...scope.balloon(job.session),
          href: `${scope.to(noteAddress(job.session))}#${anchorName('j', job.id)}`,
        },
      }),
    ),
    ...fixes.map(
      (fix): JobLine => ({
        id: anchorName('f', fix.id),
        shape: fix.open ? 'fix' : 'fix-gone',
        words: saidWords(fix.words),
        state: [
          plain(fixState(scope.atlas, fix)),
          ...(fix.open ? [plain(`, ${stoodWords(scope, fix)}`)] : afterDays(scope, fix)),
          ...(fix.part === null ? [] : [plain(', on '), scope.thing({ kind: 'part', id: fix.part })]),
        ],
        balloon: { ...scope.balloon(fix.session), href: scope.to(noteAddress(fix.session)) },
      }),
    ),
  ]
}

function jobWords(scope: PageScope, job: Job): Inline[] {
  if (job.open) return [plain(`open ${stoodWords(scope, job)}`)]
  if (job.closed === null) return [plain('done')]
  const done = scope.link(noteName(scope.atlas, job.closed.session), noteAddress(job.closed.session))
  return [plain('done in '), done, ...afterDays(scope, job)]
}

/** `, after 12 days`. */
function afterDays(scope: PageScope, work: Job | Temporary): Inline[] {
  const days = daysText(standingTime(scope.record, work).days)
  return days === '' ? [] : [plain(`, after ${days}`)]
}
