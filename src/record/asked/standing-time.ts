import { Rational } from '../../quantities/rational.ts'
import type { Turn } from '../job.ts'
import type { AsBuiltRecord, Session } from '../record.ts'

/** How long a job or a temporary fix stood: to its closing, or to the last session while it is open. */
export interface StandingTime {
  /** Null: build.md. */
  readonly opened: Session | null
  readonly closed: Session | null
  /** Null where a date is not known. */
  readonly days: number | null
  /** From the one that opened it to the one that closed it, both counted. */
  readonly sessions: number
  /** What those sessions took in all, exact decimal hours; whatever was done in them. */
  readonly hours: number
}

interface Standing {
  readonly open: boolean
  readonly session: string | null
  readonly turns: readonly Turn[]
}

/** The time from first mention to closing. The record's last session counts as today, so that the clock has no say. */
export function standingTime(record: AsBuiltRecord, standing: Standing): StandingTime {
  const { sessions } = record
  const numberOf = (id: string | null): number => (id === null ? -1 : sessions.findIndex(session => session.id === id))
  const last = standing.turns.at(-1)
  const from = numberOf(standing.session)
  const to = standing.open ? sessions.length - 1 : numberOf(last?.session ?? null)
  const meanwhile = sessions.slice(Math.max(from, 0), to + 1)
  return {
    opened: sessions[from] ?? null,
    closed: standing.open ? null : (sessions[to] ?? null),
    days: daysBetween(from < 0 ? record.build.started : sessions[from]?.date, sessions[to]?.date),
    sessions: meanwhile.length,
    hours: addHours(meanwhile),
  }
}

/** Exact hours of sessions, as a number. */
export function addHours(sessions: readonly Pick<Session, 'hours'>[]): number {
  const exact = sessions.map(({ hours }) => (hours === null ? null : Rational.parse(hours)) ?? Rational.zero)
  return exact.reduce((sum, hours) => sum.plus(hours), Rational.zero).toNumber()
}

const dayMs = 86_400_000 // milliseconds in a day

/** Whole days from one ISO 8601 date to another; null where either is not known. */
function daysBetween(from: string | null | undefined, to: string | null | undefined): number | null {
  const [start, end] = [Date.parse(`${from}T00:00:00Z`), Date.parse(`${to}T00:00:00Z`)]
  return Number.isNaN(start) || Number.isNaN(end) ? null : Math.round((end - start) / dayMs)
}
