import type { PropertyFact, Subject } from '../facts/fact.ts'
import { dimensionsOf, propertiesOf } from '../facts/kinds.ts'
import { type Finding, finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import { type DeclaredNames, otherKinds } from './declared-names.ts'
import type { PlacedFact } from './fold-properties.ts'
import { nearName } from './near-name.ts'
import { pathText } from './resolve-name.ts'

/** Measured things and volumes that nobody declared, and properties that nobody knows, one edit away from one that is known. */
export function findNearNames(placed: readonly PlacedFact[], names: DeclaredNames): Finding[] {
  const seen = new Map<string, Set<string>>()
  const all = allNames(names)
  return placed.flatMap(({ fact, ...entry }) => {
    if (!fact.observed && fact.subject.kind !== 'volume') return []
    const subject = partOf(entry.subject)
    const thing = `${subject.kind}:${subject.id}`
    const known = seen.get(thing) ?? new Set<string>()
    const isNew = known.size === 0 && !names.of(subject.kind).has(subject.id) && !builtIn.includes(subject.kind)
    const found = (isNew ? nearThing(fact, subject, all) : null) ?? nearProperty(fact, subject, known)
    seen.set(thing, known.add(fact.key))
    return found ?? []
  })
}

const builtIn = ['vehicle', 'build']

/** A volume is the volume of a part. */
const partOf = (subject: Subject): Subject => (subject.kind === 'volume' ? { kind: 'part', id: subject.id } : subject)

type AllNames = ReadonlyMap<string, { readonly subject: Subject; readonly place: Place }>

/** Every declared name, a part's before that of another kind. */
function allNames(names: DeclaredNames): AllNames {
  const all = new Map<string, { subject: Subject; place: Place }>()
  for (const kind of ['part', ...otherKinds] as const)
    for (const [id, place] of names.of(kind)) if (!all.has(id)) all.set(id, { subject: { kind, id }, place })
  return all
}

/** Told once for a thing, where it was measured first. */
function nearThing(fact: PropertyFact, subject: Subject, all: AllNames): Finding | null {
  const near = nearName(subject.id, all.keys())
  const meant = near === null ? undefined : all.get(near)
  if (near === null || meant === undefined) return null
  return finding('near-name', fact.keyPlace, {
    message: `Unexpected \`${subject.id}\`, expected the ${meant.subject.kind.replace('-', ' ')} \`${near}\` or a name less like it`,
    mend: near,
    about: [pathText(subject, fact.key)],
    related: [{ ...meant.place, message: `\`${near}\` is named here` }],
  })
}

function nearProperty(fact: PropertyFact, subject: Subject, known: ReadonlySet<string>): Finding | null {
  const isKnown = known.has(fact.key) || dimensionsOf(fact.key).length > 0 || propertiesOf(null).includes(fact.key)
  const near = isKnown ? null : nearName(fact.key, known)
  if (near === null) return null
  return finding('near-name', fact.keyPlace, {
    message: `Unexpected property \`${fact.key}\` of \`${subject.id}\`, expected \`${near}\` as before or a name less like it`,
    mend: near,
    about: [pathText(subject, fact.key)],
  })
}
