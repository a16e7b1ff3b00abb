import type { FrontEntry, FrontMap } from '../notes/front.ts'
import { wordOf } from './closed-words.ts'
import type { Field, Fields } from './fields.ts'
import { itemsOf, scalarOf } from './front-tree.ts'
import { pathOf, refer, reportColour, stateValue, type Target } from './property-stated.ts'
import { readCable } from './read-cable.ts'
import { readFigure } from './read-figure.ts'
import { readShapes } from './read-shapes.ts'
import { readProse, readWords } from './read-words.ts'
import { placeOfText } from './scalar-text.ts'
import type { Sheet } from './sheet.ts'

/** States each key of a mapping that its fields know; what is not known was reported by the schema. */
export function stateFields(
  sheet: Sheet,
  target: Target,
  { map, fields }: { map: Pick<FrontMap, 'entries'>; fields: Fields },
): void {
  for (const entry of map.entries) {
    const field = Object.hasOwn(fields, entry.key) ? fields[entry.key] : undefined
    if (field !== undefined) stateField(sheet, target, { entry, field })
  }
}

type FieldOf<H extends Field['holds']> = Extract<Field, { holds: H }>
type StateAs<H extends Field['holds']> = (
  sheet: Sheet,
  target: Target,
  stated: { entry: FrontEntry; field: FieldOf<H> },
) => void

/** How each kind of field is stated; what is not here is read by a place of its own. */
const stateAs: { readonly [H in Field['holds']]?: StateAs<H> } = {
  words: stateWords,
  prose: stateWords,
  colour: stateWords,
  closed: (sheet, target, { entry, field }) => {
    if (wordOf(scalarOf(entry.value)?.text, field.words) !== null) stateWords(sheet, target, { entry, field })
  },
  figure: stateFigure,
  list: stateList,
  shapes: stateShapes,
  cable: stateCable,
  return: stateReturn,
  group: stateGroup,
  named: stateNamed,
}

/** `key: ~` takes the value back, and with it all that a nested mapping says. */
function stateField(sheet: Sheet, target: Target, { entry, field }: { entry: FrontEntry; field: Field }): void {
  if (entry.value.kind === 'nothing')
    stateValue(sheet, target, { entry, value: { type: 'nothing' }, place: entry.value.place })
  else (stateAs[field.holds] as StateAs<Field['holds']> | undefined)?.(sheet, target, { entry, field })
}

function stateWords(sheet: Sheet, target: Target, { entry, field }: { entry: FrontEntry; field: Field }): void {
  const read = field.holds === 'prose' ? readProse(sheet, entry.value) : readWords(sheet, entry.value)
  if (read === null) return
  stateValue(sheet, target, { entry, place: read.place, value: { type: 'words', words: read.words } })
  if (field.holds === 'words') refer(sheet, field.refer, read)
  if (field.holds === 'colour')
    reportColour(sheet, { text: read.words.text, place: read.place, path: pathOf(target, entry.key) })
}

function stateFigure(
  sheet: Sheet,
  target: Target,
  { entry, field }: { entry: FrontEntry; field: FieldOf<'figure'> },
): void {
  const asked = { path: pathOf(target, entry.key), role: target.role, dimensions: field.dimensions }
  const read = readFigure(sheet, entry.value, asked)
  if (read === null) return
  stateValue(sheet, target, { entry, ...read, value: { type: 'quantity', quantity: read.quantity } })
}

function stateList(
  sheet: Sheet,
  target: Target,
  { entry, field }: { entry: FrontEntry; field: FieldOf<'list'> },
): void {
  const entries = itemsOf(entry.value).flatMap(front => readWords(sheet, front) ?? [])
  stateValue(sheet, target, { entry, place: entry.value.place, value: { type: 'list', entries } })
  for (const read of entries) refer(sheet, field.refer, read)
}

function stateShapes(sheet: Sheet, target: Target, { entry }: { entry: FrontEntry }): void {
  const shapes = readShapes(sheet, entry.value, pathOf(target, entry.key))
  if (shapes.length > 0)
    stateValue(sheet, target, { entry, place: placeOfText(entry.value), value: { type: 'shapes', shapes } })
}

const inside = (target: Target, entry: FrontEntry): Target => ({ ...target, key: `${target.key}${entry.key}.` })

/** `fuse: { rating: 15 A }`, in short `fuse: 15 A`. */
function stateGroup(
  sheet: Sheet,
  target: Target,
  { entry, field }: { entry: FrontEntry; field: FieldOf<'group'> },
): void {
  const { value } = entry
  if (value.kind === 'map') stateFields(sheet, inside(target, entry), { map: value, fields: field.fields })
  else if (value.kind === 'scalar' && field.short !== undefined) {
    const entries = [{ ...entry, key: field.short }]
    stateFields(sheet, inside(target, entry), { map: { entries }, fields: field.fields })
  }
}

/** `cable: { area: 2.5 mm², colour: green/purple }`, in short `cable: 2.5 mm² green/purple`. */
function stateCable(
  sheet: Sheet,
  target: Target,
  { entry, field }: { entry: FrontEntry; field: FieldOf<'cable'> | FieldOf<'return'> },
): void {
  const { value } = entry
  const within = inside(target, entry)
  if (value.kind === 'map') stateFields(sheet, within, { map: value, fields: field.fields })
  if (value.kind !== 'scalar') return
  const colourAlone = field.holds === 'cable' && field.colourAlone === true
  const { area, colour } = readCable(sheet, value, { path: pathOf(target, entry.key), role: target.role, colourAlone })
  const areaEntry = { ...entry, key: 'area' }
  if (area !== null)
    stateValue(sheet, within, { entry: areaEntry, ...area, value: { type: 'quantity', quantity: area.quantity } })
  if (colour === null) return
  const { words, place } = colour
  stateValue(sheet, within, { entry: { ...entry, key: 'colour' }, place, value: { type: 'words', words } })
  reportColour(sheet, { text: words.text, place, path: pathOf(within, 'colour') })
}

/** `return: chassis`, or a cable: `return` itself says which of the two it is. */
function stateReturn(
  sheet: Sheet,
  target: Target,
  { entry, field }: { entry: FrontEntry; field: FieldOf<'return'> },
): void {
  const isChassis = scalarOf(entry.value)?.text.trim() === 'chassis'
  const words = { text: isChassis ? 'chassis' : 'cable', marks: [] }
  const before = sheet.facts.length
  if (!isChassis) stateCable(sheet, target, { entry, field })
  if (isChassis || sheet.facts.length > before || entry.value.kind === 'map')
    stateValue(sheet, target, { entry, place: placeOfText(entry.value), value: { type: 'words', words } })
}

/** Names of the builder's own: `zones: { engine-bay: 70 °C }`, `pins: { 31b: … }`. */
function stateNamed(
  sheet: Sheet,
  target: Target,
  { entry, field }: { entry: FrontEntry; field: FieldOf<'named'> },
): void {
  if (entry.value.kind !== 'map') return
  for (const named of entry.value.entries) stateField(sheet, inside(target, entry), { entry: named, field: field.each })
}
