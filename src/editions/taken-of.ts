import type { Fact } from '../facts/fact.ts'
import type { Taken } from './taken.ts'

/** What is no longer in a fact that was there, by what it is: prices, sources, numbers that identify. Marks are listed by themselves. */
export function takenOf(fact: Fact, left: Fact | null): Taken[] {
  if (left === fact || fact.type === 'reference' || fact.type === 'edition') return []
  switch (fact.type) {
    case 'mention':
      return [...costOf(fact, left), ...fromOf(fact, left)]
    case 'spend':
      return left === null ? [{ place: fact.place, as: 'cost', what: fact.what.text }] : []
    case 'donor':
      return left === null
        ? [{ place: fact.place, as: 'source', what: fact.name?.text ?? fact.id }]
        : costOf(fact, left)
    case 'property':
      return propertyOf(fact, left)
    default:
      return left === null ? [{ place: fact.place, as: 'cost', what: fact.type }] : []
  }
}

function costOf(fact: Extract<Fact, { type: 'mention' | 'donor' }>, left: Fact | null): Taken[] {
  const isLeft = left !== null && 'cost' in left && left.cost !== null
  return fact.cost === null || isLeft
    ? []
    : [{ place: fact.cost.place, as: 'cost', what: `${fact.cost.amount.amount} ${fact.cost.amount.currency}` }]
}

function fromOf({ from }: Extract<Fact, { type: 'mention' }>, left: Fact | null): Taken[] {
  const isLeft = left?.type === 'mention' && left.from !== null
  return from === null || isLeft ? [] : [{ place: from.place, as: 'source', what: from.words.text }]
}

function propertyOf(fact: Extract<Fact, { type: 'property' }>, left: Fact | null): Taken[] {
  const what = fact.value.type === 'words' ? fact.value.words.text : fact.key
  if (left === null) return [{ place: fact.place, as: fact.subject.kind === 'donor' ? 'source' : 'cost', what }]
  return fact.key === 'serial' && left.type === 'property' && left.value !== fact.value && fact.value.type === 'words'
    ? [{ place: fact.place, as: 'identity', what }]
    : []
}
