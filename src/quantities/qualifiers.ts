import { isGap, isWordPart } from './characters.ts'
import { codesOf } from './codes-of.ts'
import { clauseBefore, wordBefore } from './words-around.ts'

/** What the words about a figure say of it, and where they begin and end. */
export interface Qualifiers {
  readonly start: number
  readonly end: number
  readonly isApproximate: boolean
  readonly bound: 'min' | 'max' | null
}

type Mark = 'about' | 'min' | 'max'

const marksOfPhrases: Readonly<Record<string, Mark>> = {
  about: 'about', approx: 'about', approximately: 'about', roughly: 'about', around: 'about', nearly: 'about', almost: 'about',
  circa: 'about', ca: 'about', 'just over': 'about', 'just under': 'about', 'just about': 'about', 'close to': 'about',
  'slightly over': 'about', 'slightly under': 'about', 'a little over': 'about', 'a little under': 'about', 'a bit over': 'about',
  'a bit under': 'about', 'near enough': 'about', 'more or less': 'about', 'just shy of': 'about',
  'at least': 'min', min: 'min', minimum: 'min', 'minimum of': 'min', 'no less than': 'min', 'not less than': 'min',
  'more than': 'min', 'not under': 'min', 'at most': 'max', max: 'max', maximum: 'max', 'maximum of': 'max',
  'no more than': 'max', 'not more than': 'max', 'less than': 'max', 'up to': 'max', 'not over': 'max', 'not exceeding': 'max',
} // biome-ignore format: a table reads better in rows

const phrases = new Map(Object.entries(marksOfPhrases))
const lastWords = new Set([...phrases.keys()].map(phrase => phrase.split(' ').at(-1) ?? ''))

/** Whether a phrase may end in two letters, each by its place in the alphabet. */
const lastPairs = new Uint8Array(32 * 32)
const pairOf = (text: string, end: number): number =>
  (text.charCodeAt(end - 2) & 31) * 32 + (text.charCodeAt(end - 1) & 31)
for (const word of lastWords) lastPairs[pairOf(word, word.length)] = 1

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

const place =
  /^(?:wrap|wound|wind|coil|loop|fold|roll|tape|tied|tie|form|clamp|bent|bend|slip|clip|fit|turn|rout|went|go|goes|pass|ran|run|tight|shrink|shrunk|seal|cast|mould|weld|braz|stretch|slid|crimp|spun|spin|built|cut|fasten|bound|bind|swag|sleev|snug|tightly)/

const behind =
  /\s(?:(or so|or thereabouts|give or take|approx(?:imately)?|ish)|(min(?:imum)?|or more|or over|or better|at least)|(max(?:imum)?|or less|or under|at most))(?![\p{L}\p{N}])|-?(ish)(?![\p{L}\p{N}])/iuy

/** Where the words of the quantity before end, and whether this one is a length, which things go around. */
export interface Surroundings {
  readonly limit: number
  readonly isLength: boolean
}

interface Before {
  readonly mark: Mark
  readonly start: number
}

const lastOfSigns = codesOf('~≈≃∼≥=⩾≤⩽<>')
const firstBehind = codesOf('ogamiOGAMI-')

function signBefore(text: string, at: number, limit: number): Before | null {
  const end = at > limit && isGap(text.charCodeAt(at - 1)) ? at - 1 : at
  if (end <= limit || !lastOfSigns.has(text.charCodeAt(end - 1))) return null
  const found = signs.find(([sign]) => end - sign.length >= limit && text.startsWith(sign, end - sign.length))
  if (found === undefined) return null
  const start = end - found[0].length
  return '-=<>'.includes(text[start - 1] ?? '?') ? null : { mark: found[1], start }
}

/** The longest phrase, of three words at most, that ends before a place. */
function phraseBefore(text: string, at: number, limit: number): Before | null {
  if (!mayEndPhrase(text, at)) return null
  let { word: phrase, start } = wordBefore(text, at, limit)
  if (!lastWords.has(phrase)) return null
  let found: Before | null = null
  for (let count = 1; ; count += 1) {
    const mark = phrases.get(phrase)
    if (mark !== undefined) found = { mark, start }
    const before = count < 3 && isGap(text.charCodeAt(start - 1)) ? wordBefore(text, start, limit) : null
    if (before === null || before.word === '') return found
    phrase = `${before.word} ${phrase}`
    start = before.start
  }
}

const measure = /^(?:at|of|is|was|to|be|are|were)$/

/** Whether *around* tells a place: `wrapped around 38 mm tube`. */
function isPlace(text: string, { start }: Before, isLength: boolean): boolean {
  if (!isLength || text.slice(start, start + 6).toLowerCase() !== 'around') return false
  const words = clauseBefore(text, start, 3)
  return !measure.test(words[0] ?? '') && words.some(word => place.test(word))
}

function markBefore(text: string, at: number, { limit, isLength }: Surroundings): Before | null {
  const sign = signBefore(text, at, limit)
  if (sign !== null) return sign
  const before = phraseBefore(text, at, limit)
  return before === null || isPlace(text, before, isLength) || isWordPart(text.charCodeAt(before.start - 1))
    ? null
    : before
}

function markBehind(text: string, end: number): { mark: Mark; end: number } | null {
  if (!firstBehind.has(text.charCodeAt(isGap(text.charCodeAt(end)) ? end + 1 : end))) return null
  behind.lastIndex = end
  const match = behind.exec(text)
  if (match === null) return null
  return { mark: match[2] !== undefined ? 'min' : match[3] !== undefined ? 'max' : 'about', end: behind.lastIndex }
}

/** Reads the words before and behind a figure that make it approximate or a bound. */
export function readQualifiers(text: string, span: { start: number; end: number }, around: Surroundings): Qualifiers {
  let { start, end } = span
  const first = markBefore(text, start, around)
  const last = markBehind(text, end)
  if (first === null && last === null) return { start, end, isApproximate: false, bound: null }
  const marks: Mark[] = []
  for (let before = first; before !== null; before = marks.length < 2 ? markBefore(text, start, around) : null) {
    marks.push(before.mark)
    start = before.start
  }
  for (let after = last; after !== null; after = marks.length < 4 ? markBehind(text, end) : null) {
    marks.push(after.mark)
    end = after.end
  }
  const bound = marks.includes('min') ? 'min' : marks.includes('max') ? 'max' : null
  return { start, end, isApproximate: marks.includes('about'), bound }
}
