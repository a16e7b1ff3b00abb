import type { Action } from '../facts/fact.ts'
import { identifierOf } from '../facts/identifier.ts'
import type { Reading } from '../quantities/quantity.ts'
import { namedThings, nounAt, type sayableNames } from './named-things.ts'
import { type Proposal, yamlValue } from './proposal.ts'
import type { Sentence } from './sentences.ts'

/** What people say was done to a part. A later saying of a sentence goes before an earlier one only by its place. */
const deeds: readonly (readonly [RegExp, Action])[] = [
  [/\b(?:trial[- ]fitted|offered up|tried)\b/i, 'trial-fitted'],
  [/\b(?:fitted|installed|bolted (?:in|on)|put in|mounted)\b/i, 'fitted'],
  [/\b(?:took (?:off|out)|removed|pulled (?:off|out))\b/i, 'removed'],
  [/\b(?:ordered)\b/i, 'ordered'],
  [/\b(?:bought|picked up|collected|paid for)\b/i, 'received'],
  [/\b(?:made|welded up|fabricated)\b/i, 'made'],
  [/\b(?:modified|cut down|shortened)\b/i, 'modified'],
  [/\b(?:rejected)\b/i, 'rejected'],
  [/\b(?:sent back|returned)\b/i, 'returned'],
  [/\b(?:sold)\b/i, 'sold'],
  [/\b(?:scrapped|binned|threw away)\b/i, 'scrapped'],
]

const pricedDeeds: readonly Action[] = ['ordered', 'received', 'made', 'sold', 'returned', 'modified']

/** A part that a sentence says something was done to, with its price where the sentence names one. */
export function proposeParts(
  sentence: Sentence,
  readings: readonly Reading[],
  names: ReturnType<typeof sayableNames>,
): Proposal[] {
  if (/\b(?:not|n't|never|need(?:s)? to|must|should|want to|going to)\b/i.test(sentence.text)) return []
  const deed = deeds.flatMap(([words, action]) => {
    const found = words.exec(sentence.text)
    return found === null ? [] : [{ action, end: found.index + found[0].length }]
  })[0]
  if (deed === undefined) return []
  const after = sentence.text.slice(deed.end)
  const { qty, rest } = countedAt(after)
  const known = namedThings(`the ${rest}`, names).find(
    ({ path, at }) => at === 4 && !path.includes(':') && path !== 'vehicle',
  )
  const noun = known === undefined ? nounAt(rest) : null
  const thing = known?.path ?? (noun === null ? null : identifierOf(noun))
  if (thing === null) return []
  const money = readings.find(({ quantity }) => quantity.dimension === 'money')
  const cost =
    money !== undefined && pricedDeeds.includes(deed.action) ? [['cost', yamlValue(money.quantity.text)] as const] : []
  const from = /\bfrom (?:the )?([\p{L}][\p{L}\p{N} '’-]{1,40}?)(?=\s+for\b|[.,;!?]|$)/iu.exec(after)?.[1]
  return [
    {
      section: 'parts',
      thing,
      keys: [
        ...(noun === null ? [] : [['name', JSON.stringify(noun)] as const]),
        ['action', deed.action],
        ...(qty === null ? [] : [['qty', qty] as const]),
        ...(from === undefined ? [] : [['from', JSON.stringify(from.trim())] as const]),
        ...cost,
      ],
      said: sentence.text,
    },
  ]
}

const counts = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']

/** `the two hose clips` → 2 and `hose clips`. */
function countedAt(words: string): { qty: string | null; rest: string } {
  const found = new RegExp(
    String.raw`^\s*(?:(?:the|a|an|my|our|some|new|old|both|another|(\d{1,3}|${counts.join('|')}))\s+)*`,
    'i',
  ).exec(words)
  const written = found?.[1]?.toLowerCase() ?? null
  const qty = written === null ? null : String(counts.indexOf(written) + 1 || Number(written))
  return { qty, rest: words.slice(found?.[0].length ?? 0) }
}

/** Money of a sentence that no part of it takes: something bought. */
export function proposeSpend(sentence: Sentence, readings: readonly Reading[], hasPart: boolean): Proposal[] {
  if (hasPart) return []
  return readings
    .filter(({ quantity }) => quantity.dimension === 'money' && quantity.number !== null && quantity.bound === null)
    .map(({ quantity }) => ({
      section: 'spend',
      thing: null,
      keys: [
        ['what', JSON.stringify(shortened(boughtIn(sentence.text)))],
        ['cost', yamlValue(quantity.text)],
      ],
      said: sentence.text,
    }))
}

/** `paid £23 for primer` → `primer`; the whole sentence where it says it otherwise. */
const boughtIn = (text: string): string =>
  /\b(?:paid|spent|cost|gave)\b.*?\b(?:for|on)\s+(?:the\s+|a\s+|some\s+)?(.+?)[.!?]*$/is.exec(text)?.[1] ?? text

const shortened = (text: string): string => {
  const line = text.replace(/\s+/g, ' ')
  return line.length <= 80 ? line : `${line.slice(0, 79).trimEnd()}…`
}
