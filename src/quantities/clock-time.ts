import type { NumberToken } from './number-token.ts'
import type { UnitToken } from './read-unit.ts'
import { wordAfter, wordBefore } from './words-around.ts'

const fourFigures = /^(?:[01]\d|2[0-4])[0-5]\d$/
const clockBefore = /^(?:at|by|until|till|from|before|after|to)$/
const hourWord = /^(?:\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|noon|midnight)$/
const minuteWord = /^(?:min|mins|minutes?|m)$/
const minutesAfter = /^[0-5]\d(?!\d)/ // `14h30` is a time of day, `2h30` a length of time
const dateBefore = /^$|\d, ?$/ // at the beginning, or behind a date
const century = /^(?:1[89]|20)\d0$/
const decade = /^\d0$/
const decadeBefore = /^(?:the|early|late|mid|his|her|their)$/

/** `1400 h`, `0830 hrs`, *five minutes past three*: a time of day. */
export function isClockTime(text: string, number: NumberToken, unit: UnitToken): boolean {
  if (unit.id === 'h') {
    if (minutesAfter.test(text.slice(unit.end, unit.end + 3)))
      return number.value.toNumber() > 12 || clockBefore.test(wordBefore(text, number.start, 0).word)
    const digits = number.end - number.start === 4 ? text.slice(number.start, number.end) : ''
    if (!fourFigures.test(digits)) return false
    if (dateBefore.test(text.slice(Math.max(0, number.start - 3), number.start))) return true
    return digits[0] === '0' || clockBefore.test(wordBefore(text, number.start, 0).word)
  }
  const next = wordAfter(text, unit.end)
  if (next.word !== 'to' || number.written !== 'words') return next.word === 'past'
  const hour = wordAfter(text, next.end)
  return hourWord.test(hour.word) && !minuteWord.test(wordAfter(text, hour.end).word)
}

/** The 1980s, the 90s, '90s; the 6s are sixes. */
export function isDecade(text: string, number: NumberToken): boolean {
  const digits = text.slice(number.start, number.end)
  if (decade.test(digits) && /['’‘]/.test(text[number.start - 1] ?? '')) return true
  if (number.end === number.start + 1 && wordBefore(text, number.start, 0).word === 'the') return true
  return century.test(digits) || (decade.test(digits) && decadeBefore.test(wordBefore(text, number.start, 0).word))
}
