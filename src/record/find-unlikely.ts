import { type Finding, finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import { Rational } from '../quantities/rational.ts'
import { type PartCourse, pricedActions } from './fold-events.ts'
import type { PartState } from './record.ts'

type Said = PartCourse['said'][number]

const bringsAnew: readonly PartState[] = ['ordered', 'received', 'made']
const hasLeft: readonly PartState[] = ['rejected', 'returned', 'sold', 'scrapped']

/** What was done to parts that does not follow from what was done before: sold before bought, returned twice, fitted while rejected. */
export function findUnlikely(courses: ReadonlyMap<string, PartCourse>): Finding[] {
  return [...courses.values()].flatMap(course => {
    let held: Held = { bought: null, gone: Rational.zero, left: null }
    return course.said.flatMap((said, at) => {
      const found = unlikely(course, at, held)
      held = follow(held, said)
      return found ?? []
    })
  })
}

interface Held {
  /** How many were bought last; null where no note says that any was. */
  readonly bought: Rational | null
  /** How many of them were sold or returned. */
  readonly gone: Rational
  /** Where it left last. */
  readonly left: Place | null
}

const comesBack = ({ event, fact }: Said): boolean =>
  fact.action !== null && (event.action === 'sold' || event.action === 'returned')

const countOf = ({ event }: Said): Rational => Rational.parse(event.qty) ?? Rational.zero

function follow(held: Held, said: Said): Held {
  const { event, before } = said
  const left = hasLeft.includes(event.action) ? event.place : held.left
  if (comesBack(said)) return { ...held, gone: held.gone.plus(countOf(said)), left }
  if (!pricedActions.includes(event.action)) return { ...held, left }
  const isAnew = before !== null && hasLeft.includes(before)
  const isMore = held.bought === null || isAnew || countOf(said).compare(held.bought) > 0
  return {
    bought: isMore ? countOf(said) : held.bought,
    gone: isAnew ? Rational.zero : held.gone,
    left: isAnew ? null : left,
  }
}

function unlikely(course: PartCourse, at: number, held: Held): Finding | null {
  const said = course.said[at]
  if (said === undefined || said.fact.action === null) return null
  const { event, before } = said
  if (event.action === 'fitted' && said.fact.cost === null && before !== null && hasLeft.includes(before))
    return tell(course, event.place, {
      message: `Unexpected \`fitted\` of part \`${course.id}\`, which was ${before}, expected \`modified\`, \`received\` or \`made\` before it is fitted`,
      related: held.left === null ? [] : [{ ...held.left, message: `It was ${before} here` }],
    })
  return comesBack(said) ? wrongReturn(course, at, held) : null
}

function wrongReturn(course: PartCourse, at: number, { bought, gone, left }: Held): Finding | null {
  const said = course.said[at]
  if (said === undefined) return null
  const { event } = said
  if (bought === null) return at === 0 ? neverBought(course, said) : null
  if (gone.plus(countOf(said)).compare(bought) <= 0) return null
  const isAllGone = gone.compare(bought) >= 0
  const message = isAllGone
    ? `Unexpected \`${event.action}\` of part \`${course.id}\`, expected one that is still there: all that was bought had left before`
    : `Unexpected ${event.qty} of part \`${course.id}\` ${event.action}, expected no more than the ${bought.minus(gone).toNumber()} left of what was bought`
  return tell(course, event.place, {
    message,
    related: isAllGone && left !== null ? [{ ...left, message: 'It left here' }] : [],
  })
}

/** A part that first appears when it leaves: a donor gave it and its rest was sold, or the note that bought it comes later. */
function neverBought(course: PartCourse, { event }: Said): Finding | null {
  const later = course.said.find(({ event: { action }, fact }) => fact.action !== null && bringsAnew.includes(action))
  if (later === undefined) return null
  return tell(course, event.place, {
    message: `Unexpected \`${event.action}\` of part \`${course.id}\` before it was ${later.event.action}, expected the notes the other way round or another name for the other part`,
    related: [{ ...later.event.place, message: `It was ${later.event.action} here` }],
  })
}

function tell(
  { id }: PartCourse,
  place: Place,
  { message, related }: { message: string; related: (Place & { message: string })[] },
): Finding {
  return finding('unlikely', place, { message: `${message}; it counts as written`, about: [id], related })
}
