import type { ClosingFact, Fact, JobFact, TemporaryFact } from '../facts/fact.ts'
import { type Finding, finding } from '../findings/finding.ts'
import type { Job, Temporary } from './job.ts'
import { likelyName } from './near-name.ts'
import { closeItem, closingOf, isOpen, nameItem, type OpenItem } from './open-items.ts'

export interface FoldedJobs {
  readonly jobs: readonly Job[]
  readonly temporary: readonly Temporary[]
  readonly findings: readonly Finding[]
}

/** Follows jobs and temporary fixes through all notes in order, in the order in which they were first written. */
export function foldJobs(facts: readonly Fact[]): FoldedJobs {
  const jobs: OpenItem<JobFact>[] = []
  const fixes: OpenItem<TemporaryFact>[] = []
  const findings: Finding[] = []
  for (const fact of facts) {
    if (fact.type === 'job')
      nameItem(jobs, { ...fact, words: fact.words.text, open: !fact.done, said: keepBefore(fact, jobs) })
    if (fact.type === 'temporary') nameItem(fixes, { ...fact, words: fact.what.text, open: true, said: fact })
    if (fact.type !== 'closing') continue
    const found = close(fact.of === 'job' ? jobs : fixes, fact)
    if (found !== null) findings.push(found)
  }
  return { jobs: jobs.map(jobOf), temporary: fixes.map(temporaryOf), findings }
}

/** A repeat that does not say what the job holds up leaves that as it was. */
function keepBefore(fact: JobFact, jobs: readonly OpenItem<JobFact>[]): JobFact {
  const known = jobs.find(({ id }) => id === fact.id)
  return { ...fact, before: fact.before ?? known?.said.before ?? null }
}

function close(items: readonly OpenItem<JobFact | TemporaryFact>[], fact: ClosingFact): Finding | null {
  const { item, closed } = closeItem(items, fact.named, { open: false, place: fact.place, session: fact.session })
  if (closed) return null
  const [key, kind] = fact.of === 'job' ? ['closes', 'job'] : ['clears', 'temporary fix']
  const last = item === null ? null : closingOf(item)
  const openNames = items.filter(isOpen).map(({ id }) => id)
  return finding('no-closing', fact.place, {
    message: `Unexpected \`${fact.named}\` under \`${key}:\`, expected a ${kind} that is open`,
    mend:
      item === null
        ? (likelyName(fact.named, openNames) ??
          likelyName(
            fact.named,
            items.map(({ id }) => id),
          ))
        : null,
    about: item === null ? [] : [item.id],
    related: last === null ? [] : [{ ...last.place, message: 'It was closed here' }],
  })
}

function jobOf(item: OpenItem<JobFact>): Job {
  const { id, first, said, turns } = item
  const { place, session } = first
  return {
    id,
    text: said.words.text,
    words: said.words,
    open: isOpen(item),
    before: said.before,
    place,
    session,
    closed: closingOf(item),
    turns,
  }
}

function temporaryOf(item: OpenItem<TemporaryFact>): Temporary {
  const { id, first, said, turns } = item
  const { place, session } = first
  const { part, until, before } = said
  return {
    id,
    what: said.what.text,
    words: said.what,
    part,
    until,
    before,
    open: isOpen(item),
    place,
    session,
    cleared: closingOf(item),
    turns,
  }
}
