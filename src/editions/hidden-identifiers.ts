import type { Fact, Words } from '../facts/fact.ts'

/**
 * Identifiers that the tool made from words of which some are withheld, each with one made from what is left.
 * An identifier that the builder wrote is not among them: withheld words in it are the builder's to mend.
 */
export function hiddenIdentifiers(facts: readonly Fact[], covered: (words: Words) => Words): Map<string, string> {
  const taken = new Set(facts.flatMap(identifiersOf))
  const names = new Map<string, string>()
  for (const fact of facts) {
    const made = madeFromWords(fact)
    if (made === null || names.has(made.id)) continue
    const left = covered(made.words).text
    if (left === made.words.text) continue
    const name = freeName(slug(left), taken)
    taken.add(name)
    names.set(made.id, name)
  }
  return names
}

function madeFromWords(fact: Fact): { id: string; words: Words } | null {
  if (fact.type === 'job') return fact.explicit ? null : { id: fact.id, words: fact.words }
  if (fact.type === 'temporary') return fact.id === slug(fact.what.text) ? { id: fact.id, words: fact.what } : null
  if (fact.type !== 'property' || fact.key !== 'name' || fact.value.type !== 'words') return null
  const { id } = fact.subject
  return id === slug(fact.value.words.text) ? { id, words: fact.value.words } : null
}

function identifiersOf(fact: Fact): string[] {
  if (fact.type === 'property') return [fact.subject.id]
  if (fact.type === 'mention') return [fact.part]
  return 'id' in fact ? [fact.id] : []
}

function freeName(wanted: string, taken: ReadonlySet<string>): string {
  let name = wanted
  for (let count = 2; taken.has(name); count++) name = `${wanted}-${count}`
  return name
}

/** Words as an identifier: marks removed, lower case, every run of other letters one hyphen. */
export function slug(words: string): string {
  const plain = words.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()
  return plain.replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '')
}
