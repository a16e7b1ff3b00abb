import { isGap, isLetter, isWordPart, skipGap } from './characters.ts'

const longestWord = 20

/** A word in lower case and where it stands; the word is empty where there is none. */
export interface Word {
  readonly word: string
  readonly start: number
  readonly end: number
}

/** The word that follows a place, after at most three spaces. */
export function wordAfter(text: string, from: number): Word {
  const start = skipGap(text, from)
  let end = start
  while (end < start + longestWord && isWordPart(text.charCodeAt(end))) end += 1
  return { word: text.slice(start, end).toLowerCase(), start, end }
}

/** The word that ends before a place, spaces and one full stop between; it does not reach back over the limit. */
export function wordBefore(text: string, from: number, limit: number): Word {
  let end = from
  while (end > limit && end > from - 3 && isGap(text.charCodeAt(end - 1))) end -= 1
  const stop = end > limit && text[end - 1] === '.' ? 1 : 0
  let start = end - stop
  while (start > limit && start > end - longestWord && isWordPart(text.charCodeAt(start - 1))) start -= 1
  return { word: text.slice(start, end - stop).toLowerCase(), start, end }
}

/** The words of the clause before a place, nearest first, back to its comma or full stop and no more than asked for. */
export function clauseBefore(text: string, from: number, most: number): string[] {
  const words: string[] = []
  let at = from
  while (words.length < most && at > 0) {
    while (at > 0 && /[\s"“”'’(–-]/.test(text[at - 1] ?? '') && from - at < 120) at -= 1
    const { word, start } = wordBefore(text, at, 0)
    if (word === '' || /[.,;!?:]/.test(text[at - 1] ?? '')) break
    words.push(word)
    at = start
  }
  return words
}

/** Whether the character at a place is a capital letter followed by a small one. */
export function isCapitalised(text: string, at: number): boolean {
  const first = text[at] ?? ''
  const second = text.charCodeAt(at + 1)
  return first !== first.toLowerCase() && isLetter(second) && text[at + 1] === text[at + 1]?.toLowerCase()
}
