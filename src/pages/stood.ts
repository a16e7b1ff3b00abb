import { standingTime } from '../record/asked/standing-time.ts'
import type { Turn } from '../record/job.ts'
import type { Session } from '../record/record.ts'
import type { Cell, Inline } from './cells.ts'
import { wordsCell } from './inline.ts'
import type { PageScope } from './page-scope.ts'
import { noteAddress } from './thing-addresses.ts'

interface Standing {
  readonly open: boolean
  readonly session: string | null
  readonly turns: readonly Turn[]
}

/** Hours as a reader says them: `6.5`, `12`. */
export function hoursText(hours: number): string {
  return String(Math.round(hours * 100) / 100)
}

/** `1 day`, `12 days`, or nothing where the dates are not known. */
export function daysText(days: number | null): string {
  if (days === null) return ''
  return days === 1 ? '1 day' : `${days} days`
}

/** The sessions that opened and closed it, the days between, the hours worked meanwhile. */
export function stoodCells(scope: PageScope, standing: Standing): Cell[] {
  const { opened, closed, days, hours } = standingTime(scope.record, standing)
  return [
    sessionCell(scope, opened),
    standing.open ? wordsCell('') : sessionCell(scope, closed),
    wordsCell(days === null ? '' : String(days)),
    wordsCell(hoursText(hours)),
  ]
}

/** A balloon with the session's date, leading to its note. */
function sessionCell(scope: PageScope, session: Session | null): Cell {
  const id = session?.id ?? null
  return { kind: 'balloon', balloon: scope.balloon(id), words: [dateLink(scope, session)] }
}

function dateLink(scope: PageScope, session: Session | null): Inline {
  return scope.link(
    session === null ? 'build note' : session.date || session.title.text,
    noteAddress(session?.id ?? null),
  )
}

/** How long something has stood, up to the last session: `since 2026-03-07, 112 days and 9 sessions`. */
export function stoodWords(scope: PageScope, standing: Standing): string {
  const { opened, days, sessions } = standingTime(scope.record, standing)
  const since =
    opened === null ? 'since before the first session' : `since ${opened.date || `session ${opened.number}`}`
  const span = [daysText(days), sessions === 1 ? '1 session' : `${sessions} sessions`]
    .filter(text => text !== '')
    .join(' and ')
  return `${since}, ${span}`
}
