import type { Fact, ReferenceFact } from '../facts/fact.ts'
import { readPath } from '../facts/identifier.ts'
import { type Finding, finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import type { DeclaredNames } from './declared-names.ts'
import { resolvePath } from './lookups.ts'
import { likelyName, nearName } from './near-name.ts'
import type { AsBuiltRecord } from './record.ts'
import { findTargets, leadsToProperty, type Target } from './reference-targets.ts'

interface ReferenceGround {
  readonly record: AsBuiltRecord
  readonly names: DeclaredNames
  readonly photos: readonly string[]
  readonly checks: readonly string[]
}

/** Names that lead nowhere, and free names that are near to one that leads somewhere. */
export function checkReferences(facts: readonly Fact[], ground: ReferenceGround): Finding[] {
  const targets = findTargets(ground)
  return facts.flatMap(fact => {
    if (fact.type === 'property') return checkPinEnd(fact, ground.record) ?? []
    if (fact.type !== 'reference') return []
    const target = targets[fact.to]
    if (fact.strictness === 'must-exist')
      return target.leads(fact.name, fact.place.file) ? [] : [leadsNowhere(fact, target)]
    return checkPath(fact, ground.record) ?? checkNear(fact, target, ground.names) ?? []
  })
}

function leadsNowhere({ name, to, place }: ReferenceFact, { expected, known }: Target): Finding {
  return finding('unknown-target', place, {
    message: `Unexpected \`${name}\`, expected ${expected}`,
    mend: likelyName(name, known),
    about: [to === 'path' || to === 'measurement' ? name : `${to}:${name}`],
  })
}

/** A path that may be words is looked up where its thing is declared. */
function checkPath(fact: ReferenceFact, record: AsBuiltRecord): Finding | null {
  return fact.to === 'path' ? checkWordsAsPath(fact.name, fact.place, record) : null
}

/** `to:` of a pin: words, or a path. */
function checkPinEnd(
  { subject, key, value, place }: Extract<Fact, { type: 'property' }>,
  record: AsBuiltRecord,
): Finding | null {
  if (subject.kind !== 'connector' || !/^pins\..+\.to$/.test(key) || value.type !== 'words') return null
  return checkWordsAsPath(value.words.text, place, record)
}

function checkWordsAsPath(words: string, place: Place, record: AsBuiltRecord): Finding | null {
  const written = readPath(words)
  if (written === null || written.property === null) return null
  const found = resolvePath(record, words)
  if (found === null || leadsToProperty(record, words)) return null
  return finding('unknown-target', place, {
    message: `Unexpected \`${words}\`, expected a property or a pin that \`${written.subject.id}\` has`,
    about: [words],
  })
}

function checkNear(fact: ReferenceFact, target: Target, names: DeclaredNames): Finding | null {
  const { name, to, place } = fact
  const isUsedOnly = (to === 'loom' || to === 'earth-point') && names.isOnlyUsed({ kind: to, id: name })
  if (target.leads(name, place.file) && !isUsedOnly) return null
  // Of two names that circuits alone give to looms, the one that was written first counts.
  const known = isUsedOnly ? target.known.slice(0, target.known.indexOf(name)) : target.known
  const near = nearName(name, known)
  if (near === null) return null
  return finding('near-name', place, {
    message: `Unexpected \`${name}\`, expected the ${target.kind} \`${near}\` or a name less like it`,
    mend: near,
    about: [`${to}:${near}`],
    related: related(names, { to, near }),
  })
}

function related(names: DeclaredNames, { to, near }: { to: ReferenceFact['to']; near: string }): Finding['related'] {
  const kind = (['part', 'circuit', 'connector', 'loom', 'donor', 'system', 'earth-point'] as const).find(
    known => known === to,
  )
  const place = kind === undefined ? undefined : names.of(kind).get(near)
  return place === undefined ? [] : [{ ...place, message: `\`${near}\` is named here` }]
}
