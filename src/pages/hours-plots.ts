import { hoursByMonth } from '../record/asked/session-systems.ts'
import { plain, wordsCell } from './inline.ts'
import { dayNumber, longDate, monthName } from './page-dates.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { type CalendarDay, drawCalendar } from './plots/calendar-plot.ts'
import { drawMonths } from './plots/month-plot.ts'
import { hoursText } from './stood.ts'
import { column, row, table } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'

/** Hours as columns, one a month. */
export function hoursPlot(scope: PageScope): PartOfPage[] {
  const months = hoursByMonth(scope.record).map(({ month, hours }) => {
    const [year = '', number = ''] = month.split('-')
    const name = monthName(Number(number))
    return { short: `${name.slice(0, 3)} ${year}`, long: `${name} ${year}`, size: hours, text: hoursText(hours) }
  })
  if (months.length < 2) return []
  const drawn = drawMonths({
    says: 'Hours by month',
    tells: months.map(({ long, text }) => `${long} ${text}`).join(', '),
    unit: 'hours',
    months,
  })
  return [{ kind: 'drawings', ...drawn, caption: [], framed: false }]
}

/** The days on which there was a session, in their weeks, and as a table. */
export function calendarOf(scope: PageScope): PartOfPage[] {
  const days = scope.record.sessions.flatMap((session): CalendarDay[] => {
    const day = dayNumber(session.date)
    const balloon = scope.balloon(session.id)
    return day === null
      ? []
      : [
          {
            day,
            balloon: balloon.text,
            href: scope.to(noteAddress(session.id)),
            says: `${balloon.says}, ${longDate(session.date)}`,
          },
        ]
  })
  if (days.length === 0) return []
  const drawn = drawCalendar({
    says: 'Calendar of the sessions',
    tells: 'Weeks begin on Monday. The table says the same.',
    days,
  })
  return [
    ...(drawn === null
      ? []
      : [
          {
            kind: 'drawings' as const,
            ...drawn,
            caption: [plain('Weeks begin on Monday; a balloon is a session.')],
            framed: false,
          },
        ]),
    weekdayTable(scope),
  ]
}

const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday']

function weekdayTable(scope: PageScope): PartOfPage {
  const on = (weekday: number) =>
    scope.record.sessions.filter(({ date }) => ((dayNumber(date) ?? Number.NaN) + 3) % 7 === weekday) // 1970-01-01 was a Thursday
  return table({
    caption: 'Sessions by day of the week',
    columns: [column('Day'), column('Sessions', 'num'), column('Which', 'wide')],
    rows: weekdays.flatMap((name, weekday) => {
      const sessions = on(weekday)
      if (sessions.length === 0) return []
      const links = sessions.flatMap(({ id, number, date }, at) => [
        ...(at === 0 ? [] : [plain(', ')]),
        scope.link(`${number} (${date})`, noteAddress(id)),
      ])
      return [row([wordsCell(name), wordsCell(String(sessions.length)), wordsCell(links)])]
    }),
  })
}
