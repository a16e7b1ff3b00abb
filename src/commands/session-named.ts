import type { Session } from '../record/record.ts'
import { CannotRun } from './options.ts'

/** The session that somebody means by its name, the start of its name, its number or a day; null where the day is before the first. */
export function sessionNamed(sessions: readonly Session[], named: string): Session | null {
  const text = named.trim().replace(/\.md$/, '')
  const exact = sessions.find(({ id }) => id === text)
  if (exact !== undefined) return exact
  if (isDay(text)) return sessions.findLast(({ date }) => date !== '' && date <= text) ?? null
  const [numbered] = /^\d+$/.test(text) ? sessions.filter(({ number }) => number === Number(text)) : []
  if (numbered !== undefined) return numbered
  const begun = text === '' ? [] : sessions.filter(({ id }) => id.startsWith(text))
  const [only] = begun
  if (begun.length === 1 && only !== undefined) return only
  throw new CannotRun(trouble(sessions, named, begun))
}

/** The day that somebody named, where the session that it led to is of another day; null otherwise. */
export function dayBetween(named: string, session: Session | null): string | null {
  const text = named.trim()
  return isDay(text) && session?.date !== text ? text : null
}

function isDay(text: string): boolean {
  const day = new Date(`${text}T00:00:00Z`)
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === text
}

function trouble(sessions: readonly Session[], named: string, begun: readonly Session[]): string {
  if (sessions.length === 0) return 'There is no session yet, so nothing can have changed since one.'
  if (begun.length > 1)
    return `\`${named}\` begins the names of ${begun.length} sessions: ${begun.map(({ id }) => id).join(', ')}. Name one of them.`
  const last = sessions.at(-1)
  return `Unexpected session \`${named}\`, expected the name of one, a number from 1 to ${sessions.length} or a day, such as \`${last?.id}\`.`
}
