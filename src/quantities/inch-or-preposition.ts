import { skipGap } from './characters.ts'
import { isFirmLabel } from './labels.ts'
import { numberBeginnings } from './number-beginnings.ts'
import { beginsFigures } from './read-number.ts'
import { isCapitalised, type Word, wordAfter } from './words-around.ts'

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/))

/** Words before which *in* is never a unit. */
const prepositionBefore = words(`
  the a an all my our your his her its their this that these those it them us me him there here each every both any
  either neither another some most no which what whose total series parallel between place places front line turn order
  stock use hand time case fact general particular common addition advance reserve service transit storage situ work
  question position favour person practice theory reality gear neutral reverse town traffic pairs twos threes fours rows
  boxes bags packs packets drawers tins jars trays cartons bundles layers stages sets groups parts halves bits pieces
  chunks half good poor perfect working running fair excellent bad spring summer autumn winter minutes seconds hours days
  weeks months years second third fourth fifth sixth top bottom succession sequence quick rapid store dispute doubt need
  search response return exchange cash full short future past end effect action tandem unison turns rotation step
  sync sight view reach english german french size colour color tens dozens hundreds spite view charge
  january february april june july august september october november december`)

const sizeWords = words('long wide deep high thick tall diameter dia bore square')
const measured = words('length width height depth thickness travel')

/** Words before which *in* is always a unit. */
const inchesBefore = words(`
  long wide deep high thick tall from off above below apart across of diameter dia bore square clear clearance x by
  longer shorter wider narrower deeper higher lower thicker thinner od id bsp af gauge radius forward forwards back
  backwards rearward rearwards inboard outboard up down outside inside proud into away nearer further behind ahead past to
  stroke travel lift drop rise gap pipe tube hose rod bar bolt bolts disc drive pulley wheel wheels tyre tyres`)

const numberWords = words('one two three four five six seven eight nine ten eleven twelve twenty thirty hundred')
const looseWords = words('under over about around just less more roughly nearly')
const materials = words(`
  red black white blue green yellow brown grey gray orange purple pink stainless steel brass bronze copper aluminium alloy
  plastic rubber nylon wood oak ply plywood mild galvanised cast iron leather primer paint`)
const closers = words('and or with for but so then on at where while as after before')

function isBareMaterial(text: string, start: number): boolean {
  let next = wordAfter(text, start)
  for (let steps = 0; steps < 3 && materials.has(next.word); steps += 1) next = wordAfter(text, next.end)
  return next.word === '' || closers.has(next.word) || /[.,;:)!?]/.test(text[next.start] ?? '.')
}

function isEachBeforeThing(text: string, end: number): boolean {
  const next = wordAfter(text, end)
  return next.word !== '' && next.word !== 'way' && next.word !== 'direction' && !closers.has(next.word)
}

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

/** Whether the word *in* that ends at a place means inches. */
export function isInches(text: string, end: number, behind: BeforeIn): boolean {
  const next = wordAfter(text, end)
  if (behind === 'words') return sizeWords.has(next.word)
  if (next.word === '' && /^[.,;:)\]!?]?$/.test(text[next.start] ?? '')) return true
  if (inchesBefore.has(next.word)) return true
  if (behind === 'pounds' || beginsFigures(text, next.start) || numberWords.has(next.word)) return false
  if (next.word === 'each') return !isEachBeforeThing(text, next.end)
  if (next.word === 'total') return measured.has(wordAfter(text, next.end).word)
  if (next.word === 'and') return !isGoneOut(text, next.end)
  if (prepositionBefore.has(next.word) || isLabelWithNumber(text, next)) return false
  // There are no 1¼ of a thing: what is not whole is a size, whatever it is made of.
  if (behind === 'part') return true
  if (isCapitalised(text, next.start)) return false
  if (looseWords.has(next.word)) {
    const after = wordAfter(text, next.end)
    return !beginsFigures(text, after.start) && !numberBeginnings.includes(after.word)
  }
  return !(materials.has(next.word) && isBareMaterial(text, next.end))
}
