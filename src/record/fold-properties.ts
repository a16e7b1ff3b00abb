import type { DonorFact, Fact, FactValue, MentionFact, PropertyFact, Subject } from '../facts/fact.ts'
import { type Finding, finding } from '../findings/finding.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { countQuantity } from './count-quantity.ts'
import type { DeclaredNames } from './declared-names.ts'
import { pricedActions } from './fold-events.ts'
import type { Held } from './held.ts'
import { judgeValue } from './judge-value.ts'
import { makePropertyStore, type PropertyStore } from './property-store.ts'
import { pathText, resolveName } from './resolve-name.ts'

/** A property fact with the thing that it turned out to be about. */
export interface PlacedFact {
  readonly fact: PropertyFact
  readonly subject: Subject
  readonly held: Held<FactValue>
}

export interface FoldedProperties {
  readonly store: PropertyStore
  readonly placed: readonly PlacedFact[]
  readonly findings: readonly Finding[]
}

interface PropertyGround {
  readonly names: DeclaredNames
  /** The part was made, modified or replaced in that note. */
  readonly isChanged: (part: string, session: string | null) => boolean
  readonly partKind: (part: string) => string | null
  readonly approximateShare: number
}

/** Folds what all notes in order say of each property: only what is named changes, what was said before stays in the history. */
export function foldProperties(facts: readonly Fact[], ground: PropertyGround): FoldedProperties {
  const fold: Fold = { store: makePropertyStore(), placed: [], findings: [], observed: new Set(), ground }
  for (const fact of facts) {
    if (fact.type === 'mention') foldMention(fold.store, fact)
    else if (fact.type === 'donor') foldDonor(fold.store, fact)
    else if (fact.type === 'property') foldProperty(fold, fact)
  }
  return fold
}

interface Fold extends FoldedProperties {
  readonly placed: PlacedFact[]
  readonly findings: Finding[]
  readonly observed: Set<Held<FactValue>>
  readonly ground: PropertyGround
}

/** How many there are is a property too, as `duct/qty`; what came back does not change it. */
function foldMention(store: PropertyStore, { part, keyPlace, qty, action, session }: MentionFact): void {
  const subject = { kind: 'part', id: part } as const
  store.meet(subject, keyPlace)
  if (qty === null || (action !== null && !pricedActions.includes(action.word))) return
  const quantity = countQuantity(qty.amount)
  store.hold(subject, 'qty', { value: { type: 'quantity', quantity }, place: qty.place, session, figure: null })
}

function foldDonor(store: PropertyStore, { id, name, place, session }: DonorFact): void {
  const subject = { kind: 'donor', id } as const
  store.meet(subject, place)
  if (name !== null)
    store.hold(subject, 'name', { value: { type: 'words', words: name }, place, session, figure: null })
}

function foldProperty(fold: Fold, fact: PropertyFact): void {
  const subject = placeFact(fold, fact)
  const held: Held<FactValue> = { value: fact.value, place: fact.place, session: fact.session, figure: fact.figure }
  judge(fold, fact, subject)
  fold.store.meet(subject, fact.keyPlace)
  const isTakenBackAlready =
    held.value.type === 'nothing' && fold.store.history(subject, fact.key).at(-1)?.value.type === 'nothing'
  if (!isTakenBackAlready) fold.store.hold(subject, fact.key, held)
  fold.placed.push({ fact, subject, held })
  if (fact.observed) fold.observed.add(held)
  takeBack(fold.store, { fact, subject, held })
}

/** The thing that a fact is about. `wall` is one property, of the volume and of its part. */
function placeFact({ findings, ground: { names } }: Fold, fact: PropertyFact): Subject {
  const { subject, key } = fact
  if (subject.kind === 'volume' && key === 'wall') return { kind: 'part', id: subject.id }
  if (!fact.bare) return names.home(subject)
  const [found, ...others] = resolveName(subject.id, ({ kind, id }) => names.of(kind).has(id))
  if (found === undefined) return subject
  if (others.length === 0) return names.home(found)
  findings.push(askForKind(fact, [found, ...others]))
  return subject
}

function askForKind(fact: PropertyFact, meant: readonly Subject[]): Finding {
  const written = pathText(fact.subject, fact.key)
  const [first = fact.subject] = meant
  return finding('unknown-target', fact.keyPlace, {
    message: `Unexpected \`${written}\`, which may be of the ${meant.map(({ kind }) => kind).join(' or of the ')} \`${fact.subject.id}\`, expected the kind in front of it`,
    mend: pathText(first, fact.key),
    about: meant.map(subject => pathText(subject, fact.key)),
  })
}

function judge({ store, findings, observed, ground }: Fold, fact: PropertyFact, subject: Subject): void {
  if (fact.value.type !== 'quantity') return
  const isPart = subject.kind === 'part'
  const last = store.history(subject, fact.key).at(-1)
  const before = last === undefined ? null : asFigure(last)
  const found = judgeValue({
    subject,
    fact,
    quantity: fact.value.quantity,
    before: before === null || last === undefined ? null : { held: before, observed: observed.has(last) },
    isChanged: isPart && ground.isChanged(subject.id, fact.session),
    partKind: isPart ? ground.partKind(subject.id) : null,
    approximateShare: ground.approximateShare,
  })
  if (found !== null) findings.push(found)
}

function asFigure(held: Held<FactValue>): Held<Quantity> | null {
  return held.value.type === 'quantity' ? { ...held, value: held.value.quantity } : null
}

/** `fuse: ~` takes back all that is below it, and `return: chassis` what was said of a cable. */
function takeBack(store: PropertyStore, { fact, subject, held }: PlacedFact): void {
  const isChassis =
    subject.kind === 'circuit' &&
    fact.key === 'return' &&
    fact.value.type === 'words' &&
    fact.value.words.text === 'chassis'
  if (fact.value.type !== 'nothing' && !isChassis) return
  for (const key of store.keys(subject)) {
    const last = store.history(subject, key).at(-1)
    if (!key.startsWith(`${fact.key}.`) || last === undefined || last.value.type === 'nothing') continue
    store.hold(subject, key, { ...held, value: { type: 'nothing' }, figure: null })
  }
}
