import type { Input } from '../input.ts'

/** Words that the check itself says: the side on which an aspect looks, by which build.md may name a limit of its own. */
export function saidWords(said: string, meaning: string): Input<string> {
  return { symbol: null, meaning, dimension: null, reads: [], read: () => ({ type: 'words', words: said }) }
}
