import type { Session } from '../record/record.ts'
import { type Drawing, lettering, path, type Stroke, tenth } from './drawing.ts'
import { dateOf, dayNumber, longDate, monthName } from './page-dates.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { noteAddress } from './thing-addresses.ts'

interface Dated {
  readonly session: Session
  readonly day: number
}

interface Rule {
  readonly width: number
  readonly first: number
  readonly last: number
}

const margin = 24 // room left and right of the scale, in units of the drawing
const base = 104 // where the scale's upper edge lies
const perHour = 6.4 // height of an hour

/** The sessions along a rule of days; the height of each line is its hours. */
export function sessionRule(scope: PageScope): PartOfPage[] {
  const dated = scope.record.sessions.flatMap((session): Dated[] => {
    const day = dayNumber(session.date)
    return day === null ? [] : [{ session, day }]
  })
  if (dated.length < 2) return []
  const draw = (width: number): Drawing => drawRule(scope, dated, width)
  return [
    {
      kind: 'drawings',
      wide: draw(820),
      narrow: draw(360),
      caption: [{ text: 'The height of a line is the hours of that session.', href: null, look: 'plain' }],
      framed: false,
    },
  ]
}

function drawRule(scope: PageScope, dated: readonly Dated[], width: number): Drawing {
  const days = dated.map(({ day }) => day)
  const rule = { width, first: Math.min(...days) - 3, last: Math.max(...days) + 3 }
  return {
    width,
    height: 140,
    says: 'The sessions by date; the height of each line is its hours',
    tells: `${dated.length} sessions from ${dated[0]?.session.date ?? ''} to ${dated.at(-1)?.session.date ?? ''}. The table of sessions says the same.`,
    look: 'rule',
    strokes: [...scale(rule), ...spread(dated, rule).map(at => mark(scope, at))],
  }
}

function across(day: number, { width, first, last }: Rule): number {
  return tenth(margin + ((day - first) / (last - first)) * (width - 2 * margin))
}

/** Ticks of a rule: each day or week, a long one each month with its name. */
function scale(rule: Rule): Stroke[] {
  const span = rule.last - rule.first
  const step = span <= 120 ? 1 : 7 // days
  const ticks: string[] = []
  const names: Stroke[] = []
  for (let day = rule.first; day <= rule.last; day++) {
    const date = dateOf(day)
    const isMonth = date.day === 1
    if (isMonth || (day - rule.first) % step === 0) ticks.push(`M${across(day, rule)} ${base}v${isMonth ? 16 : 6}`)
    const name = nameOf(date, span, rule.width)
    const fits = across(day, rule) + 3 + name.length * 7.5 < rule.width // units a character of small lettering takes
    if (isMonth && fits && hasRoom(date.month, span, rule.width))
      names.push(lettering('sm', { x: across(day, rule) + 3, y: base + 28 }, name))
  }
  return [path('deck', `M${margin} ${base}H${rule.width - margin}`), path('tick', ticks.join('')), ...names]
}

/** Months are named while their names have room: each, each quarter, each year. */
function hasRoom(month: number, span: number, width: number): boolean {
  const monthWidth = (30 / span) * width
  if (monthWidth > 44) return true
  return monthWidth > 16 ? month % 3 === 1 : month === 1
}

function nameOf(date: { year: number; month: number }, span: number, width: number): string {
  const name = (30 / span) * width > 76 ? monthName(date.month) : monthName(date.month).slice(0, 3)
  return date.month === 1 ? `${name} ${date.year}` : name
}

interface Spot extends Dated {
  readonly x: number
  readonly y: number
}

/** Balloons that would touch step up out of each other's way. */
function spread(dated: readonly Dated[], rule: Rule): Spot[] {
  const placed: Spot[] = []
  for (const { session, day } of dated) {
    const x = across(day, rule)
    let y = base - 14 - Math.min(Number(session.hours ?? 0), 11) * perHour
    const touches = (): boolean => placed.some(other => Math.abs(other.x - x) < 23 && Math.abs(other.y - y) < 23)
    while (touches() && y > 12) y -= 4
    placed.push({ session, day, x, y: tenth(Math.max(y, 12)) })
  }
  return placed
}

function mark(scope: PageScope, { session, x, y }: Spot): Stroke {
  const hours = session.hours === null ? '' : `, ${session.hours} h`
  return {
    kind: 'link',
    href: scope.to(noteAddress(session.id)),
    says: `Session ${session.number}, ${longDate(session.date)}${hours}: ${session.title.text}`,
    strokes: [
      path('scr', `M${x} ${base}V${tenth(y + 11)}`),
      { kind: 'circle', x, y, r: 11, look: 'bal' },
      lettering('bal-n', { x, y }, String(session.number)),
    ],
  }
}
