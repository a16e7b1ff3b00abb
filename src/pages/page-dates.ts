const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

/** `2026-03-07` as a reader says it: `7 March 2026`. What is no date of the calendar stays as written. */
export function longDate(date: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? []
  const name = months[Number(month) - 1]
  return name === undefined ? date : `${Number(day)} ${name} ${year}`
}

/** Days since the first of January 1970, for a scale; null where it is no date. */
export function dayNumber(date: string): number | null {
  const day = Date.parse(`${date}T00:00:00Z`) / 86_400_000 // ms in a day
  return Number.isFinite(day) ? Math.round(day) : null
}

/** `March`, by its number from 1. */
export function monthName(month: number): string {
  return months[month - 1] ?? ''
}

/** Years, months and days of a day number. */
export function dateOf(day: number): { year: number; month: number; day: number } {
  const date = new Date(day * 86_400_000)
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() }
}
