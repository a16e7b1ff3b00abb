import type { Job, Temporary } from '../../record/record.ts'
import type { FoundMember, Input, Member } from '../input.ts'

/** A job or a temporary fix that is still open: what it is, and what it holds up (`road`, `inspection`; null for nothing). */
type OpenWork = Member<{ readonly kind: string; readonly what: string; readonly before: string | null }>

/** All jobs and temporary fixes that are open, the jobs first. */
export function openWork(): Input<readonly OpenWork[]> {
  return {
    symbol: null,
    meaning: 'jobs and temporary fixes that are open',
    dimension: null,
    reads: ['job/open', 'temporary/open'],
    read: ({ record, notebook }) => {
      const open = [...record.jobs.filter(job => job.open), ...record.temporary.filter(fix => fix.open)]
      for (const work of open)
        notebook.use({
          path: pathOf(work),
          words: textOf(work),
          place: work.place,
          session: work.session,
          figure: null,
        })
      return { type: 'members', members: open.map(memberOf) }
    },
  }
}

const isFix = (work: Job | Temporary): work is Temporary => 'what' in work
const textOf = (work: Job | Temporary): string => (isFix(work) ? work.what : work.text)
const pathOf = (work: Job | Temporary): string => `${isFix(work) ? 'temporary' : 'job'}:${work.id}`

function memberOf(work: Job | Temporary): FoundMember {
  return {
    path: pathOf(work),
    name: textOf(work),
    fields: {
      kind: { type: 'words', words: isFix(work) ? 'temporary fix' : 'job' },
      what: { type: 'words', words: textOf(work) },
      before: work.before === null ? { type: 'none' } : { type: 'words', words: work.before },
    },
  }
}
