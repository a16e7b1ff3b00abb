import type { Place } from '../findings/place.ts'
import type { FrontEntry } from '../notes/front.ts'
import { entriesOf } from './front-tree.ts'
import { readPath } from './identifier.ts'
import { type KindsStated, kindOf } from './kinds-stated.ts'
import type { MeasuredProperty } from './measured-property.ts'
import { quoted, quotedFront } from './quoted.ts'
import { reportNothing } from './report-nothing.ts'
import { placeOfText } from './scalar-text.ts'
import { report, type Sheet } from './sheet.ts'
import { stateMeasured } from './state-measured.ts'

/** `fuel-tank: { length: 860 mm }`, also `circuit:fuel-pump: { load: 7 A }` and a whole path as the key. */
export function stateMeasurements(sheet: Sheet, entries: readonly FrontEntry[], kinds: KindsStated): void {
  for (const entry of entries) stateThing(sheet, entry, kinds)
}

function stateThing(sheet: Sheet, entry: FrontEntry, kinds: KindsStated): void {
  const { key, keyPlace, value } = entry
  const path = readPath(key)
  if (path?.property === null) reportNothing(sheet, entry, { path: key, leaves: 'nothing of it was measured here' })
  if (path === null) reportName(sheet, key, keyPlace)
  else if (path.property === null) stateEach(sheet, { key, value }, { ...path, kind: kindOf(path, kinds) })
  else stateMeasured(sheet, value, { ...path, property: path.property, kind: kindOf(path, kinds), keyPlace })
}

function reportName(sheet: Sheet, key: string, place: Place): void {
  const message = `Unexpected name ${quoted(key)}, expected lower-case words joined by hyphens such as \`fuel-tank\``
  report(sheet, 'unknown-key', { place, message })
}

type ThingMeasured = Pick<MeasuredProperty, 'subject' | 'bare' | 'kind'>

/** Each property of a thing; a figure in the thing's own place is asked which property it is. */
function stateEach(
  sheet: Sheet,
  { key, value }: Pick<FrontEntry, 'key' | 'value'>,
  { subject, bare, kind }: ThingMeasured,
): void {
  for (const { key: property, keyPlace, value: own } of entriesOf(value))
    stateMeasured(sheet, own, { subject, bare, kind, property, keyPlace })
  if (value.kind === 'map' || value.kind === 'nothing') return
  const message = `Unexpected ${quotedFront(value)} for \`${key}\`, expected which of its properties that is, such as \`{ length: 860 mm }\``
  const mend = value.kind === 'scalar' ? `${key}: { length: ${value.text} }` : null
  report(sheet, 'not-a-quantity', { place: placeOfText(value), message, mend, about: [key] })
}
