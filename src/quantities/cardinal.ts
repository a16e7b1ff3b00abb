import { isGap } from './characters.ts'
import { numberWordAt } from './number-vocabulary.ts'

const longestWord = 12
const isSmallLetter = (code: number): boolean => (code | 32) >= 97 && (code | 32) <= 122

/** The word of small letters at a place, in lower case. */
export function wordAt(text: string, start: number): string {
  let end = start
  while (end <= start + longestWord && isSmallLetter(text.charCodeAt(end))) end += 1
  return text.slice(start, end).toLowerCase()
}

/** Where the next word may begin behind a place. */
export function nextStart(text: string, end: number): number {
  return isGap(text.charCodeAt(end)) || text[end] === '-' ? end + 1 : end
}

function mayFollow(last: number, value: number): boolean {
  if (last >= 100) return value > 0
  return last >= 20 && last % 10 === 0 && value > 0 && value < 10
}

/** A whole number in words and its end. */
export interface Cardinal {
  readonly value: number
  readonly end: number
}

/** Twenty-two, one hundred and twenty, two thousand: the words of a whole number. */
export function readCardinal(text: string, start: number): Cardinal | null {
  const { small: first, length } = numberWordAt(text, start)
  if (first < 0) return null
  let [total, current, last] = [0, first, first]
  let end = start + length
  for (let steps = 0; steps < 12; steps += 1) {
    let at = nextStart(text, end)
    if (last >= 100 && wordAt(text, at) === 'and') at = nextStart(text, at + 3)
    if (at === end) break
    const word = numberWordAt(text, at)
    if (word.small >= 0 && mayFollow(last, word.small)) [current, last] = [current + word.small, word.small]
    else if (current > 0 && current < word.power) {
      current *= word.power
      if (word.power > 100) [total, current] = [total + current, 0]
      last = word.power
    } else break
    end = at + word.length
  }
  return { value: total + current, end }
}
