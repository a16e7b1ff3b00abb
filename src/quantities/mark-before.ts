import { isGap, isWordPart } from './characters.ts'
import { codesOf } from './codes-of.ts'
import { wordBefore } from './words-around.ts'

/** What words or signs say of a figure. */
export type Mark = 'about' | 'min' | 'max'

/** A mark before a figure and where its words begin. */
export interface Before {
  readonly mark: Mark
  readonly start: number
}

const marksOfPhrases: Readonly<Record<string, Mark>> = {
  about: 'about', approx: 'about', approximately: 'about', roughly: 'about', around: 'about', nearly: 'about', almost: 'about',
  circa: 'about', ca: 'about', 'just over': 'about', 'just under': 'about', 'just about': 'about', 'close to': 'about',
  'slightly over': 'about', 'slightly under': 'about', 'a little over': 'about', 'a little under': 'about', 'a bit over': 'about',
  'a bit under': 'about', 'near enough': 'about', 'more or less': 'about', 'just shy of': 'about', 'not quite': 'about',
  'getting on for': 'about', c: 'about', 'a good': 'about', barely: 'about',
  'in the region of': 'about', 'upwards of': 'min', 'no fewer than': 'min', 'no greater than': 'max', 'no longer than': 'max',
  'no bigger than': 'max', 'no higher than': 'max', 'not exceed': 'max', 'not to exceed': 'max',
  'at least': 'min', min: 'min', minimum: 'min', 'minimum of': 'min', 'no less than': 'min', 'not less than': 'min',
  'more than': 'min', 'not under': 'min', 'at most': 'max', max: 'max', maximum: 'max', 'maximum of': 'max',
  'max of': 'max', 'min of': 'min',
  'no more than': 'max', 'not more than': 'max', 'less than': 'max', 'up to': 'max', 'not over': 'max', 'not exceeding': 'max',
} // biome-ignore format: a table reads better in rows

const phrases = new Map(Object.entries(marksOfPhrases))
/** The last word of each phrase, and how many words the longest phrase has that ends in it. */
const lastWords = new Map<string, number>()
for (const phrase of phrases.keys()) {
  const words = phrase.split(' ')
  const last = words.at(-1) ?? ''
  lastWords.set(last, Math.max(words.length, lastWords.get(last) ?? 0))
}

/** Whether a phrase may end in two letters, each by its place in the alphabet. */
const lastPairs = new Uint8Array(32 * 32)
const pairOf = (text: string, end: number): number =>
  (text.charCodeAt(end - 2) & 31) * 32 + (text.charCodeAt(end - 1) & 31)
for (const word of lastWords.keys()) lastPairs[pairOf(word, word.length)] = 1

/** Whether a phrase may end before a place, by the last two letters alone. */
function mayEndPhrase(text: string, at: number): boolean {
  let end = at
  while (end > at - 3 && isGap(text.charCodeAt(end - 1))) end -= 1
  if (text[end - 1] === '.') end -= 1
  return lastPairs[pairOf(text, end)] === 1
}

const signs: readonly (readonly [string, Mark])[] = [
  ['~', 'about'], ['≈', 'about'], ['≃', 'about'], ['∼', 'about'], ['≥', 'min'], ['>=', 'min'], ['⩾', 'min'], ['≤', 'max'],
  ['<=', 'max'], ['⩽', 'max'], ['<', 'max'], ['>', 'min'],
] // biome-ignore format: a table reads better in rows

const lastOfSigns = codesOf('~≈≃∼≥=⩾≤⩽<>')

/** The sign, `~` or `≥`, that ends before a place and not before the limit. */
export function signBefore(text: string, at: number, limit: number): Before | null {
  const end = at > limit && isGap(text.charCodeAt(at - 1)) ? at - 1 : at
  if (end <= limit || !lastOfSigns.has(text.charCodeAt(end - 1))) return null
  const found = signs.find(([sign]) => end - sign.length >= limit && text.startsWith(sign, end - sign.length))
  if (found === undefined) return null
  const start = end - found[0].length
  const before = text.charCodeAt(start - 1)
  if (found[1] === 'about' && isWordPart(before)) return null // `230 V~ 50 Hz`: alternating
  return '-=<>'.includes(text[start - 1] ?? '?') ? null : { mark: found[1], start }
}

/** Whether a *c* has the full stop of its abbreviation. */
const isWhole = (text: string, phrase: string, start: number): boolean => phrase !== 'c' || text[start + 1] === '.'

/** The longest phrase, of four words at most, that ends before a place. */
export function phraseBefore(text: string, at: number, limit: number): Before | null {
  if (!mayEndPhrase(text, at)) return null
  let { word: phrase, start } = wordBefore(text, at, limit)
  const longest = lastWords.get(phrase)
  if (longest === undefined) return null
  let found: Before | null = null
  for (let count = 1; ; count += 1) {
    const mark = phrases.get(phrase)
    if (mark !== undefined && isWhole(text, phrase, start)) found = { mark, start }
    const before = count < longest && isGap(text.charCodeAt(start - 1)) ? wordBefore(text, start, limit) : null
    if (before === null || before.word === '') return found
    phrase = `${before.word} ${phrase}`
    start = before.start
  }
}
