import type { Said } from './entry.ts'
import type { SearchIndex } from './search-index.ts'
import { wordsIn } from './words-in.ts'

/** Which words are in which labels and saids. */
export function wordTable(
  labels: readonly Said[],
  saids: readonly Said[],
): Pick<SearchIndex, 'words' | 'inLabels' | 'inSaids'> {
  const [inLabels, inSaids] = [holdersOf(labels), holdersOf(saids)]
  const words = [...new Set([...inLabels.keys(), ...inSaids.keys()])].sort()
  return {
    words,
    inLabels: words.map(word => differences(inLabels.get(word) ?? [])),
    inSaids: words.map(word => differences(inSaids.get(word) ?? [])),
  }
}

function holdersOf(texts: readonly Said[]): Map<string, number[]> {
  const holders = new Map<string, number[]>()
  for (const [number, { text, also }] of texts.entries()) {
    const found = new Set(wordsIn(also === '' ? text : `${text} ${also}`).map(({ word }) => word))
    for (const word of found) {
      const numbers = holders.get(word)
      if (numbers === undefined) holders.set(word, [number])
      else numbers.push(number)
    }
  }
  return holders
}

/** 3, 7, 8 as 3, 4, 1: shorter to write. */
const differences = (numbers: readonly number[]): number[] =>
  numbers.map((number, index) => number - (index === 0 ? 0 : (numbers[index - 1] ?? 0)))
