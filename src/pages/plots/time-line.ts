import { lettering, path, type Stroke, tenth } from '../drawing.ts'
import { dateOf, monthName } from '../page-dates.ts'

/** Days along a drawing: `x` of a day, and the strokes of its scale at the height `y`. */
interface TimeLine {
  readonly x: (day: number) => number
  readonly scale: (y: number) => Stroke[]
}

/** A scale of days from `first` to `last` between two heights of x; months are ticked and named while there is room. */
export function timeLine(
  { first, last }: { first: number; last: number },
  [left, right]: readonly [number, number],
): TimeLine {
  const span = Math.max(last - first, 1)
  const x = (day: number): number => tenth(left + ((day - first) / span) * (right - left))
  const scale = (y: number): Stroke[] => {
    const months = firstsOfMonths(first, last)
    const room = ((right - left) / span) * 30 // units that a month takes
    const step = room > 40 ? 1 : room > 15 ? 3 : 12 // months between names, so that they do not touch
    const ticks = months.map(day => `M${x(day)} ${y}v8`).join('')
    const names = months.flatMap(day => {
      const { month, year } = dateOf(day)
      if ((month - 1) % step !== 0 || x(day) + 30 > right) return []
      return [lettering('sm', { x: x(day) + 2, y: y + 21 }, month === 1 ? `${year}` : monthName(month).slice(0, 3))]
    })
    return [path('deck', `M${left} ${y}H${right}`), ...(ticks === '' ? [] : [path('tick', ticks)]), ...names]
  }
  return { x, scale }
}

function firstsOfMonths(first: number, last: number): number[] {
  const days: number[] = []
  for (let day = first; day <= last; day++) if (dateOf(day).day === 1) days.push(day)
  return days
}
