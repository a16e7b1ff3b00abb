import type { Note } from '../notes/note.ts'
import { plainReading } from '../quantities/quantity.ts'
import { closedWords, wordOf } from './closed-words.ts'
import { entryOf, scalarOf } from './front-tree.ts'
import { readValue } from './read-figure.ts'
import type { StateOptions } from './state-options.ts'

const usualShare = 0.05 // of the value: what "about" is worth where build.md does not say

/** What build.md sets that changes how notes are read; what it sets wrongly is left as if it were not there. */
export function readSettings(build: Pick<Note, 'front'> | null): StateOptions {
  const word = (key: string): string | undefined => scalarOf(entryOf(build?.front, key)?.value)?.text
  return {
    ...plainReading,
    gallon: wordOf(word('gallon'), closedWords.gallon),
    mil: wordOf(word('mil'), closedWords.mil),
    decimal: wordOf(word('decimal'), closedWords.decimal) ?? 'point',
    approximate: readShare(word('approximate')) ?? usualShare,
  }
}

/** `5 %` or `0.05` as a share between 0 and 1; null for anything else. */
function readShare(text: string | undefined): number | null {
  const quantity = text === undefined ? null : readValue(text.trim(), ['ratio'], plainReading)
  const share = quantity?.dimension === 'ratio' ? quantity.si : null
  return share !== null && share >= 0 && share < 1 ? share : null
}
