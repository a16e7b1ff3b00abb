import type { FrontEntry } from '../notes/front.ts'
import { addReference } from './add-reference.ts'
import { itemsOf, scalarOf } from './front-tree.ts'
import { readPath } from './identifier.ts'
import { dimensionsMeasured } from './measured-property.ts'
import { quoted } from './quoted.ts'
import { readFigure } from './read-figure.ts'
import { readWords } from './read-words.ts'
import { addFact, report, type Sheet } from './sheet.ts'

/** `fuel-tank/ground-clearance: at least 200 mm`, `check:voltage-drop: all circuits`. */
export function stateRequirements(sheet: Sheet, entries: readonly FrontEntry[]): void {
  for (const entry of entries) {
    if (entry.value.kind === 'nothing') continue
    if (entry.key.startsWith('check:')) stateAsking(sheet, entry)
    else stateRequirement(sheet, entry)
  }
}

/** A check that is asked whatever is there: of all, or of the subjects named. */
function stateAsking(sheet: Sheet, { key, keyPlace, value }: FrontEntry): void {
  const check = key.slice('check:'.length)
  const named = itemsOf(value).flatMap(front => readWords(sheet, front)?.words.text ?? [])
  const isAll = value.kind === 'scalar' && /^all\b/i.test(scalarOf(value)?.text.trim() ?? '')
  addFact(sheet, { type: 'asking', check, subjects: isAll ? null : named, place: keyPlace })
  addReference(sheet, { to: 'check', name: check, strictness: 'must-exist', place: keyPlace })
}

function stateRequirement(sheet: Sheet, { key, keyPlace, value }: FrontEntry): void {
  const path = readPath(key)
  if (path === null || path.property === null) {
    const message = `Unexpected key ${quoted(key)} in \`requirements\`, expected a path such as \`fuel-tank/length\` or \`check:voltage-drop\``
    report(sheet, 'unknown-key', { place: keyPlace, message })
    return
  }
  const { subject, bare, property } = path
  const dimensions = dimensionsMeasured({ subject, bare, property, kind: null, keyPlace })
  const read = readFigure(sheet, value, { path: key, role: 'setting', dimensions })
  if (read !== null)
    addFact(sheet, { type: 'requirement', path: key, keyPlace, value: read.quantity, place: read.place })
}
