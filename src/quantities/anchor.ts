import { isDigit } from './characters.ts'
import { numberBeginnings } from './number-beginnings.ts'

const afterArticle = [
  'inch foot yard metre millimetre litre kilo hour half third quarter fifth sixth eighth tenth twelfth sixteenth',
  'thirty sixty hundredth thousandth hundred thousand million',
]
  .join(' ')
  .replaceAll(' ', '|')
const article = new RegExp(`an?\\s(?=(?:${afterArticle})|[a-z]{1,12} and )`, 'iy')
const leading = [
  'minus',
  'point',
  'third',
  'eighth',
  'tenth',
  'sixteenth',
  ...'awg swg gbp eur usd chf sek nok dkk aud nzd cad jpy'.split(' '),
]
const plainWords = numberBeginnings.filter(word => !['a', 'an', 'minus', 'point'].includes(word))

type Ending = 'word' | 'gap' | 'article' | 'address'

/** How far the words go that may lead to a quantity: a table of 128 characters a branch, of which two stand for no word. */
const steps: number[] = []
const endings: (Ending | undefined)[] = []
const lengths: number[] = []
const [between, inWord] = [0, 1]
const isLooked = 0x8000 // set on the step at a character where something may begin or a word has ended

const isLetterCode = (code: number): boolean => (code | 32) >= 97 && (code | 32) <= 122
const isPart = (code: number): boolean => isLetterCode(code) || isDigit(code) || code === 95
const isBeginning = (code: number): boolean => isDigit(code) || code === 36 || code === 58

function addBranch(length: number): number {
  for (let code = 0; code < 128; code += 1)
    steps.push((isPart(code) ? inWord : between) | (isBeginning(code) ? isLooked : 0))
  lengths.push(length)
  return endings.push(undefined) - 1
}

function addWord(word: string, ending: Ending): void {
  let branch = between
  for (const letter of word) {
    const code = letter.charCodeAt(0)
    const step = branch * 128 + code
    if (steps[step] === inWord) steps[step] = steps[step - 32] = addBranch((lengths[branch] ?? 0) + 1)
    branch = steps[step] ?? inWord
  }
  endings[branch] = ending
  for (let code = 0; code < 128; code += 1) if (!isPart(code)) steps[branch * 128 + code] = between | isLooked
}

addBranch(0)
addBranch(0)
for (const word of plainWords) addWord(word, 'word')
for (const word of leading) addWord(word, 'gap')
for (const word of ['a', 'an']) addWord(word, 'article')
addWord('www', 'address')
const table = Uint16Array.from(steps)
for (let code = 0; code < 128; code += 1) if (isPart(code)) table[128 + code] = inWord | (isDigit(code) ? isLooked : 0)

function isEnding(text: string, start: number, end: number, ending: Ending): boolean {
  if (ending === 'word') return true
  if (ending === 'gap') return /\s/.test(text[end] ?? '')
  if (ending === 'address') return text[end] === '.'
  article.lastIndex = start
  return article.test(text)
}

/** A digit of double width, as East Asian keyboards write it. */
export const isWideDigit = (code: number): boolean => code >= 0xff10 && code <= 0xff19

const isSign = (code: number): boolean =>
  (code >= 0xbc && code <= 0xbe) ||
  (code >= 0x2150 && code <= 0x215e) ||
  code === 0xa3 ||
  code === 0x20ac ||
  isWideDigit(code)

function isAnchor(text: string, at: number): boolean {
  const code = text.charCodeAt(at)
  if (code === 58) return text.startsWith('//', at + 1)
  return isDigit(code) || code === 36 || isSign(code)
}

/** The place where the word of a branch begins, if it ends before a place and leads to a quantity; negative otherwise. */
function leadingStart(text: string, branch: number, end: number): number {
  const ending = endings[branch]
  const start = end - (lengths[branch] ?? 0)
  return ending !== undefined && isEnding(text, start, end, ending) ? start : -1
}

/**
 * The next place at or after a place where a quantity may begin: a figure, a sign of money, a number word, an article that
 * leads to a unit; or where an address does. The text's length where there is none.
 */
export function nextAnchor(text: string, from: number): number {
  const { length } = text
  let branch = from > 0 && isPart(text.charCodeAt(from - 1)) ? inWord : between
  for (let at = from; at < length; at += 1) {
    const code = text.charCodeAt(at)
    const step = code < 128 ? (table[branch * 128 + code] ?? between) : between | isLooked
    if (step >= isLooked) {
      const start = isPart(code) ? -1 : leadingStart(text, branch, at)
      if (start >= 0) return start
      if (isAnchor(text, at)) return at
    }
    branch = step & ~isLooked
  }
  const start = leadingStart(text, branch, length)
  return start >= 0 ? start : length
}
