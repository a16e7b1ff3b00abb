import type { AsBuiltRecord, Session } from '../record.ts'
import { addHours } from './standing-time.ts'

/** The systems that each session's note names: by a part's doings, by something bought, by what it says of a circuit. */
function systemsBySession(record: AsBuiltRecord): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>(record.sessions.map(({ id }) => [id, new Set()]))
  const add = (session: string | null, system: string | null): void => {
    if (session !== null && system !== null) found.get(session)?.add(system)
  }
  for (const part of record.parts)
    for (const { session } of [...part.events, ...part.mentions]) add(session, part.system)
  for (const { session, system } of record.spend) add(session, system)
  for (const circuit of record.circuits) {
    const system = circuit.properties.system?.at(-1)?.value
    if (system?.type !== 'words') continue
    for (const { session } of Object.values(circuit.properties).flat()) add(session, system.words.text)
  }
  return found
}

/** Hours of a system: the notes give hours for a session only, so they lie between two ends. */
interface SystemHours {
  readonly system: string
  readonly sessions: readonly Session[]
  /** Hours of the sessions that name no other system. */
  readonly atLeast: number
  /** Hours of all sessions that name it. */
  readonly atMost: number
}

/** In the order of build.md; systems that no session names have none. */
export function hoursBySystem(record: AsBuiltRecord): SystemHours[] {
  const named = systemsBySession(record)
  const ids = [
    ...new Set([...record.systems.map(({ id }) => id), ...[...named.values()].flatMap(systems => [...systems])]),
  ]
  return ids.flatMap(system => {
    const sessions = record.sessions.filter(({ id }) => named.get(id)?.has(system) ?? false)
    if (sessions.length === 0) return []
    const alone = sessions.filter(({ id }) => named.get(id)?.size === 1)
    return [{ system, sessions, atLeast: addHours(alone), atMost: addHours(sessions) }]
  })
}

interface MonthHours {
  /** `2026-03`. */
  readonly month: string
  readonly sessions: readonly Session[]
  readonly hours: number
}

/** Every month from the first dated session to the last, those without a session too. */
export function hoursByMonth(record: AsBuiltRecord): MonthHours[] {
  const dated = record.sessions.filter(({ date }) => date !== '')
  const [first, last] = [dated[0]?.date.slice(0, 7), dated.at(-1)?.date.slice(0, 7)]
  if (first === undefined || last === undefined) return []
  const months: MonthHours[] = []
  for (let month = first; month <= last && months.length < mostMonths; month = nextMonth(month)) {
    const sessions = dated.filter(({ date }) => date.startsWith(month))
    months.push({ month, sessions, hours: addHours(sessions) })
  }
  return months
}

const mostMonths = 1200 // a hundred years: a slip in a date must not make a list without end

function nextMonth(month: string): string {
  const [year = 0, number = 0] = month.split('-').map(Number)
  return number === 12
    ? `${String(year + 1).padStart(4, '0')}-01`
    : `${String(year).padStart(4, '0')}-${String(number + 1).padStart(2, '0')}`
}
