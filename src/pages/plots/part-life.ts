import type { Part, PartEvent, PartState } from '../../record/record.ts'
import { type Drawing, lettering, path, type Stroke, tenth } from '../drawing.ts'
import { dayNumber, longDate } from '../page-dates.ts'
import type { PartOfPage } from '../page-parts.ts'
import type { PageScope } from '../page-scope.ts'
import { isGone } from '../part-states.ts'
import { noteAddress } from '../thing-addresses.ts'
import { timeLine } from './time-line.ts'

interface Step {
  readonly event: PartEvent
  readonly day: number
}

const nameHeight = 15 // units between two names over one another

/** A part's life over the time of the build: a full line while it is on the vehicle, a broken one while it waits, none when it is gone. */
export function partLife(scope: PageScope, part: Part): PartOfPage[] {
  const steps = part.events.flatMap((event): Step[] => {
    const day = dayNumber(scope.atlas.sessions.get(event.session ?? '')?.date ?? '')
    return day === null ? [] : [{ event, day }]
  })
  const days = scope.record.sessions.map(({ date }) => dayNumber(date)).filter(day => day !== null)
  if (steps.length === 0 || days.length < 2) return []
  const draw = (width: number): Drawing => drawLife(scope, { part, steps, days }, width)
  return [
    {
      kind: 'drawings',
      wide: draw(820),
      narrow: draw(360),
      caption: [
        { text: 'A full line: on the vehicle. A broken line: at hand, and not on it.', href: null, look: 'plain' },
      ],
      framed: false,
    },
  ]
}

interface Life {
  readonly part: Part
  readonly steps: readonly Step[]
  readonly days: readonly number[]
}

interface Spot extends Step {
  readonly x: number
  readonly start: number
  /** How many names lie below its own. */
  readonly level: number
}

function drawLife(scope: PageScope, { part, steps, days }: Life, width: number): Drawing {
  const last = Math.max(...days) + 3
  const time = timeLine({ first: Math.min(...days) - 3, last }, [12, width - 12])
  const spots = place(steps, time.x, width)
  const base = 36 + Math.max(...spots.map(({ level }) => level)) * nameHeight
  return {
    width,
    height: base + 62,
    says: `The life of ${part.name}`,
    tells: steps
      .map(({ event }) => `${event.action} on ${longDate(scope.atlas.sessions.get(event.session ?? '')?.date ?? '')}`)
      .join(', '),
    look: 'plot',
    strokes: [
      ...time.scale(base + 30),
      ...lines(spots, base, time.x(last)),
      ...spots.map(spot => mark(scope, spot, base)),
    ],
  }
}

/** Names that would touch step up. */
function place(steps: readonly Step[], x: (day: number) => number, width: number): Spot[] {
  const ends: number[] = [] // how far the names reach to the right, at each height
  return steps.map(step => {
    const at = x(step.day)
    const long = step.event.action.length * 6.4 + 12 // units that the name takes
    const start = Math.min(at - 4, width - long)
    const free = ends.findIndex(end => start > end)
    const level = free === -1 ? ends.length : free
    ends[level] = start + long
    return { ...step, x: at, start: tenth(start), level }
  })
}

function lines(spots: readonly Spot[], base: number, end: number): Stroke[] {
  let isOn = false
  return spots.flatMap(({ event, x }, at): Stroke[] => {
    isOn = event.action === 'fitted' || (event.action === 'modified' && isOn)
    const stretch = `M${x} ${base}H${spots[at + 1]?.x ?? end}`
    return isOn ? [path('life', stretch)] : isAtHand(event.action) ? [path('life waiting', stretch)] : []
  })
}

/** Whether a part that is not fitted is at hand, or on its way. */
const isAtHand = (state: PartState): boolean => !isGone(state) || state === 'removed'

/** A balloon for the session that names it, with what was done over it. */
function mark(scope: PageScope, { event, x, start, level }: Spot, base: number): Stroke {
  const session = scope.balloon(event.session)
  return {
    kind: 'link',
    href: scope.to(noteAddress(event.session)),
    says: `${event.action}, ${session.says}`,
    strokes: [
      { kind: 'circle', x, y: base, r: 10.5, look: 'bal' },
      lettering('bal-n', { x, y: base }, session.text),
      lettering('plot-n', { x: start, y: base - 20 - level * nameHeight }, event.action),
    ],
  }
}
