import type { FrontEntry } from '../notes/front.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { addReference } from './add-reference.ts'
import { schemaOf } from './field-schema.ts'
import type { Fields } from './fields.ts'
import { entryOf } from './front-tree.ts'
import { quotedFront } from './quoted.ts'
import { readFigure } from './read-figure.ts'
import { readProse } from './read-words.ts'
import { placeOfText } from './scalar-text.ts'
import { addFact, report, type Sheet } from './sheet.ts'
import { reportStructure } from './structure-findings.ts'

const limitKeys: Fields = { min: { holds: 'anything' }, max: { holds: 'anything' }, why: { holds: 'prose' } }
const limitSchema = schemaOf(limitKeys)

/** `voltage-drop/lighting: { max: 2 %, why: … }`: a check's own limit set aside, with the reason. */
export function stateLimits(sheet: Sheet, entries: readonly FrontEntry[]): void {
  for (const entry of entries) if (entry.value.kind !== 'nothing') stateLimit(sheet, entry)
}

function stateLimit(sheet: Sheet, { key, keyPlace, value }: FrontEntry): void {
  const [check = '', ...rest] = key.split('/')
  const ends = readEnds(sheet, key, value)
  const why = readProse(sheet, entryOf(value, 'why')?.value)
  if (ends === null) return
  const of = rest.length === 0 ? null : rest.join('/')
  addFact(sheet, { type: 'limit', check, of, keyPlace, place: value.place, ...ends, why: why?.words ?? null })
  addReference(sheet, { to: 'check', name: check, strictness: 'must-exist', place: keyPlace })
  if (why !== null) return
  const message = `Unexpected limit \`${key}\` without a reason, expected \`why:\``
  report(sheet, 'limit-without-why', { place: keyPlace, message, mend: 'why: …', about: [key] })
}

interface Ends {
  readonly min: Quantity | null
  readonly max: Quantity | null
}

/** `{ min:, max: }`, or in short `at most 2 %`. */
function readEnds(sheet: Sheet, key: string, value: FrontEntry['value']): Ends | null {
  const end = (name: string): Quantity | null => {
    const front = entryOf(value, name)?.value
    if (front === undefined || front.kind === 'nothing') return null
    return readFigure(sheet, front, { path: `limit:${key}/${name}`, role: 'setting', dimensions: [] })?.quantity ?? null
  }
  if (value.kind === 'scalar') return readShortEnd(sheet, key, value)
  reportStructure(sheet, { front: value, schema: limitSchema, under: ['limits', key] })
  return value.kind === 'map' ? { min: end('min'), max: end('max') } : null
}

function readShortEnd(sheet: Sheet, key: string, value: FrontEntry['value']): Ends | null {
  const quantity = readFigure(sheet, value, { path: `limit:${key}`, role: 'setting', dimensions: [] })?.quantity
  if (quantity === undefined) return null
  if (quantity.bound !== null)
    return { min: quantity.bound === 'min' ? quantity : null, max: quantity.bound === 'max' ? quantity : null }
  const message = `Unexpected ${quotedFront(value)} for \`limits/${key}\`, expected \`at least\` or \`at most\` before it, or \`{ max: …, why: … }\``
  report(sheet, 'not-a-quantity', { place: placeOfText(value), message, about: [key] })
  return null
}
