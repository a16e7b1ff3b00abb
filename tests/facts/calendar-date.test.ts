import { describe, expect, test } from 'vitest'
import { dateInName, isCalendarDate, mendDate } from '../../src/facts/calendar-date.ts'

/** ISO 8601-1:2019, 5.2.2.1: years by the Gregorian calendar, leap years by its rule of 4, 100 and 400. */
describe('calendar dates', () => {
  test.each(['2026-03-07', '2024-02-29', '2000-02-29', '0001-01-01', '2026-12-31'])('%s exists', date => {
    expect(isCalendarDate(date)).toBe(true)
  })

  test.each([
    '2026-02-29',
    '1900-02-29',
    '2026-04-31',
    '2026-13-01',
    '2026-00-10',
    '2026-1-1',
    '07/03/2026',
    '2026-03-07T10:00',
    '',
  ])('`%s` is no day of the calendar', date => {
    expect(isCalendarDate(date)).toBe(false)
  })

  test('every day of JavaScript’s own calendar from 1999 to 2032 exists, and each month ends where it ends', () => {
    for (let day = Date.UTC(1999, 0, 1); day < Date.UTC(2033, 0, 1); day += 86_400_000) {
      const date = new Date(day).toISOString().slice(0, 10)
      expect(isCalendarDate(date)).toBe(true)
      const next = new Date(day + 86_400_000).toISOString().slice(0, 10)
      if (next.endsWith('-01')) expect(isCalendarDate(`${date.slice(0, 8)}${Number(date.slice(8)) + 1}`)).toBe(false)
    }
  })

  test.each([
    ['2026-03-07-tank-in', '2026-03-07'],
    ['2026-02-30-tank-in', '2026-02-30'],
    ['2026-03-071', null],
    ['tank-2026-03-07', null],
  ])('the name `%s` begins with %s', (name, date) => {
    expect(dateInName(name)).toBe(date)
  })

  test.each([
    ['2026-3-7', '2026-03-07'],
    ['2026/03/07', '2026-03-07'],
    ['20260307', '2026-03-07'],
    ['7.3.2026', null],
    ['2026-02-30', null],
  ])('`%s` is mended to %s', (text, mended) => {
    expect(mendDate(text)).toBe(mended)
  })
})
