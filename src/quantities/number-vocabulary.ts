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
/** Words that multiply what stands before them. */
export const powers = new Map([
  ['hundred', 100],
  ['thousand', 1000],
  ['million', 1000000],
])
/** Words of the bottoms of fractions. */
export const bottoms = new Map<string, number>([
  ['half', 2], ['halves', 2], ['third', 3], ['quarter', 4], ['fifth', 5], ['sixth', 6], ['eighth', 8], ['tenth', 10], ['twelfth', 12],
  ['sixteenth', 16], ['thirty-second', 32], ['sixty-fourth', 64], ['hundredth', 100], ['thousandth', 1000],
]) // biome-ignore format: a table reads better in rows

/** Whether a word of a list may begin with a letter, by the letter's place in the alphabet. */
const firstsOf = (words: Iterable<string>): Uint8Array => {
  const firsts = new Uint8Array(32)
  for (const word of words) firsts[word.charCodeAt(0) & 31] = 1
  return firsts
}
/** Whether a word of a whole number may begin with a letter, by its place in the alphabet. */
export const mayGoOn = firstsOf([...small.keys(), ...powers.keys(), 'and'])
/** Whether the bottom of a fraction may begin with a letter, by its place in the alphabet. */
export const mayDivide = firstsOf(bottoms.keys())
