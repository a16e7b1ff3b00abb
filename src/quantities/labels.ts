import type { NumberToken } from './number-token.ts'
import { wordBefore } from './words-around.ts'

const set = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/))

/** Words whose number is a name: page 12, pin 3, grade 43A. */
const labels = set(`
  page pages fig figs figure step steps item items no nos number section table appendix type grade class model series part
  clause chapter bay plot gate room block annex ref drawing sheet code mark mk route size pin pins way ways terminal
  terminals relay cylinder cylinders row line port channel position contact connector zone version rev revision din iso en
  iec bs astm sae ral dot week issue volume vol photo picture note session job point stage circuit gear cell cells`)

/** Words whose number is never followed by a unit of one letter. */
const firmLabels = set(`
  page pages fig figs figure figures table section chapter appendix clause drawing sheet ref annex room flat plot gate bay
  invoice receipt seat berth locker photo picture note para paragraph item pin pins stage step platform shelf rule version rev row`)

/** Words that make a number a trade size: no. 6 × 3/4 in. */
const sizes = /^(?:no|nos|number|size|gauge)$/
const year = /^(?:19|20)\d\d$/

/** Whether the word before a number makes it a name or a place in a list. */
export function isLabelled(text: string, number: NumberToken): boolean {
  return labels.has(wordBefore(text, number.start, 0).word)
}

/** Whether the word before a number makes it a trade size, as in `no. 6 × 3/4 in`. */
export const isTradeSize = (text: string, number: NumberToken): boolean =>
  sizes.test(wordBefore(text, number.start, 0).word)

/** Whether the word before a number, given, makes a letter behind it no unit: Fig. 3 A. */
export const isFirmLabel = (word: string): boolean => firmLabels.has(word)

/** Whether figures could be a year: four of them, 1900 to 2099. */
export const isYear = (text: string, number: NumberToken): boolean => year.test(text.slice(number.start, number.end))
