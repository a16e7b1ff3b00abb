import type { Action, Fact, MentionFact, Words } from '../facts/fact.ts'
import type { Place } from '../findings/place.ts'
import type { Held } from './held.ts'
import type { PartEvent, PartState } from './record.ts'

/** What the mentions of one part add up to. */
export interface PartCourse {
  readonly id: string
  readonly first: Place
  readonly events: PartEvent[]
  readonly mentions: PartEvent[]
  /** Each mention with the state before it and the quantity that its price is multiplied by; for the ledger. */
  readonly said: { readonly fact: MentionFact; readonly event: PartEvent; readonly before: PartState | null }[]
  state: PartState
  onVehicle: boolean
  /** Of the last fitting; null before the first. */
  fittedQty: string | null
  /** The quantity that an action without one takes over. */
  qty: string
  from: Held<Words> | null
  replaces: { readonly id: string; readonly place: Place } | null
}

/** Actions that share the part's one price, and its quantity with it. */
export const pricedActions: readonly Action[] = ['ordered', 'received', 'made', 'trial-fitted', 'fitted']

/** Follows each part through the mentions of all notes in order; what a new part takes the place of, leaves at the end of that note. */
export function foldEvents(facts: readonly Fact[]): ReadonlyMap<string, PartCourse> {
  const courses = new Map<string, PartCourse>()
  const mentions = facts.filter(fact => fact.type === 'mention')
  mentions.forEach((fact, at) => {
    const course = courses.get(fact.part) ?? startCourse(fact)
    courses.set(fact.part, course)
    follow(course, fact)
    if (mentions[at + 1]?.session !== fact.session) removeReplaced(courses, fact.session)
  })
  return courses
}

function startCourse({ part, keyPlace }: MentionFact): PartCourse {
  return {
    id: part,
    first: keyPlace,
    events: [],
    mentions: [],
    said: [],
    state: 'fitted',
    onVehicle: false,
    fittedQty: null,
    qty: '1',
    from: null,
    replaces: null,
  }
}

function follow(course: PartCourse, fact: MentionFact): void {
  const isFirst = course.events.length === 0
  const before = isFirst ? null : course.state
  const acts = fact.action !== null || isFirst
  const event = eventOf(course, fact, isFirst)
  if (acts) course.events.push(event)
  else if (saysMore(fact)) course.mentions.push(event)
  course.said.push({ fact, event, before })
  if (event.from !== null) course.from = event.from
  if (fact.replaces !== null) course.replaces = fact.replaces
  if (sharesQuantity(fact)) course.qty = event.qty
  if (acts) act(course, event.action)
  if (event.action === 'fitted' || (!acts && fact.qty !== null && course.fittedQty !== null))
    course.fittedQty = event.qty
}

function act(course: PartCourse, action: Action): void {
  course.state = action
  course.onVehicle = action === 'fitted' || (action === 'modified' && course.onVehicle)
}

/** What came back has its own quantity; any other mention without one takes over the quantity before it. */
function eventOf(course: PartCourse, fact: MentionFact, isFirst: boolean): PartEvent {
  const { session } = fact
  const action = fact.action?.word ?? (isFirst ? 'fitted' : course.state)
  const comesBack = fact.action !== null && (action === 'sold' || action === 'returned')
  return {
    session,
    action,
    written: fact.action !== null,
    place: fact.action?.place ?? fact.keyPlace,
    fits: fact.fits,
    qty: fact.qty?.amount ?? (comesBack ? '1' : course.qty),
    cost: fact.cost && { value: fact.cost.amount, place: fact.cost.place, session, figure: fact.cost.figure },
    from: fact.from && { value: fact.from.words, place: fact.from.place, session, figure: null },
    why: fact.why && { value: fact.why.words, place: fact.why.place, session, figure: null },
  }
}

const sharesQuantity = ({ action }: MentionFact): boolean => action === null || pricedActions.includes(action.word)
const saysMore = ({ fits, cost, qty, from, replaces, why }: MentionFact): boolean =>
  [fits, cost, qty, from, replaces, why].some(said => said !== null)

function removeReplaced(courses: ReadonlyMap<string, PartCourse>, session: string | null): void {
  for (const taker of courses.values()) {
    const gone = taker.replaces === null ? undefined : courses.get(taker.replaces.id)
    const isFitted = taker.events.some(event => event.session === session && event.action === 'fitted')
    if (gone === undefined || gone === taker || taker.replaces === null || !isFitted || !gone.onVehicle) continue
    if (gone.events.some(event => event.session === session && event.written)) continue
    gone.events.push(removedBy(taker.replaces.place, gone.qty, session))
    act(gone, 'removed')
  }
}

function removedBy(place: Place, qty: string, session: string | null): PartEvent {
  return { session, action: 'removed', written: false, place, fits: null, qty, cost: null, from: null, why: null }
}
