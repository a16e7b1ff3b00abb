import { findFigures, type OpenGroup, openGroup } from './find-figures.ts'
import { type Hit, hitOf } from './hit.ts'
import { Vocabulary } from './match-word.ts'
import { type Query, readQuery } from './read-query.ts'
import { type Scores, scoreEntries } from './score-entries.ts'
import type { SearchIndex } from './search-index.ts'
import { type WordWeights, weighWord } from './weigh-word.ts'

/** An index made ready for asking. */
interface OpenIndex {
  readonly index: SearchIndex
  readonly groups: ReadonlyMap<string, OpenGroup>
  readonly vocabulary: Vocabulary
}

export interface Answer {
  /** How what was asked was read. */
  readonly query: Query
  /** Best first, newest first among equals; no more than the limit. */
  readonly hits: readonly Hit[]
  readonly total: number
  /** Nothing holds all the words; these hold all but one. */
  readonly isPartial: boolean
}

/** Makes an index ready. What many askings share is made here, once. */
export function openIndex(index: SearchIndex): OpenIndex {
  const groups = new Map(index.figures.map(group => [group.name, openGroup(group)]))
  return { index, groups, vocabulary: new Vocabulary(index.words) }
}

/** What an index holds that answers words and quantities; all of them must hold. */
export function search(open: OpenIndex, asked: string, limit = Number.POSITIVE_INFINITY): Answer {
  const query = readQuery(asked, open.index)
  const weights = query.words.map(word => weighWord(open, word))
  const closeness = query.quantities.map(quantity => closenessOf(open, quantity.sizes))
  const scoring = { index: open.index, weights, closeness }
  const whole = scoreEntries(scoring, query.words.length)
  const mayMiss = whole.total === 0 && closeness.length === 0 && weights.length > 1
  const scores = mayMiss ? scoreEntries(scoring, query.words.length - 1) : whole
  const words = meantWords(open, weights)
  const hits = inOrder(scores, limit).map(entry =>
    hitOf(open.index, entry, { words, hasQuantity: closeness.length > 0 }),
  )
  return { query, hits, total: scores.total, isPartial: mayMiss && scores.total > 0 }
}

function closenessOf({ index, groups }: OpenIndex, sizes: Query['quantities'][number]['sizes']): Uint16Array {
  const closeness = new Uint16Array(index.entries.kind.length)
  for (const size of sizes) {
    const group = groups.get(size.group)
    if (group === undefined) continue
    findFigures(group, size, (entry, near) => {
      closeness[entry] = Math.max(near, closeness[entry] ?? 0)
    })
  }
  return closeness
}

function meantWords({ index }: OpenIndex, weights: readonly WordWeights[]): Set<string> {
  return new Set(weights.flatMap(({ matches }) => matches.map(({ at }) => index.words[at] ?? '')))
}

/** Entries by their score, the best first; equals stay in the order of the index. Counts, since thousands may answer. */
function inOrder({ byEntry, best, total }: Scores, limit: number): number[] {
  const places = new Uint32Array(best + 2)
  for (const score of byEntry) if (score > 0) places[best - score + 1] = (places[best - score + 1] ?? 0) + 1
  for (let at = 1; at < places.length; at += 1) places[at] = (places[at] ?? 0) + (places[at - 1] ?? 0)
  const order = new Array<number>(Math.min(limit, total))
  for (const [entry, score] of byEntry.entries()) {
    if (score === 0) continue
    const place = places[best - score] ?? 0
    places[best - score] = place + 1
    if (place < order.length) order[place] = entry
  }
  return order
}
