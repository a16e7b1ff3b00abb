import type { Place } from '../findings/place.ts'
import type { Front, FrontMap } from '../notes/front.ts'
import { readBareNumber } from '../quantities/read-bare-number.ts'
import type { AmountRead } from './amount-read.ts'
import { actions, closedWords, wordOf } from './closed-words.ts'
import { exactDecimal, positiveDecimal } from './exact-decimal.ts'
import type { Action } from './fact.ts'
import { entryOf, scalarOf } from './front-tree.ts'
import { partDeeds } from './part-keys.ts'
import { refer, stateValue } from './property-stated.ts'
import { quotedFront } from './quoted.ts'
import { readAmount } from './read-amount.ts'
import { readProse, readWords, type WordsRead } from './read-words.ts'
import { reportQty } from './report-qty.ts'
import { placeOfText } from './scalar-text.ts'
import { addFact, report, type Sheet } from './sheet.ts'

interface PartMentioned {
  readonly part: string
  readonly keyPlace: Place
  readonly map: FrontMap
}

/** That a note names a part, what was done to it and what was paid. */
export function stateMention(sheet: Sheet, { part, keyPlace, map }: PartMentioned): void {
  const written = (key: string): Front | undefined => entryOf(map, key)?.value
  const action = readAction(written('action'))
  const from = readWords(sheet, written('from'))
  const replaced = readWords(sheet, written('replaces'))
  const why = readProse(sheet, written('why'))
  addFact(sheet, {
    type: 'mention',
    part,
    keyPlace,
    place: keyPlace,
    action,
    fits: wordOf(scalarOf(written('fits'))?.text, closedWords.fits),
    cost: readCost(sheet, written('cost'), `${part}/cost`),
    qty: readQty(sheet, written('qty'), `${part}/qty`),
    from,
    replaces: replaced && { id: replaced.words.text, place: replaced.place },
    why,
  })
  takeBackDeeds(sheet, part, map)
  for (const [key, read] of Object.entries({ from, replaces: replaced })) referDeed(sheet, key, read)
  reportWithoutWhy(sheet, { part, keyPlace, action: why === null ? action?.word : undefined })
}

function referDeed(sheet: Sheet, key: string, read: WordsRead | null): void {
  const field = partDeeds[key]
  if (read !== null && field?.holds === 'words') refer(sheet, field.refer, read)
}

/** A price; null where none was given, or where it is taken back. */
export function readCost(sheet: Sheet, front: Front | undefined, path: string): AmountRead | null {
  return front === undefined || front.kind === 'nothing' ? null : readAmount(sheet, front, path)
}

/** `cost: ~` takes back what an earlier note said. */
function takeBackDeeds(sheet: Sheet, part: string, map: FrontMap): void {
  for (const entry of map.entries) {
    if (entry.value.kind !== 'nothing' || !Object.hasOwn(partDeeds, entry.key)) continue
    const target = { subject: { kind: 'part', id: part }, role: 'price', key: '' } as const
    stateValue(sheet, target, { entry, value: { type: 'nothing' }, place: entry.value.place })
  }
}

function readAction(front: Front | undefined): { word: Action; place: Place } | null {
  const scalar = scalarOf(front)
  const word = wordOf(scalar?.text, actions)
  return scalar === null || word === null ? null : { word, place: placeOfText(scalar) }
}

/** How many: a plain number above nothing, as an exact decimal. */
export function readQty(sheet: Sheet, front: Front | undefined, path: string): { amount: string; place: Place } | null {
  if (front === undefined || front.kind === 'nothing') return null
  const text = scalarOf(front)?.text ?? ''
  const exact = readBareNumber(text, sheet.options.decimal)?.exact.number ?? ''
  const amount = positiveDecimal(text, sheet.options.decimal) ?? positiveDecimal(exactDecimal(exact) ?? '', 'point')
  if (amount !== null) return { amount, place: placeOfText(front) }
  if (front.kind === 'scalar') reportQty(sheet, { text, place: placeOfText(front) }, { path, about: path })
  else {
    const message = `Unexpected ${quotedFront(front)} for \`${path}\`, expected a number such as \`2\``
    report(sheet, 'not-a-quantity', { place: placeOfText(front), message, about: [path] })
  }
  return null
}

/** A part that went back without a reason. */
export function reportWithoutWhy(
  sheet: Sheet,
  { part, keyPlace, action }: { part: string; keyPlace: Place; action: Action | undefined },
): void {
  if (action !== 'rejected' && action !== 'returned') return
  const message = `Unexpected \`${action}\` part \`${part}\` without a reason, expected \`why:\``
  report(sheet, 'rejected-without-why', { place: keyPlace, message, mend: 'why: …', about: [part] })
}
