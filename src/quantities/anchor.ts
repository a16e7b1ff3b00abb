import { numberBeginnings } from './number-words.ts'

const afterArticle = [
  'inch foot yard metre millimetre litre kilo hour half third quarter fifth sixth eighth tenth twelfth sixteenth',
  'thirty sixty hundredth thousandth hundred thousand million',
]
  .join(' ')
  .replaceAll(' ', '|')
const plainWords = numberBeginnings.filter(word => !['a', 'an', 'minus', 'point'].includes(word)).join('|')
const codes = 'awg|swg|gbp|eur|usd|chf|sek|nok|dkk|aud|nzd|cad|jpy'

/** Where a quantity may begin: a figure, a sign of money, a number word, an article that leads to a unit; and where an address does. */
const anchor = new RegExp(
  [
    '[0-9¼-¾⅐-⅞£€$]',
    '://|\\bwww\\.',
    `\\b(?:${plainWords})\\b`,
    `\\ban?\\s(?=(?:${afterArticle})|[a-z]{1,12} and )`,
    `\\b(?:minus|point|${codes})(?=\\s)`,
  ].join('|'),
  'gi',
)

/** The place of the next anchor at or after a place; the text's length where there is none. */
export function nextAnchor(text: string, from: number): number {
  anchor.lastIndex = from
  return anchor.exec(text)?.index ?? text.length
}
