/** True for a day that exists, written by ISO 8601: `2026-03-07`. */
export function isCalendarDate(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []
  if (year === undefined) return false
  const date = new Date(0)
  date.setUTCFullYear(Number(year), Number(month) - 1, Number(day))
  return (
    date.getUTCFullYear() === Number(year) &&
    date.getUTCMonth() === Number(month) - 1 &&
    date.getUTCDate() === Number(day)
  )
}

/** The date that a file name begins with, whether it exists or not; null where it begins with none. */
export function dateInName(name: string): string | null {
  return /^\d{4}-\d{2}-\d{2}(?!\d)/.exec(name)?.[0] ?? null
}

/** A date written another way, put as ISO 8601 where only one reading is possible: `2026-3-7`, `2026/03/07`, `20260307`. */
export function mendDate(text: string): string | null {
  const [, year = '', month = '', day = ''] = /^(\d{4})[-/. ]?(\d{1,2})[-/. ]?(\d{1,2})$/.exec(text.trim()) ?? []
  const isSplit = /\D/.test(text.trim()) || text.trim().length === 8
  const mended = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`
  return isSplit && isCalendarDate(mended) ? mended : null
}
