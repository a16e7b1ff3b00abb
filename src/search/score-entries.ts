import { hitKinds, type SearchIndex } from './search-index.ts'
import type { WordWeights } from './weigh-word.ts'
import { wordsIn } from './words-in.ts'

interface Scoring {
  readonly index: SearchIndex
  /** One for each word. */
  readonly weights: readonly WordWeights[]
  /** One for each quantity: of each entry, how near it is, 0 for no answer. */
  readonly closeness: readonly Uint16Array[]
}

export interface Scores {
  /** 0: no answer. */
  readonly byEntry: Uint16Array
  readonly best: number
  readonly total: number
}

interface WordScore {
  readonly met: number
  readonly isNamed: boolean
  readonly score: number
}

const fullWords = 1000 // all words are the label's own
const fullLabel = 200 // the label says nothing else besides
const [measurement, quantity, text] = (['measurement', 'quantity', 'text'] as const).map(kind => hitKinds.indexOf(kind))
const noWords: WordScore = { met: 0, isNamed: false, score: 0 }

/** Scores each entry: all quantities must hold, and as many words as needed. A label counts twice what a sentence counts. */
export function scoreEntries(scoring: Scoring, needed: number): Scores {
  const { index, weights, closeness } = scoring
  const { kind } = index.entries
  const byEntry = new Uint16Array(kind.length)
  const near = nearness(scoring)
  const shown = new Int32Array(index.saids.length)
  // Most entries lack the first word: they go before anything is reckoned.
  const mustMeet = needed === weights.length ? weights[0] : undefined
  let [best, total] = [0, 0]
  const take = (entry: number): void => {
    const size = near === null ? 0 : (near[entry] ?? 0)
    if (near !== null && size === 0) return
    if (mustMeet !== undefined && !meets(index, mustMeet, entry)) return
    const words = weights.length === 0 ? noWords : wordScore(scoring, entry)
    if (words.met < needed || (closeness.length === 0 && !isWordHit(index, { entry, words, shown }))) return
    byEntry[entry] = size + words.score
    best = Math.max(best, size + words.score)
    total += 1
  }
  // Sentences last: what was found by name says them already.
  for (let entry = 0; entry < kind.length; entry += 1) if (kind[entry] !== text) take(entry)
  if (near === null) for (let entry = 0; entry < kind.length; entry += 1) if (kind[entry] === text) take(entry)
  return { byEntry, best, total }
}

interface WordHit {
  readonly entry: number
  readonly words: WordScore
  /** Of each said, the label under which it was shown, from 1. */
  readonly shown: Int32Array
}

/** Words alone find a figure by its name only. One sentence is one hit, and so is each name in it. */
function isWordHit({ entries }: SearchIndex, { entry, words, shown }: WordHit): boolean {
  const kind = entries.kind[entry]
  const said = entries.said[entry] ?? 0
  if (words.met === 0 || kind === quantity) return false
  if (kind === text) return shown[said] === 0
  if (kind !== measurement) return true
  const label = (entries.label[entry] ?? 0) + 1
  if (!words.isNamed || shown[said] === label) return false
  shown[said] = label
  return true
}

/** How near each entry is where one quantity was asked for; of several, all must be met in one sentence or of one thing. */
function nearness({ index, closeness }: Scoring): Uint16Array | null {
  const [first, ...others] = closeness
  if (first === undefined || others.length === 0) return first ?? null
  const { said, thing } = index.entries
  const [bySaid, byThing] = [new Uint32Array(index.saids.length), new Uint32Array(index.things.length)]
  const most = first.slice()
  for (const [bit, near] of closeness.entries())
    for (const [entry, size] of near.entries()) {
      if (size === 0) continue
      mark(bySaid, said[entry] ?? -1, bit)
      mark(byThing, thing[entry] ?? -1, bit)
      most[entry] = Math.max(most[entry] ?? 0, size)
    }
  const all = 2 ** closeness.length - 1
  return most.map((size, entry) =>
    bySaid[said[entry] ?? -1] === all || byThing[thing[entry] ?? -1] === all ? size : 0,
  )
}

function mark(masks: Uint32Array, at: number, bit: number): void {
  if (at >= 0) masks[at] = (masks[at] ?? 0) | (1 << bit)
}

function meets({ entries }: SearchIndex, { labels, saids }: WordWeights, entry: number): boolean {
  const [label, name, said] = [entries.label[entry] ?? -1, entries.name[entry] ?? -1, entries.said[entry] ?? -1]
  return (labels[label] ?? 0) + (labels[name] ?? 0) + (saids[said] ?? 0) > 0
}

function wordScore({ index, weights }: Scoring, entry: number): WordScore {
  const { label, name, said } = index.entries
  const at = { label: label[entry] ?? -1, name: name[entry] ?? -1, said: said[entry] ?? -1 }
  let [met, inLabel, inName, sum] = [0, 0, 0, 0]
  for (const { labels, saids } of weights) {
    const [byLabel, byName, bySaid] = [labels[at.label] ?? 0, labels[at.name] ?? 0, saids[at.said] ?? 0]
    if (byLabel > 0) inLabel += 1
    if (byName > 0) inName += 1
    const best = Math.max(2 * byLabel, 2 * byName, bySaid)
    if (best > 0) met += 1
    sum += best
  }
  if (met === 0) return noWords
  const whole = Math.max(wholeness(index, at.label, inLabel), wholeness(index, at.name, inName))
  const score = Math.round((sum * fullWords) / (200 * weights.length) + fullLabel * whole)
  return { met, isNamed: inLabel + inName > 0, score }
}

/** How much of a label the words that were asked for are. */
function wholeness(index: SearchIndex, label: number, met: number): number {
  return met === 0 ? 0 : Math.min(1, met / lengthOf(index, label))
}

const lengths = new WeakMap<SearchIndex, Uint16Array>()

/** How many words a label has. */
function lengthOf(index: SearchIndex, label: number): number {
  const known = lengths.get(index) ?? new Uint16Array(index.labels.length)
  lengths.set(index, known)
  if (known[label] === 0) known[label] = Math.max(1, wordsIn(index.labels[label] ?? '').length)
  return known[label] ?? 1
}
