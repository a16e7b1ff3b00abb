import type { MarkedWords } from '../facts/marked-words.ts'
import { foldLetters, foldText } from './fold-letters.ts'
import { slug } from './hidden-identifiers.ts'

export interface NameFound {
  readonly word: MarkedWords
  /** Where it stands in the text, UTF-16 units, the end exclusive. */
  readonly start: number
  readonly end: number
}

/** Finds withheld words in any text: whole and without case, `Bob Smith` in `bob-smith-tank` and `BobSmith.jpg` too. */
export type NameFinder = (text: string) => NameFound[]

/** Letters of scripts that put no blanks between words: a word in them is found anywhere. */
const unspaced = String.raw`\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Thai}\p{Script=Lao}\p{Script=Khmer}\p{Script=Myanmar}`

interface Sought {
  readonly word: MarkedWords
  readonly pattern: RegExp
  /** Its letters joined, without which the pattern cannot match. */
  readonly sign: string
}

/** A finder of so many words. A single letter or digit of ASCII is sought nowhere: it would be found everywhere. */
export function nameFinder(words: readonly MarkedWords[]): NameFinder {
  const sought = new Map<string, Sought>()
  for (const word of words)
    for (const form of formsOf(word.text)) if (!sought.has(form)) sought.set(form, { word, ...patternOf(form, word) })
  const all = [...sought.values()]
  return text => {
    if (all.length === 0 || text === '') return []
    const folded = foldText(text)
    const joined = folded.replaceAll(' ', '')
    const likely = all.filter(({ sign }) => joined.includes(sign))
    return likely.length === 0 ? [] : findIn(text, likely)
  }
}

function findIn(whole: string, sought: readonly Sought[]): NameFound[] {
  const { text, origins } = foldLetters(whole)
  return sought.flatMap(({ word, pattern }) =>
    [...text.matchAll(pattern)].map(({ 0: found, index }) => ({
      word,
      start: origins[index] ?? 0,
      end: endOf(whole, origins[index + found.length - 1] ?? 0),
    })),
  )
}

/** Behind the character that begins there, and the marks that belong to it. */
function endOf(text: string, start: number): number {
  const [character = ''] = /^.\p{M}*/su.exec(text.slice(start)) ?? []
  return start + character.length
}

const shortestLeft = 3 // letters that an identifier keeps of a word in another script: fewer would be found everywhere

/** The word folded, and what an identifier makes of it where that differs. */
function formsOf(text: string): string[] {
  const [plain, asIdentifier] = [foldText(text).trim(), foldText(slug(text)).trim()]
  const forms = asIdentifier.length < shortestLeft ? [plain] : [plain, asIdentifier]
  return [...new Set(forms)].filter(form => form !== '' && !/^[a-z0-9]$/.test(form))
}

function patternOf(form: string, { as }: MarkedWords): Pick<Sought, 'pattern' | 'sign'> {
  const isNumber = as === 'identity' && /\d/.test(form) && form.length > 4
  const pieces = isNumber ? [...form.replaceAll(' ', '')] : form.split(' ')
  const first = form.at(0) ?? ''
  const last = [...form].at(-1) ?? ''
  const body = pieces.join(' ?') // Folded text holds nothing that a pattern would read.
  const sign = form.replaceAll(' ', '')
  return { pattern: new RegExp(`${edgeBefore(first)}${body}${edgeAfter(last)}`, 'gu'), sign }
}

const unspacedLetter = new RegExp(`^[${unspaced}]$`, 'u')
const isUnspaced = (letter: string): boolean => unspacedLetter.test(letter)

/** A letter's neighbour may be a digit, as in `bob2.jpg`; a digit's neighbour is neither. */
function edgeBefore(first: string): string {
  if (isUnspaced(first)) return ''
  return /\p{L}/u.test(first) ? String.raw`(?<!\p{L})` : String.raw`(?<![\p{L}\p{N}])`
}

function edgeAfter(last: string): string {
  if (isUnspaced(last)) return ''
  return /\p{L}/u.test(last) ? String.raw`(?!\p{L})` : String.raw`(?![\p{L}\p{N}])`
}
