import MiniSearch from 'minisearch'

/** A word of the record that may be meant by one that was asked for; `weight` up to 100. */
export interface WordMatch {
  readonly at: number
  readonly weight: number
}

const weights = { same: 100, plural: 95, begins: 70, swapped: 55, near: 50 } // order of trust, set by hand
const shortestBeginning = 2 // letters
const shortestMistaken = 4 // letters; shorter words have too many neighbours

/** Finds a record's words by one that was asked for: the same, its plural, what begins with it; if there is none, what it was mistyped from. */
export class Vocabulary {
  readonly words: readonly string[]
  #near: MiniSearch<{ id: number; word: string }> | null = null

  constructor(words: readonly string[]) {
    this.words = words
  }

  /** Makes ready for mistyped words, which takes a moment that is better spent before one comes. */
  prepare(): void {
    if (this.#near !== null) return
    this.#near = new MiniSearch({ fields: ['word'], tokenize: word => [word], processTerm: word => word })
    this.#near.addAll(this.words.flatMap((word, id) => (isMistakable(word) ? [{ id, word }] : [])))
  }

  match(asked: string): WordMatch[] {
    const found = new Map<number, number>()
    const add = (at: number, weight: number): void => {
      if (at >= 0) found.set(at, Math.max(weight, found.get(at) ?? 0))
    }
    add(this.#at(asked), weights.same)
    for (const form of otherNumbers(asked)) add(this.#at(form), weights.plural)
    const isKnown = found.size > 0
    if (!/\p{N}/u.test(asked) && asked.length >= shortestBeginning)
      for (const at of this.#beginning(asked)) add(at, weights.begins)
    if (!isKnown && found.size === 0) for (const { at, weight } of this.#mistyped(asked)) add(at, weight)
    return [...found].map(([at, weight]) => ({ at, weight }))
  }

  #at(word: string): number {
    const at = this.#firstFrom(word)
    return this.words[at] === word ? at : -1
  }

  /** Where the first word stands that is no less than this one. */
  #firstFrom(word: string): number {
    let [low, high] = [0, this.words.length]
    while (low < high) {
      const middle = (low + high) >> 1
      if ((this.words[middle] ?? '') < word) low = middle + 1
      else high = middle
    }
    return low
  }

  #beginning(asked: string): number[] {
    const found: number[] = []
    for (let at = this.#firstFrom(asked); this.words[at]?.startsWith(asked) === true; at += 1) found.push(at)
    return found
  }

  #mistyped(asked: string): WordMatch[] {
    if (!isMistakable(asked)) return []
    const swapped = swaps(asked)
      .map(word => this.#at(word))
      .filter(at => at >= 0)
    if (swapped.length > 0) return swapped.map(at => ({ at, weight: weights.swapped }))
    this.prepare()
    const edits = asked.length < 7 ? 1 : 2
    const near = this.#near?.search(asked, { fuzzy: edits / asked.length, prefix: false }) ?? []
    return near.map(({ id }) => ({ at: Number(id), weight: weights.near }))
  }
}

const isMistakable = (word: string): boolean => word.length >= shortestMistaken && !/\p{N}/u.test(word)

/** The word with each two neighbours changed: `tnak` for `tank`. */
function swaps(word: string): string[] {
  return Array.from(word.slice(1), (letter, at) => word.slice(0, at) + letter + word.charAt(at) + word.slice(at + 2))
}

/** One of many, many of one: `fuses` and `fuse`, `batteries` and `battery`, `halves` and `half`. */
function otherNumbers(word: string): string[] {
  const singular = [
    /ies$/.test(word) ? word.replace(/ies$/, 'y') : '',
    /ves$/.test(word) ? word.replace(/ves$/, 'f') : '',
  ]
  const stripped = [word.replace(/es$/, ''), word.replace(/s$/, '')].filter(
    form => form !== word && !form.endsWith('s'),
  )
  const plural = [`${word}s`, `${word}es`, word.replace(/y$/, 'ies'), word.replace(/fe?$/, 'ves')]
  return [...new Set([...singular, ...stripped, ...plural])].filter(form => form.length > 1 && form !== word)
}
