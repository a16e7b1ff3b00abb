import type { DeclaredNames } from './declared-names.ts'
import type { PartCourse } from './fold-events.ts'
import { compareText } from './order-sessions.ts'
import { type PricedPart, pricePart } from './price-part.ts'
import { lastWords, type PropertyStore } from './property-store.ts'
import type { Purse } from './purse.ts'
import type { Part } from './record.ts'

export interface ListedPart {
  readonly part: Part
  readonly priced: PricedPart
}

interface PartGround {
  readonly courses: ReadonlyMap<string, PartCourse>
  readonly names: DeclaredNames
  readonly store: PropertyStore
  readonly purse: Purse
}

/** Every part that a note names, by identifier, with what it cost. */
export function listParts(ground: PartGround): ListedPart[] {
  const { courses } = ground
  const takers = new Map<string, string>()
  for (const { id, replaces } of courses.values()) if (replaces !== null) takers.set(replaces.id, id)
  return [...courses.values()]
    .sort((one, other) => compareText(one.id, other.id))
    .map(course => listPart(course, takers.get(course.id) ?? null, ground))
}

function listPart(course: PartCourse, replacedBy: string | null, { names, store, purse }: PartGround): ListedPart {
  const subject = { kind: 'part', id: course.id } as const
  const thing = store.thing(subject, subject, course.first)
  const wordsOf = (key: string): string | null => lastWords(store.history(subject, key))?.value.text ?? null
  const system = wordsOf('system')
  const priced = pricePart(course, { system, name: thing.name, named: thing.named?.value ?? null }, purse)
  const donor = course.from?.value.text ?? ''
  const part: Part = {
    ...thing,
    partKind: wordsOf('kind'),
    system,
    state: course.state,
    onVehicle: course.onVehicle,
    qty: course.fittedQty ?? course.qty,
    from: course.from,
    donor: names.of('donor').has(donor) ? donor : null,
    cost: priced.cost,
    value: priced.value === null ? null : purse.print(priced.value),
    events: course.events,
    mentions: course.mentions,
    replaces: course.replaces?.id ?? null,
    replacedBy,
  }
  return { part, priced }
}
