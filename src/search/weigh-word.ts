import type { Vocabulary, WordMatch } from './match-word.ts'
import type { SearchIndex } from './search-index.ts'

/** How well one word that was asked for is met: up to 100 for each label and each said. */
export interface WordWeights {
  readonly matches: readonly WordMatch[]
  readonly labels: Uint8Array
  readonly saids: Uint8Array
}

interface Weighing {
  readonly index: SearchIndex
  readonly vocabulary: Vocabulary
}

/** Looks up one word in all labels and saids. */
export function weighWord({ index, vocabulary }: Weighing, word: string): WordWeights {
  const matches = vocabulary.match(word)
  const labels = new Uint8Array(index.labels.length)
  const saids = new Uint8Array(index.saids.length)
  for (const { at, weight } of matches) {
    spread(labels, index.inLabels[at] ?? [], weight)
    spread(saids, index.inSaids[at] ?? [], weight)
  }
  return { matches, labels, saids }
}

function spread(weights: Uint8Array, differences: readonly number[], weight: number): void {
  let number = 0
  for (const difference of differences) {
    number += difference
    if ((weights[number] ?? 0) < weight) weights[number] = weight
  }
}
