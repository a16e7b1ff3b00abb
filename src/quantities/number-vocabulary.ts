import { WordTree } from './word-tree.ts'

const ones =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  )
const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ')
/** Words of whole numbers below a hundred. */
export const small = new Map<string, number>([
  ...ones.map((word, value): [string, number] => [word, value]),
  ...tens.map((word, at): [string, number] => [word, 20 + 10 * at]),
  ['nought', 0],
  ['fourty', 40],
])
const powers: readonly (readonly [string, number])[] = [
  ['hundred', 100],
  ['thousand', 1000],
  ['million', 1000000],
]
const bottoms: readonly (readonly [string, number])[] = [
  ['half', 2], ['third', 3], ['quarter', 4], ['fifth', 5], ['sixth', 6], ['eighth', 8], ['tenth', 10], ['twelfth', 12],
  ['sixteenth', 16], ['hundredth', 100], ['thousandth', 1000],
] // biome-ignore format: a table reads better in rows

/** What a word says of a number; a word says one of these things only. */
interface NumberWord {
  readonly length: number
  /** Of a whole number below a hundred; -1 for other words. */
  readonly small: number
  /** What it multiplies by; 0 for other words. */
  readonly power: number
  /** The bottom of a fraction; 0 for other words. */
  readonly bottom: number
}

const plain = (word: string): NumberWord => ({ length: word.length, small: -1, power: 0, bottom: 0 })
const listed: readonly (readonly [string, Partial<NumberWord>])[] = [
  ...[...small].map(([word, value]) => [word, { small: value }] as const),
  ...powers.map(([word, power]) => [word, { power }] as const),
  ...bottoms.flatMap(([word, bottom]) => [word, `${word}s`].map(name => [name, { bottom }] as const)),
  ['halves', { bottom: 2 }],
]
const tree = new WordTree(listed.map(([word]) => word))
const none = plain('')
const words: readonly NumberWord[] = [none, ...listed.map(([word, says]) => ({ ...plain(word), ...says }))]

/** The number word at a place; one of no length where none stands there. */
export function numberWordAt(text: string, start: number): NumberWord {
  return words[tree.find(text, start)] ?? none
}

const bottomFirsts = new Uint8Array(32)
for (const [word] of bottoms) bottomFirsts[word.charCodeAt(0) & 31] = 1

/** Whether the bottom of a fraction may begin with a letter; quicker than to look for the word. */
export const mayDivide = (first: number): boolean => bottomFirsts[first & 31] === 1
