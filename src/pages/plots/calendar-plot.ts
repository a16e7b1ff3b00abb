import { type Drawing, lettering, path, type Stroke } from '../drawing.ts'
import { dateOf, monthName } from '../page-dates.ts'

export interface CalendarDay {
  readonly day: number
  readonly balloon: string
  readonly href: string
  readonly says: string
}

interface CalendarPlot {
  readonly says: string
  readonly tells: string
  readonly days: readonly CalendarDay[]
}

interface Month {
  readonly first: number
  readonly length: number
  readonly name: string
}

const square = 22 // units of a day, its gap with it
const head = 22
const monthWidth = 7 * square + 22
const monthHeight = head + 6 * square + 16
const mostMonths = 36 // more than three years is told by the table alone

/** Months as squares of days, Monday first (ISO 8601); a day with a session has its balloon. Null where the time is too long. */
export function drawCalendar(plot: CalendarPlot): { wide: Drawing; narrow: Drawing } | null {
  const days = plot.days.map(({ day }) => day)
  const months = monthsBetween(Math.min(...days), Math.max(...days))
  if (months.length > mostMonths) return null
  return { wide: drawIn(plot, months, 5), narrow: drawIn(plot, months, 2) }
}

function drawIn({ says, tells, days }: CalendarPlot, months: readonly Month[], across: number): Drawing {
  const byDay = new Map(days.map(day => [day.day, day]))
  return {
    width: across * monthWidth - 22 + 4,
    height: Math.ceil(months.length / across) * monthHeight - 12,
    says,
    tells,
    look: 'plot',
    strokes: months.flatMap((month, at) =>
      drawMonth(month, byDay, [2 + (at % across) * monthWidth, Math.floor(at / across) * monthHeight]),
    ),
  }
}

function drawMonth(
  { first, length, name }: Month,
  byDay: ReadonlyMap<number, CalendarDay>,
  [left, top]: readonly [number, number],
): Stroke[] {
  const offset = weekday(first)
  const spot = (index: number): [number, number] => [
    left + ((offset + index) % 7) * square,
    top + head + Math.floor((offset + index) / 7) * square,
  ]
  const grid: string[] = []
  const marks: Stroke[] = []
  for (let index = 0; index < length; index++) {
    const [x, y] = spot(index)
    const found = byDay.get(first + index)
    if (found === undefined) grid.push(`M${x + 2} ${y + 2}h18v18h-18z`)
    else marks.push(mark(found, x + 11, y + 11))
  }
  return [lettering('plot-n', { x: left + 2, y: top + 15 }, name), path('far day', grid.join('')), ...marks]
}

function mark({ balloon, href, says }: CalendarDay, x: number, y: number): Stroke {
  return {
    kind: 'link',
    href,
    says,
    strokes: [{ kind: 'circle', x, y, r: 10.5, look: 'bal' }, lettering('bal-n', { x, y }, balloon)],
  }
}

/** Monday is 0. The first of January 1970 was a Thursday. */
const weekday = (day: number): number => (((day + 3) % 7) + 7) % 7

function monthsBetween(from: number, to: number): Month[] {
  const months: Month[] = []
  let first = from - dateOf(from).day + 1
  while (first <= to) {
    const { year, month } = dateOf(first)
    const next = Date.UTC(year, month, 1) / 86_400_000 // ms in a day
    months.push({ first, length: next - first, name: `${monthName(month)} ${year}` })
    first = next
  }
  return months
}
