import type { Place } from '../findings/place.ts'
import { addReference } from './add-reference.ts'
import type { AmountRead } from './amount-read.ts'
import { figureOf } from './body-figure.ts'
import { actions, wordOf } from './closed-words.ts'
import { positiveDecimal } from './exact-decimal.ts'
import type { Action } from './fact.ts'
import { identifierOf, isIdentifier } from './identifier.ts'
import { judgeAmount } from './judge-amount.ts'
import { nearest } from './near-words.ts'
import { oneOf, quoted } from './quoted.ts'
import { amountOf } from './read-amount.ts'
import type { WordsRead } from './read-words.ts'
import { reportKind } from './report-kind.ts'
import { reportQty } from './report-qty.ts'
import type { Row } from './row.ts'
import { addFact, report, type Sheet } from './sheet.ts'
import { reportWithoutWhy } from './state-mention.ts'

/** `| Fuel filter | £6.20 | 2 | yard |`: a part by its identifier, or by words that become its name and its identifier. */
export function statePartRow(sheet: Sheet, row: Row): void {
  const named = row.wordsOf('part')
  const part = named === null ? '' : isIdentifier(named.words.text) ? named.words.text : identifierOf(named.words.text)
  if (named === null || part === '') return
  const from = row.wordsOf('from')
  const action = readAction(sheet, row.wordsOf('action'), part)
  const cost = readCost(sheet, row, part)
  const qty = readRowQty(sheet, row.wordsOf('qty'), part)
  const { place } = named
  const said = { action, cost, qty, from, fits: null, replaces: null, why: null }
  addFact(sheet, { type: 'mention', part, keyPlace: place, place, ...said })
  if (from !== null)
    addReference(sheet, { to: 'donor', name: from.words.text, strictness: 'near-only', place: from.place })
  if (part !== named.words.text) stateWord(sheet, { part, key: 'name', read: named })
  stateWord(sheet, { part, key: 'system', read: row.wordsOf('system') })
  stateWord(sheet, { part, key: 'kind', read: row.wordsOf('kind') })
  reportWithoutWhy(sheet, { part, keyPlace: place, action: action?.word })
}

function readAction(sheet: Sheet, read: WordsRead | null, part: string): { word: Action; place: Place } | null {
  if (read === null) return null
  const word = wordOf(read.words.text, actions)
  if (word !== null) return { word, place: read.place }
  const message = `Unexpected ${quoted(read.words.text)} for \`${part}/action\`, expected ${oneOf(actions)}`
  report(sheet, 'unknown-action', {
    place: read.place,
    message,
    mend: nearest(read.words.text, actions),
    about: [part],
  })
  return null
}

function readCost(sheet: Sheet, row: Row, part: string): AmountRead | null {
  const nodes = row.cellOf('cost')?.children ?? []
  const read =
    nodes.length === 0 ? null : figureOf(sheet, nodes, { path: `${part}/cost`, role: 'price', dimensions: ['money'] })
  const amount = read === null ? null : amountOf(read.quantity)
  if (read === null || amount === null) return null
  const paid = { amount, place: read.place, figure: read.figure }
  return judgeAmount(sheet, paid, { path: `${part}/cost`, written: read.quantity.text })
}

function readRowQty(sheet: Sheet, read: WordsRead | null, part: string): { amount: string; place: Place } | null {
  if (read === null) return null
  const amount = positiveDecimal(read.words.text, sheet.options.decimal)
  if (amount !== null) return { amount, place: read.place }
  reportQty(sheet, { text: read.words.text, place: read.place }, { path: `${part}/qty`, about: part })
  return null
}

function stateWord(
  sheet: Sheet,
  { part, key, read }: { part: string; key: 'name' | 'system' | 'kind'; read: WordsRead | null },
): void {
  if (read === null) return
  const { words, place } = read
  const said = { observed: false, with: null, note: null, supersedes: false, bare: false, figure: null }
  addFact(sheet, {
    type: 'property',
    subject: { kind: 'part', id: part },
    key,
    keyPlace: place,
    place,
    value: { type: 'words', words },
    ...said,
  })
  if (key === 'system') addReference(sheet, { to: 'system', name: words.text, strictness: 'must-exist', place })
  if (key === 'kind') reportKind(sheet, { kind: words.text, part, place })
}
