import type { Place } from '../findings/place.ts'
import type { Front, FrontEntry, FrontMap } from '../notes/front.ts'
import { closedWords, wordOf } from './closed-words.ts'
import type { Subject } from './fact.ts'
import { schemaOf } from './field-schema.ts'
import type { Fields } from './fields.ts'
import { entriesOf, entryOf, scalarOf } from './front-tree.ts'
import { isIdentifier } from './identifier.ts'
import { kindsStated } from './kinds-stated.ts'
import { sessionKeys, volumeKeys } from './note-keys.ts'
import { oneOf, quoted } from './quoted.ts'
import { reportNothing } from './report-nothing.ts'
import { placeOfText } from './scalar-text.ts'
import { report, type Sheet } from './sheet.ts'
import { stateFields } from './state-fields.ts'
import { stateMeasurements } from './state-measurements.ts'
import { statePart } from './state-parts.ts'
import { stateClosings, stateSpend, stateTemporary, stateTests } from './state-rows.ts'
import type { Figure } from './stated-note.ts'
import { reportStructure } from './structure-findings.ts'
import { circuitKeys, connectorKeys } from './wiring-keys.ts'

const sessionSchema = schemaOf(sessionKeys)

type StateSection = (sheet: Sheet, section: Front, front: FrontMap) => void

/** What each key of a session note states; title, date and hours are the note's head. */
const sections: Readonly<Record<string, StateSection>> = {
  parts: (sheet, section) => {
    for (const entry of entriesOf(section)) statePart(sheet, entry)
  },
  measurements: (sheet, section, front) => stateMeasurements(sheet, entriesOf(section), kindsStated(front)),
  circuits: (sheet, section) => {
    for (const entry of entriesOf(section)) reportSupply(sheet, entry)
    stateThings(sheet, section, { kind: 'circuit', role: 'circuit', fields: circuitKeys })
  },
  connectors: (sheet, section) =>
    stateThings(sheet, section, { kind: 'connector', role: 'pin', fields: connectorKeys }),
  volumes: (sheet, section) => stateThings(sheet, section, { kind: 'volume', role: 'volume', fields: volumeKeys }),
  spend: stateSpend,
  tests: stateTests,
  temporary: stateTemporary,
  clears: (sheet, section) => stateClosings(sheet, section, 'temporary'),
  closes: (sheet, section) => stateClosings(sheet, section, 'job'),
}

/** What the front matter of a session note states, in the order of its keys. */
export function stateSession(sheet: Sheet, front: FrontMap): void {
  reportStructure(sheet, { front, schema: sessionSchema })
  for (const { key, value } of front.entries) if (Object.hasOwn(sections, key)) sections[key]?.(sheet, value, front)
}

const notThere = 'this note puts nothing of it into the record'

/** Things of one kind, each with its mapping of properties. */
function stateThings(
  sheet: Sheet,
  section: Front,
  of: { kind: Subject['kind']; role: Figure['role']; fields: Fields },
): void {
  for (const entry of entriesOf(section)) {
    const { key, keyPlace, value } = entry
    if (!isIdentifier(key)) reportName(sheet, key, keyPlace)
    reportNothing(sheet, entry, { path: `${of.kind}:${key}`, leaves: notThere })
    if (value.kind !== 'map') continue
    stateFields(
      sheet,
      { subject: { kind: of.kind, id: key }, role: of.role, key: '' },
      { map: value, fields: of.fields },
    )
  }
}

function reportName(sheet: Sheet, key: string, place: Place): void {
  const message = `Unexpected name ${quoted(key)}, expected lower-case words joined by hyphens such as \`fuel-pump\``
  report(sheet, 'unknown-key', { place, message })
}

/** `supply:` is one of three words or the name of a circuit. */
function reportSupply(sheet: Sheet, { key, value }: FrontEntry): void {
  const supply = scalarOf(entryOf(value, 'supply')?.value)
  if (supply === null || isIdentifier(supply.text.trim()) || wordOf(supply.text, closedWords.supply) !== null) return
  const message = `Unexpected ${quoted(supply.text)} for \`circuit:${key}/supply\`, expected ${oneOf(closedWords.supply)} or the name of a circuit`
  report(sheet, 'unknown-value', { place: placeOfText(supply), message, about: [`circuit:${key}`] })
}
