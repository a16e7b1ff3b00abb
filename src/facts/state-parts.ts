import type { Place } from '../findings/place.ts'
import type { FrontEntry, FrontMap } from '../notes/front.ts'
import { readQuantities } from '../quantities/read-quantities.ts'
import { schemaOf } from './field-schema.ts'
import { entryOf, scalarOf, textOf } from './front-tree.ts'
import { identifierOf, isIdentifier } from './identifier.ts'
import { dimensionsOf, propertiesOf } from './kinds.ts'
import { isNear } from './near-words.ts'
import { partDeeds, partWords } from './part-keys.ts'
import { quoted, quotedFront } from './quoted.ts'
import { readValue } from './read-figure.ts'
import { reportKind } from './report-kind.ts'
import { placeOfText } from './scalar-text.ts'
import { report, type Sheet } from './sheet.ts'
import { stateFields } from './state-fields.ts'
import { stateMeasured } from './state-measured.ts'
import { stateMention } from './state-mention.ts'
import { reportKey, reportStructure } from './structure-findings.ts'

const partKeys = { ...partWords, ...partDeeds }
const partSchema = schemaOf(partKeys)

/** What a note says of one part: its deeds, its words, and its own figures as measurements. */
export function statePart(sheet: Sheet, entry: FrontEntry): void {
  const { value } = entry
  if (value.kind === 'map' || value.kind === 'nothing') {
    const map: FrontMap = value.kind === 'map' ? value : { kind: 'map', place: value.place, entries: [] }
    statePartMap(sheet, map, { part: partNamed(sheet, entry), keyPlace: entry.keyPlace })
    return
  }
  const message = `Unexpected ${quotedFront(value)} for \`${entry.key}\`, expected a mapping such as \`{ name: … }\``
  report(sheet, 'front-matter', { place: value.place, message })
}

function statePartMap(sheet: Sheet, map: FrontMap, { part, keyPlace }: { part: string; keyPlace: Place }): void {
  const known = { ...map, entries: map.entries.filter(({ key }) => isKnown(key)) }
  reportStructure(sheet, { front: known, schema: partSchema, under: ['parts', part] })
  const kind = scalarOf(entryOf(map, 'kind')?.value)
  if (kind !== null) reportKind(sheet, { kind: kind.text.trim(), part, place: placeOfText(kind) })
  stateMention(sheet, { part, keyPlace, map })
  const target = { subject: { kind: 'part', id: part }, role: 'measurement', key: '' } as const
  stateFields(sheet, target, { map: known, fields: partWords })
  for (const own of map.entries) if (!isKnown(own.key)) stateOwnFigure(sheet, own, { part, map })
}

const isKnown = (key: string): boolean => Object.hasOwn(partKeys, key)

/** The identifier of a part; words in its stead are made into one, and said so. */
function partNamed(sheet: Sheet, { key, keyPlace }: FrontEntry): string {
  if (isIdentifier(key)) return key
  const mend = identifierOf(key)
  const message = `Unexpected name ${quoted(key)}, expected lower-case words joined by hyphens such as \`${mend || 'fuel-tank'}\``
  report(sheet, 'unknown-key', { place: keyPlace, message, mend: mend === '' ? null : mend })
  return mend === '' ? key : mend
}

/** Any key that is no other: a figure is a measurement of the part, anything else is a key that is not known. */
function stateOwnFigure(sheet: Sheet, own: FrontEntry, { part, map }: { part: string; map: FrontMap }): void {
  const { key: property, keyPlace } = own
  const kind = textOf(map, 'kind')
  if (readsAsFigure(sheet, own, kind)) {
    stateMeasured(sheet, own.value, { subject: { kind: 'part', id: part }, bare: false, property, kind, keyPlace })
    return
  }
  const known = [...Object.keys(partKeys), ...propertiesOf(kind)]
  const otherwise = 'a key such as `name`, `kind` or `cost`, or a figure with its unit'
  reportKey(sheet, { front: map, under: ['parts', part] }, { path: [property], known, otherwise })
}

function readsAsFigure(sheet: Sheet, { key, value }: FrontEntry, kind: string | null): boolean {
  if (dimensionsOf(key, kind).length > 0) return true
  if (value.kind === 'map') return value.entries.some(inner => inner.key === 'value')
  const text = scalarOf(value)?.text.trim()
  if (text === undefined) return false
  const quantity = readValue(text, [], sheet.options)
  if (quantity === null) return readQuantities(text, sheet.options).doubts.some(({ rule }) => rule === 'ambiguous-unit')
  const isMistyped = quantity.unit === '1' && Object.keys(partKeys).some(known => isNear(key, known))
  return quantity.dimension !== 'money' && !isMistyped
}
