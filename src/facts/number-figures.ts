import type { Nodes, Root } from 'mdast'
import type {} from '../../plugins/quantities/node.ts'
import { comparePlaces } from '../findings/place.ts'
import type { Fact, FactValue } from './fact.ts'
import type { Figure } from './stated-note.ts'

/** Names the figures of a note `q-1`, `q-2` … in the order of its text, in the list, in the facts and in the body. */
export function numberFigures({
  figures,
  facts,
  body,
}: {
  figures: readonly Figure[]
  facts: readonly Fact[]
  body: Root
}): {
  figures: Figure[]
  facts: Fact[]
} {
  const sorted = figures.toSorted((a, b) => comparePlaces(a.place, b.place))
  const names = new Map(sorted.map(({ id }, index) => [id, `q-${index + 1}`]))
  const nameOf = (id: string): string => names.get(id) ?? id
  nameNodes(body, nameOf)
  return {
    figures: sorted.map(figure => ({ ...figure, id: nameOf(figure.id) })),
    facts: facts.map(fact => renamed(fact, nameOf)),
  }
}

type NameOf = (id: string) => string

function renamed(fact: Fact, nameOf: NameOf): Fact {
  if (fact.type === 'property')
    return {
      ...fact,
      figure: fact.figure === null ? null : nameOf(fact.figure),
      value: renamedValue(fact.value, nameOf),
    }
  if (fact.type !== 'mention' && fact.type !== 'spend' && fact.type !== 'donor') return fact
  if (fact.cost === null || fact.cost.figure === null) return fact
  return { ...fact, cost: { ...fact.cost, figure: nameOf(fact.cost.figure) } }
}

function renamedValue(value: FactValue, nameOf: NameOf): FactValue {
  if (value.type !== 'shapes') return value
  return { ...value, shapes: value.shapes.map(shape => ({ ...shape, figures: shape.figures.map(nameOf) })) }
}

function nameNodes(body: Root, nameOf: NameOf): void {
  const waiting: Nodes[] = [body]
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (node.type === 'quantity' && node.id !== undefined) node.id = nameOf(node.id)
    if ('children' in node) waiting.push(...node.children)
  }
}
