import type { Fact } from '../facts/fact.ts'

export interface Changes {
  /** The part was made, modified or replaced, or took another's place, in that note: measured again it may well differ. */
  readonly isChanged: (part: string, session: string | null) => boolean
  /** The kind that was said last. */
  readonly partKind: (part: string) => string | null
}

/** What is known of each part before its values are folded. */
export function findChanges(facts: readonly Fact[]): Changes {
  const changed = new Set<string>()
  const kinds = new Map<string, string | null>()
  const keyOf = (part: string, session: string | null): string => `${session ?? ''}/${part}`
  for (const fact of facts) {
    if (fact.type === 'property' && fact.subject.kind === 'part' && fact.key === 'kind')
      kinds.set(fact.subject.id, fact.value.type === 'words' ? fact.value.words.text : null)
    if (fact.type !== 'mention') continue
    const isWork = fact.action?.word === 'made' || fact.action?.word === 'modified'
    if (isWork || fact.replaces !== null) changed.add(keyOf(fact.part, fact.session))
    if (fact.replaces !== null) changed.add(keyOf(fact.replaces.id, fact.session))
  }
  return {
    isChanged: (part, session) => changed.has(keyOf(part, session)),
    partKind: part => kinds.get(part) ?? null,
  }
}
