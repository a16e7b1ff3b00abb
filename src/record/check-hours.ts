import { type Finding, finding } from '../findings/finding.ts'
import { Rational } from '../quantities/rational.ts'
import type { SessionNote } from './order-sessions.ts'

const hoursInDay = Rational.of(24n)

/** Notes that bring one date to more hours than a day has; told at the note that does. */
export function checkHours(sessions: readonly SessionNote[]): Finding[] {
  const worked = new Map<string, Rational>()
  return sessions.flatMap(({ session: { date, hours } }) => {
    const own = hours === null ? null : Rational.parse(hours.amount)
    if (hours === null || own === null || date === null) return []
    const before = worked.get(date) ?? Rational.zero
    const all = before.plus(own)
    worked.set(date, all)
    if (all.compare(hoursInDay) <= 0 || before.compare(hoursInDay) > 0) return []
    const together = before.compare(Rational.zero) === 0 ? '' : `, ${all.toNumber()} with the notes before it`
    return [
      finding('unlikely', hours.place, {
        message: `Unexpected ${hours.amount} hours on ${date}${together}, expected no more than the 24 of a day; they count as written`,
      }),
    ]
  })
}
