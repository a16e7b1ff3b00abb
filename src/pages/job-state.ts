import type { Job, Temporary } from '../record/record.ts'
import type { Atlas } from './atlas.ts'

/** How a job stands, seen from one of the notes that name it: `open, holds up the road`. */
export function jobState(atlas: Atlas, job: Job, session: string | null): string {
  if (job.open) return `open${holds(job.before)}`
  if (job.closed === null || job.closed.session === session) return 'done here'
  return `done in ${noteName(atlas, job.closed.session)}`
}

/** `session 7`, or the build note. */
export function noteName(atlas: Atlas, session: string | null): string {
  return session === null ? 'the build note' : `session ${atlas.sessions.get(session)?.number ?? session}`
}

/** How a temporary fix stands. */
export function fixState(atlas: Atlas, fix: Temporary): string {
  const until = fix.until === null ? '' : `, until ${fix.until.text}`
  if (fix.open) return `temporary fix${until}${holds(fix.before)}`
  return fix.cleared === null ? 'temporary fix, gone' : `temporary fix, gone in ${noteName(atlas, fix.cleared.session)}`
}

function holds(before: string | null): string {
  return before === null ? '' : `, holds up the ${before}`
}
