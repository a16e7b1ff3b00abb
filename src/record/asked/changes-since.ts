import type { FactValue } from '../../facts/fact.ts'
import type { Held } from '../held.ts'
import type { LedgerLine } from '../ledger.ts'
import type { AsBuiltRecord, Job, Measurement, Part, Session, Temporary, Thing } from '../record.ts'
import { subtractAmounts } from './add-amounts.ts'

export interface Change<T> {
  /** Null: it is new. */
  readonly before: T | null
  readonly after: T
}

/** One property of a circuit or a connector that says something else now. */
export interface StatementChange extends Change<FactValue> {
  readonly thing: Thing
  readonly key: string
  readonly held: Held<FactValue>
}

/** What the later notes of a record changed. */
export interface Changes {
  readonly sessions: readonly Session[]
  /** New, or in another state or place than before. */
  readonly parts: readonly Change<Part>[]
  /** New, or measured again; what is measured again with the same words counts too. */
  readonly measurements: readonly Change<Measurement>[]
  readonly circuits: readonly StatementChange[]
  readonly connectors: readonly StatementChange[]
  readonly opened: readonly (Job | Temporary)[]
  readonly closed: readonly (Job | Temporary)[]
  /** Lines of the later sessions, and what they come to. */
  readonly money: readonly LedgerLine[]
  readonly paid: string
}

/** Compares a record with the same record as it stood after fewer sessions. */
export function changesSince(before: AsBuiltRecord, after: AsBuiltRecord): Changes {
  const known = new Set(before.sessions.map(({ id }) => id))
  const sessions = after.sessions.filter(({ id }) => !known.has(id))
  const later = new Set<string | null>(sessions.map(({ id }) => id))
  return {
    sessions,
    parts: changed(before.parts, after.parts, ({ id }) => id).filter(isOtherPart),
    measurements: changed(standing(before), standing(after), ({ path }) => path).filter(
      ({ before: earlier, after: now }) => earlier?.session !== now.session || earlier?.figure !== now.figure,
    ),
    circuits: statements(before.circuits, after.circuits),
    connectors: statements(before.connectors, after.connectors),
    opened: turned(before, after, true),
    closed: turned(before, after, false),
    money: after.ledger.lines.filter(({ session }) => later.has(session)),
    paid: subtractAmounts(after.ledger.total, before.ledger.total, after.ledger.currency),
  }
}

function changed<T>(before: readonly T[], after: readonly T[], keyOf: (one: T) => string): Change<T>[] {
  const earlier = new Map(before.map(one => [keyOf(one), one]))
  return after.map(one => ({ before: earlier.get(keyOf(one)) ?? null, after: one }))
}

function isOtherPart({ before, after }: Change<Part>): boolean {
  return (
    before === null ||
    before.state !== after.state ||
    before.onVehicle !== after.onVehicle ||
    before.qty !== after.qty ||
    before.replacedBy !== after.replacedBy ||
    before.events.length !== after.events.length
  )
}

/** What stands of each path: a note may measure it twice, and its last figure counts. */
function standing({ measurements }: AsBuiltRecord): Measurement[] {
  const current = measurements.filter(({ superseded }) => !superseded)
  return [...new Map(current.map(measured => [measured.path, measured])).values()]
}

function statements(before: readonly Thing[], after: readonly Thing[]): StatementChange[] {
  const earlier = new Map(before.map(thing => [thing.id, thing]))
  return after.flatMap(thing =>
    Object.entries(thing.properties).flatMap(([key, history]): StatementChange[] => {
      const held = history.at(-1)
      const was = earlier.get(thing.id)?.properties[key]?.at(-1) ?? null
      if (held === undefined || (was !== null && says(was.value) === says(held.value))) return []
      return [{ thing, key, held, before: was?.value ?? null, after: held.value }]
    }),
  )
}

/** A value as its words alone, so that its place does not count. */
function says(value: FactValue): string {
  switch (value.type) {
    case 'quantity':
      return value.quantity.text
    case 'words':
      return value.words.text
    case 'list':
      return JSON.stringify(value.entries.map(({ words }) => words.text))
    case 'shapes':
      return JSON.stringify(value.shapes.map(({ text }) => text))
    case 'nothing':
      return '\0' // no words
  }
}

function turned(before: AsBuiltRecord, after: AsBuiltRecord, open: boolean): (Job | Temporary)[] {
  const wasOpen = new Map<string, boolean>()
  for (const job of before.jobs) wasOpen.set(`job ${job.id}`, job.open)
  for (const fix of before.temporary) wasOpen.set(`fix ${fix.id}`, fix.open)
  const isTurned = (key: string, now: boolean): boolean => now === open && (wasOpen.get(key) ?? false) !== now
  const startedAndDone = (key: string, now: boolean): boolean => !open && !now && !wasOpen.has(key)
  return [
    ...after.jobs.filter(job => isTurned(`job ${job.id}`, job.open) || startedAndDone(`job ${job.id}`, job.open)),
    ...after.temporary.filter(fix => isTurned(`fix ${fix.id}`, fix.open) || startedAndDone(`fix ${fix.id}`, fix.open)),
  ]
}
