import { type Finding, finding } from '../findings/finding.ts'
import type { SessionNote } from './order-sessions.ts'

/** Sessions that are dated after today; none where today is not given. */
export function checkDates(sessions: readonly SessionNote[], today: string | null): Finding[] {
  return sessions.flatMap(({ session: { date, datePlace } }) => {
    if (today === null || date === null || date <= today) return []
    return [
      finding('future-date', datePlace, {
        message: `Unexpected date \`${date}\`, expected no later one than today, ${today}`,
      }),
    ]
  })
}
