import type { Front, FrontMap } from '../notes/front.ts'
import { addReference } from './add-reference.ts'
import { closedWords, wordOf } from './closed-words.ts'
import type { ClosingFact } from './fact.ts'
import { entryOf, itemsOf, scalarOf } from './front-tree.ts'
import { identifierOf } from './identifier.ts'
import { readProse, readWords } from './read-words.ts'
import { addFact, report, type Sheet } from './sheet.ts'
import { readCost, readQty } from './state-mention.ts'

const rowsOf = (section: Front): FrontMap[] => itemsOf(section).flatMap(row => (row.kind === 'map' ? [row] : []))

/** Says what a row lacks without which nothing can be made of it. */
function reportLacking(sheet: Sheet, row: FrontMap, key: string): void {
  report(sheet, 'front-matter', {
    place: row.place,
    message: `Unexpected entry without \`${key}\`, expected \`${key}:\` with words`,
    mend: `${key}: …`,
  })
}

/** Money spent that belongs to no part. */
export function stateSpend(sheet: Sheet, section: Front): void {
  for (const [index, row] of rowsOf(section).entries()) {
    const what = readProse(sheet, entryOf(row, 'what')?.value)
    const system = readWords(sheet, entryOf(row, 'system')?.value)
    const from = readWords(sheet, entryOf(row, 'from')?.value)
    if (what === null) reportLacking(sheet, row, 'what')
    addFact(sheet, {
      type: 'spend',
      what: what?.words ?? { text: '', marks: [] },
      place: what?.place ?? row.place,
      cost: readCost(sheet, entryOf(row, 'cost')?.value, `spend/${index + 1}/cost`),
      qty: readQty(sheet, entryOf(row, 'qty')?.value, `spend/${index + 1}/qty`)?.amount ?? null,
      system: system?.words.text ?? null,
      from: from?.words ?? null,
    })
    if (system !== null)
      addReference(sheet, { to: 'system', name: system.words.text, strictness: 'must-exist', place: system.place })
    if (from !== null)
      addReference(sheet, { to: 'donor', name: from.words.text, strictness: 'near-only', place: from.place })
  }
}

/** What was tried, and how it came out. */
export function stateTests(sheet: Sheet, section: Front): void {
  for (const row of rowsOf(section)) {
    const what = readProse(sheet, entryOf(row, 'what')?.value)
    const written = entryOf(row, 'result')
    const result = wordOf(scalarOf(written?.value)?.text, closedWords.result)
    const note = readProse(sheet, entryOf(row, 'note')?.value)
    if (what === null) reportLacking(sheet, row, 'what')
    else if (written === null || written.value.kind === 'nothing') reportLacking(sheet, row, 'result')
    else if (result !== null)
      addFact(sheet, { type: 'test', what: what.words, place: what.place, result, note: note?.words ?? null })
  }
}

/** Temporary fixes; one without an identifier takes it from its words. */
export function stateTemporary(sheet: Sheet, section: Front): void {
  for (const row of rowsOf(section)) {
    const what = readProse(sheet, entryOf(row, 'what')?.value)
    const id = readWords(sheet, entryOf(row, 'id')?.value)?.words.text
    const part = readWords(sheet, entryOf(row, 'part')?.value)
    if (what === null) {
      reportLacking(sheet, row, 'what')
      continue
    }
    addFact(sheet, {
      type: 'temporary',
      id: id ?? identifierOf(what.words.text),
      what: what.words,
      place: what.place,
      part: part?.words.text ?? null,
      until: readProse(sheet, entryOf(row, 'until')?.value)?.words ?? null,
      before: wordOf(scalarOf(entryOf(row, 'before')?.value)?.text, closedWords.before),
    })
    if (part !== null)
      addReference(sheet, { to: 'part', name: part.words.text, strictness: 'must-exist', place: part.place })
  }
}

/** Jobs and temporary fixes that are done with, by identifier or by the same words. */
export function stateClosings(sheet: Sheet, section: Front, of: ClosingFact['of']): void {
  for (const front of itemsOf(section)) {
    const named = readWords(sheet, front)
    if (named !== null) addFact(sheet, { type: 'closing', of, named: named.words.text, place: named.place })
  }
}
