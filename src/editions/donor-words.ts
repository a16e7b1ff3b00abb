import type { DonorFact, Fact } from '../facts/fact.ts'
import type { MarkedWords } from '../facts/marked-words.ts'

/**
 * What names a donor, wherever it stands whole: its name, and the one word by which a builder calls it, `Corvane` of
 * `Corvane 1600 hatchback`. Without the second, an edition that withholds sources would still tell them in every sentence.
 */
export function donorWords(facts: readonly Fact[]): MarkedWords[] {
  return facts.flatMap(fact => (fact.type === 'donor' ? namesOf(fact) : []))
}

function namesOf({ id, name, place }: DonorFact): MarkedWords[] {
  if (name === null) return []
  return [name.text, ...shortNames(name.text, id)].map(text => ({ text, place, as: 'source', within: 'front' }))
}

/** Words with a capital that the identifier holds too, and a make: a first word before a number or another name. */
function shortNames(name: string, id: string): string[] {
  const inIdentifier = new Set(id.toLowerCase().split('-'))
  const words = name.match(/[\p{L}\p{N}]+/gu) ?? []
  return words.filter((word, at) => {
    if (!/^\p{Lu}\p{L}{2}/u.test(word)) return false
    return (
      inIdentifier.has(word.toLowerCase()) || (at === 0 && word.length > 3 && /^[\p{Lu}\p{N}]/u.test(words[1] ?? ''))
    )
  })
}
