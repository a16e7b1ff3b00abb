import type { FactValue } from '../facts/fact.ts'
import { plainReading, type Quantity } from '../quantities/quantity.ts'
import { readOneQuantity } from '../quantities/read-one-quantity.ts'
import { latest, quantityAt } from '../record/lookups.ts'
import type { AsBuiltRecord, Held, Thing } from '../record/record.ts'
import { answer } from './answer.ts'
import type { Check } from './check.ts'
import { Notebook } from './notebook.ts'
import { isWorthAsking } from './run-checks.ts'
import type { CheckSubject, Scope } from './scope.ts'
import { cableSizes } from './tables/conductor-resistance.ts'
import type { Verdict } from './verdict.ts'
import { bareAnswer } from './word-answer.ts'

/** What one check would say. */
export type ChoiceAnswer = Pick<Verdict, 'check' | 'aspect' | 'verdict' | 'result' | 'limit'>

/** A circuit with another cable, or another fuse: what its checks would say then. */
export interface CircuitChoice {
  readonly what: 'cable' | 'fuse'
  /** `4 mm²`, as a merchant says it. */
  readonly said: string
  readonly isFitted: boolean
  readonly answers: readonly ChoiceAnswer[]
}

// Ratings in amperes: blade fuses by ISO 8820-3, bolted strip fuses by ISO 8820-5, as makers list them.
const bladeFuses = [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40]
const stripFuses = [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 250, 300, 400, 500]

/** One size down, the one fitted and two up, of the cable and of the fuse, each asked of a record that differs in that only. */
export function whatIf(record: AsBuiltRecord, checks: readonly Check[], circuit: Thing): CircuitChoice[] {
  const asked = checks.flatMap(check => subjectsOf(record, check, circuit))
  const choice = (what: CircuitChoice['what'], fitted: Quantity, size: Quantity): CircuitChoice => {
    const changed = size === fitted ? record : withSize(record, circuit, { what, size })
    const thing = changed.circuits.find(({ id }) => id === circuit.id) ?? circuit
    const answers = asked.flatMap(({ check, subject }) =>
      answersOf(check, { record: changed, subject: { ...subject, thing } }),
    )
    return { what, said: size.text, isFitted: size === fitted, answers }
  }
  const [cable, fuse] = [quantityAt(circuit, 'cable.area')?.value, quantityAt(circuit, 'fuse.rating')?.value]
  return [
    ...(cable === undefined
      ? []
      : nextTo(cable, cableSizes[cable.unit] ?? []).map(size => choice('cable', cable, size))),
    ...(fuse === undefined ? [] : nextTo(fuse, fusesLike(circuit, fuse)).map(size => choice('fuse', fuse, size))),
  ]
}

function subjectsOf(record: AsBuiltRecord, check: Check, { id }: Thing): { check: Check; subject: CheckSubject }[] {
  if (check.subject.kind !== 'circuit') return []
  return check.subject.find(record).flatMap(({ subject }) => (subject.id === id ? [{ check, subject }] : []))
}

/** What a check says of a circuit, in each of its aspects; nothing where it is not worth asking. */
function answersOf(check: Check, ground: Pick<Scope, 'record' | 'subject'>): ChoiceAnswer[] {
  const scope = (): Scope => ({ ...ground, notebook: new Notebook() })
  if (!isWorthAsking(check.worthAsking, scope())) return []
  const aspects = check.aspects === undefined ? [null] : Object.keys(check.aspects)
  return aspects
    .filter(aspect => aspect === null || isWorthAsking(check.aspects?.[aspect]?.worthAsking ?? 'always', scope()))
    .map(aspect => bareAnswer(answer(check, aspect, scope())))
}

function fusesLike(circuit: Thing, fuse: Quantity): string[] {
  const type = latest(circuit, 'fuse.type')?.value
  const isStrip = type?.type === 'words' ? !/blade/i.test(type.words.text) : (fuse.si ?? 0) > 40
  return fuse.unit === 'A' ? (isStrip ? stripFuses : bladeFuses).map(amperes => `${amperes} A`) : []
}

function nextTo(fitted: Quantity, sizes: readonly string[]): Quantity[] {
  const read = sizes.flatMap(text => readOneQuantity(text, plainReading) ?? [])
  const bySize = [...read].sort((one, other) => (one.si ?? 0) - (other.si ?? 0))
  const own = fitted.si
  if (own === null) return []
  const less = bySize.filter(({ si }) => si !== null && si < own * (1 - 1e-9))
  const more = bySize.filter(({ si }) => si !== null && si > own * (1 + 1e-9))
  return [...less.slice(-1), fitted, ...more.slice(0, 2)]
}

/** A thicker cable goes there and back, and its maker's rating was another cable's. */
function withSize(
  record: AsBuiltRecord,
  circuit: Thing,
  { what, size }: { what: 'cable' | 'fuse'; size: Quantity },
): AsBuiltRecord {
  const [sized, gone] =
    what === 'fuse'
      ? [['fuse.rating'], ['fuse.let-through', 'fuse.clears']]
      : [
          ['cable.area', 'return.area'],
          ['cable.rating', 'return.rating'],
        ]
  const changed = { ...circuit.properties }
  for (const key of sized) put(changed, key, { type: 'quantity', quantity: size })
  for (const key of gone) put(changed, key, { type: 'nothing' })
  const instead: Thing = { ...circuit, properties: changed }
  return { ...record, circuits: record.circuits.map(known => (known.id === circuit.id ? instead : known)) }
}

/** Replaces what stands; what was never said stays unsaid. */
function put(properties: Record<string, readonly Held<FactValue>[]>, key: string, value: FactValue): void {
  const history = properties[key]
  const standing = history?.at(-1)
  if (history !== undefined && standing !== undefined)
    properties[key] = [...history.slice(0, -1), { ...standing, value }]
}
