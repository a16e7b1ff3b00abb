import type { FactValue } from '../facts/fact.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { quantityAt } from '../record/lookups.ts'
import type { AsBuiltRecord, Held, Thing } from '../record/record.ts'
import { answer } from './answer.ts'
import type { Check } from './check.ts'
import { fusesLike, nextTo } from './next-sizes.ts'
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

/** What a check that is asked of a circuit says of it as it stands. */
interface Asked {
  readonly check: Check
  readonly subject: CheckSubject
  readonly answers: readonly ChoiceAnswer[]
}

/** For each circuit: one size down, the one fitted and two up, of the cable and of the fuse. `verdicts`: what was found as it stands. */
export function whatIfEach(
  record: AsBuiltRecord,
  checks: readonly Check[],
  verdicts: readonly Verdict[],
): ReadonlyMap<string, CircuitChoice[]> {
  const known = new Map<string, ChoiceAnswer[]>()
  for (const { check, subject, aspect, verdict, result, limit } of verdicts) {
    const key = `${check} ${subject}`
    known.set(key, [...(known.get(key) ?? []), { check, aspect, verdict, result, limit }])
  }
  const asked = new Map<string, Asked[]>()
  for (const check of checks.filter(({ subject }) => subject.kind === 'circuit'))
    for (const { subject } of check.subject.find(record)) {
      const isWorth = isWorthAsking(check.worthAsking, { record, subject, notebook: new Notebook() })
      const answers = isWorth ? (known.get(`${check.id} ${subject.id}`) ?? answersOf(check, { record, subject })) : []
      asked.set(subject.id, [...(asked.get(subject.id) ?? []), { check, subject, answers }])
    }
  return new Map(record.circuits.map(circuit => [circuit.id, choicesOf(record, circuit, asked.get(circuit.id) ?? [])]))
}

/** The same for one circuit, each size asked of a record that differs in that only. */
export function whatIf(record: AsBuiltRecord, checks: readonly Check[], circuit: Thing): CircuitChoice[] {
  return whatIfEach({ ...record, circuits: record.circuits }, checks, []).get(circuit.id) ?? []
}

function choicesOf(record: AsBuiltRecord, circuit: Thing, asked: readonly Asked[]): CircuitChoice[] {
  const choice = (what: Part, fitted: Quantity, size: Quantity): CircuitChoice => ({
    what,
    said: size.text,
    isFitted: size === fitted,
    answers:
      size === fitted
        ? asked.flatMap(({ answers }) => answers)
        : answersWith(withSize(record, circuit, { what, size }), { what, circuit, asked }),
  })
  const [cable, fuse] = [quantityAt(circuit, 'cable.area')?.value, quantityAt(circuit, 'fuse.rating')?.value]
  return [
    ...(cable === undefined
      ? []
      : nextTo(cable, cableSizes[cable.unit] ?? []).map(size => choice('cable', cable, size))),
    ...(fuse === undefined ? [] : nextTo(fuse, fusesLike(circuit, fuse)).map(size => choice('fuse', fuse, size))),
  ]
}

/** A check that reads nothing of what was changed says what it said. */
function answersWith(
  changed: AsBuiltRecord,
  { what, circuit, asked }: { what: Part; circuit: Thing; asked: readonly Asked[] },
): ChoiceAnswer[] {
  const thing = changed.circuits.find(({ id }) => id === circuit.id) ?? circuit
  return asked.flatMap(({ check, subject, answers }) =>
    standsOn(check, what) ? answersOf(check, { record: changed, subject: { ...subject, thing } }) : answers,
  )
}

type Part = CircuitChoice['what']

/** What a circuit's other size changes: the figures that take it, and those that were true of the fitted one only. */
const changedBy: Readonly<Record<Part, { readonly sized: readonly string[]; readonly gone: readonly string[] }>> = {
  cable: { sized: ['cable.area', 'return.area'], gone: ['cable.rating', 'return.rating'] },
  fuse: { sized: ['fuse.rating'], gone: ['fuse.let-through', 'fuse.clears'] },
}

/** Whether a check reads what a choice changes, by what its inputs say that they read. */
function standsOn({ inputs }: Check, what: Part): boolean {
  const keys = [...changedBy[what].sized, ...changedBy[what].gone].map(key => `circuit/${key}`)
  return Object.values(inputs).some(({ reads }) => reads.some(path => keys.includes(path)))
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

/** A thicker cable goes there and back, and its maker's rating was another cable's. */
function withSize(
  record: AsBuiltRecord,
  circuit: Thing,
  { what, size }: { what: Part; size: Quantity },
): AsBuiltRecord {
  const { sized, gone } = changedBy[what]
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
