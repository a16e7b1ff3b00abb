import type { Fact, MentionFact } from '../facts/fact.ts'
import { isNear } from '../facts/near-words.ts'
import { sessionKeys } from '../facts/note-keys.ts'
import { partDeeds, partWords } from '../facts/part-keys.ts'
import { type Finding, finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'

const shortest = 5 // letters: of shorter words, as belt and bolt, many are one letter apart
const noteKeys = Object.keys(sessionKeys)
const keys = [...noteKeys, ...Object.keys(partWords), ...Object.keys(partDeeds)]

/** New parts whose name is one letter away from a part of an earlier note or from a key; one that is given a `name:` was meant as it stands. */
export function findNearParts(facts: readonly Fact[]): Finding[] {
  const named = new Set(facts.flatMap(nameOf))
  const first = new Map<string, MentionFact>()
  return facts.flatMap(fact => {
    if (fact.type !== 'mention' || first.has(fact.part)) return []
    const known = [...first.values()].filter(({ session }) => session !== fact.session)
    first.set(fact.part, fact)
    return named.has(keyOf(fact.session, fact.part)) ? [] : (nearPart(fact, known) ?? nearKey(fact) ?? [])
  })
}

const keyOf = (session: string | null, part: string): string => `${session ?? ''}/${part}`

function nameOf(fact: Fact): string[] {
  if (fact.type !== 'property' || fact.subject.kind !== 'part' || fact.key !== 'name') return []
  return [keyOf(fact.session, fact.subject.id)]
}

const isLikely = (written: string, known: string): boolean =>
  Math.min(written.length, known.length) >= shortest &&
  Math.abs(written.length - known.length) <= 1 &&
  isNear(written, known)

function nearPart({ part, keyPlace }: MentionFact, known: readonly MentionFact[]): Finding | null {
  const meant = known.find(other => isLikely(part, other.part))
  if (meant === undefined) return null
  return tell(part, keyPlace, {
    expected: `the part \`${meant.part}\`, or a \`name:\` of its own if it is another`,
    mend: meant.part,
    related: [{ ...meant.keyPlace, message: `\`${meant.part}\` is named here` }],
  })
}

/** A key that stands too far in makes a part of itself. */
function nearKey({ part, keyPlace }: MentionFact): Finding | null {
  const meant = noteKeys.includes(part) ? part : keys.find(key => isLikely(part, key))
  if (meant === undefined) return null
  return tell(part, keyPlace, {
    expected: `the key \`${meant}:\` in its own place, or a \`name:\` if it is a part`,
    mend: null,
    related: [],
  })
}

interface Meant {
  readonly expected: string
  readonly mend: string | null
  readonly related: Finding['related']
}

function tell(part: string, place: Place, { expected, mend, related }: Meant): Finding {
  const message = `Unexpected new part \`${part}\`, expected ${expected}`
  return finding('near-name', place, { message, mend, about: [part], related })
}
