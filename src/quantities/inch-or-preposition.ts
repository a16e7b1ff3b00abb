import { skipGap } from './characters.ts'
import { isRemainder, isSeated, placing } from './counted-in.ts'
import { isFirmLabel } from './labels.ts'
import { numberBeginnings } from './number-beginnings.ts'
import { beginsFigures } from './read-number.ts'
import { inchesBefore, materials, prepositionBefore, sizeBefore, words } from './words-about-in.ts'
import { isCapitalised, type Word, wordAfter, wordBefore } from './words-around.ts'

/** Words before which *in* is a unit unless the verb is one of putting things where they belong. */
const alongBefore = words('along through around throughout against out')
const betweenParts = words('centres centers holes posts rails faces legs flanges bearings supports shoulders uprights')
const directions = words('left right short')
const asMany = words('many few little much good new found is')
const madeOf = words('from of')
const sizeWords = words('long wide deep high thick tall diameter dia bore square')
const measured = words('length width height depth thickness travel diameter lift reach clearance headroom')
const determiners = words(
  'the a an all my our your his her its their this that these those it them us me each every both any one',
)

const numberWords = words('one two three four five six seven eight nine ten eleven twelve twenty thirty hundred')
const looseWords = words('under over about around just less more roughly nearly')
const closers = words('and or with for but so then on at where when while once as after before')

const timesBefore = /\d ?[x×] ?$/
const sides = /^(?:side|sides|end|ends)$/
const placedEnds = words('because since so and but while until as with by before after')

function isBareMaterial(text: string, start: number): boolean {
  let next = wordAfter(text, start)
  for (let steps = 0; steps < 3 && materials.has(next.word); steps += 1) next = wordAfter(text, next.end)
  return next.word === '' || closers.has(next.word) || /[.,;:)!?]/.test(text[next.start] ?? '.')
}

/** *Put 4 in each box*, *in each end*; not *moved 4 in each way*. Each side of what is measured is asked back about. */
function isEachBeforeThing(text: string, start: number, end: number): boolean {
  const next = wordAfter(text, end)
  if (sides.test(next.word)) return placing.test(wordBefore(text, start, 0).word)
  return next.word !== '' && next.word !== 'way' && next.word !== 'direction' && !closers.has(next.word)
}

/** Whether *in* may be inches and may be where things were put: *left 3 in because*, *overhangs 4 in each side*. */
export function isInOrInches(text: string, start: number, end: number): boolean {
  const next = wordAfter(text, end)
  if (next.word === 'each') return sides.test(wordAfter(text, next.end).word)
  return (next.word === '' || placedEnds.has(next.word)) && placing.test(wordBefore(text, start, 0).word)
}

/** *2 in and 3 out*, *14 in, 2 out* */
function isGoneOut(text: string, end: number): boolean {
  const number = wordAfter(text, end)
  return wordAfter(text, number.end).word === 'out' && (numberWords.has(number.word) || /^\d+$/.test(number.word))
}

/** `45 in section 3` */
function isLabelWithNumber(text: string, next: Word): boolean {
  return isFirmLabel(next.word) && beginsFigures(text, skipGap(text, next.end))
}

/** What stands before the word: whole figures, figures with a part of one, a number in words, or `40 lb`. */
export type BeforeIn = 'whole' | 'part' | 'words' | 'pounds'

const figuresBefore = /(?:(\p{L}+)\s)?(?:\d[\d./]*,\s?)*\d[\d./]*,?\s?$/u

/** `2 and 3 in skirting`; not *cells 3 and 4 in*, where the figures are names. */
function isListedSize(text: string, end: number): boolean {
  const list = figuresBefore.exec(text.slice(Math.max(0, end - 40), end))
  const named = list?.[1]?.toLowerCase() ?? ''
  return list !== null && (sizeBefore.has(named) || !/[a-z]{3}s$/.test(named))
}

const clauseBeforeIn = /(?:\d|one|two|three|four|five|six) in (\p{L}+),? (?:and )?$/iu

/** *Made 2 in oak, 1 in ash*: what the clause before counts, this one counts too. */
function isLikeBefore(text: string, start: number): boolean {
  const word = clauseBeforeIn.exec(text.slice(Math.max(0, start - 40), start))?.[1]?.toLowerCase() ?? ''
  return prepositionBefore.has(word) || materials.has(word)
}

/** Whether what stands before the figures or the ending of the word behind *in* makes a size of them. */
function isSized(text: string, start: number, next: string): boolean {
  if (/(?:wards?|ways)$/.test(next)) return true
  const before = wordBefore(text, start, 0)
  if (before.word === 'or' || before.word === 'and') return isListedSize(text, before.start)
  return before.word === '' ? !isLikeBefore(text, start) : sizeBefore.has(before.word)
}

/** Whether a word that is both a preposition's and an inch's speaks of the measure: *front to back*, *either side of it*. */
function isMeasured(text: string, start: number, next: Word): boolean {
  const after = wordAfter(text, next.end)
  if (after.word === 'to') return next.word === 'front' || wordAfter(text, after.end).word === next.word
  if (next.word === 'total') return measured.has(after.word)
  if (next.word === 'between')
    return betweenParts.has(after.word === 'the' ? wordAfter(text, after.end).word : after.word)
  if (next.word === 'all') return after.word === 'round' || after.word === 'around'
  if (directions.has(next.word)) return after.word === '' || after.word === 'of' || closers.has(after.word)
  if (next.word === 'by') return beginsFigures(text, after.start) || numberWords.has(after.word)
  const isSide = next.word === 'either' && sides.test(after.word)
  return isSide && (wordAfter(text, after.end).word === 'of' || !placing.test(wordBefore(text, start, 0).word))
}

/** *A 2 in water pipe*: one thing has a size. */
const isArticled = (text: string, start: number, next: Word): boolean =>
  /^(?:an?|another)$/.test(wordBefore(text, start, 0).word) && !determiners.has(next.word)

/** *in under 20 minutes*, *in just over an hour* */
function isBeforeNumber(text: string, end: number): boolean {
  let after = wordAfter(text, end)
  while (after.word === 'than' || looseWords.has(after.word)) after = wordAfter(text, after.end)
  return beginsFigures(text, after.start) || numberBeginnings.includes(after.word)
}

/** Whether the word *in* that ends at a place means inches; the figures before it begin at the start. */
export function isInches(text: string, { start, end }: { start: number; end: number }, behind: BeforeIn): boolean {
  const next = wordAfter(text, end)
  if (behind === 'words') return sizeWords.has(next.word)
  if (next.word === '' && text[next.start] === ',' && isGoneOut(text, next.start + 1)) return false
  if ((next.word === '' || closers.has(next.word)) && isRemainder(text, start)) return false
  if (next.word === '') return !/[£€$½¼¾]/.test(text[next.start] ?? '')
  if (isLabelWithNumber(text, next)) return false
  if (isSeated(text, start, next)) return false
  if (inchesBefore.has(next.word) || isMeasured(text, start, next)) return true
  if (behind === 'pounds' || beginsFigures(text, next.start) || numberWords.has(next.word)) return false
  if (next.word === 'each') return !isEachBeforeThing(text, start, next.end)
  if (next.word === 'and') return !isGoneOut(text, next.end)
  if (next.word === 'as' && asMany.has(wordAfter(text, next.end).word)) return false
  if (measured.has(next.word) || isArticled(text, start, next)) return true
  if (wordBefore(text, start, 0).word === 'every') return true
  if (prepositionBefore.has(next.word) || (behind === 'whole' && wordBefore(text, start, 0).word === 'all'))
    return false
  if (alongBefore.has(next.word)) return !placing.test(wordBefore(text, start, 0).word)
  // There are no 1¼ of a thing: what is not whole is a size, whatever it is made of.
  if (behind === 'part' || timesBefore.test(text.slice(Math.max(0, start - 4), start))) return true
  if (isCapitalised(text, next.start)) return false
  if (looseWords.has(next.word)) return !isBeforeNumber(text, next.end)
  if (materials.has(next.word)) return madeOf.has(wordBefore(text, start, 0).word) || !isBareMaterial(text, next.end)
  return closers.has(next.word) || isSized(text, start, next.word)
}
