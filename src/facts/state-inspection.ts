import type { Place } from '../findings/place.ts'
import type { Front, FrontEntry, FrontMap } from '../notes/front.ts'
import { addReference } from './add-reference.ts'
import { closedWords, wordOf } from './closed-words.ts'
import type { ReferenceFact } from './fact.ts'
import { words } from './field-makers.ts'
import { schemaOf } from './field-schema.ts'
import { entriesOf, entryOf, itemsOf, scalarOf } from './front-tree.ts'
import { inspectionKeys } from './note-keys.ts'
import { quoted } from './quoted.ts'
import { readProse, readWords } from './read-words.ts'
import { addFact, report, type Sheet } from './sheet.ts'
import { stateFields } from './state-fields.ts'
import { reportStructure } from './structure-findings.ts'

const inspectionSchema = schemaOf(inspectionKeys)
const evidenceKinds = [
  'part',
  'circuit',
  'connector',
  'loom',
  'earth-point',
  'measurement',
  'session',
  'job',
  'check',
  'test',
  'photo',
] as const satisfies readonly ReferenceFact['to'][]

/** The points that an inspector will ask about, each with its evidence. */
export function stateInspection(sheet: Sheet, front: FrontMap): void {
  reportStructure(sheet, { front, schema: inspectionSchema })
  const heading = { subject: { kind: 'build', id: 'inspection' }, role: 'setting', key: '' } as const
  stateFields(sheet, heading, { map: front, fields: { rule: words(), authority: words() } })
  for (const point of entriesOf(entryOf(front, 'points')?.value)) statePoint(sheet, point)
}

function statePoint(sheet: Sheet, { key, keyPlace, value }: FrontEntry): void {
  const ask = readProse(sheet, value.kind === 'scalar' ? value : entryOf(value, 'ask')?.value)
  const evidence = itemsOf(entryOf(value, 'evidence')?.value).flatMap(front => readEvidence(sheet, front) ?? [])
  addFact(sheet, {
    type: 'inspection',
    id: key,
    place: keyPlace,
    ask: ask?.words ?? { text: key.replaceAll('-', ' '), marks: [] },
    before: wordOf(scalarOf(entryOf(value, 'before')?.value)?.text, closedWords.before),
    evidence,
  })
}

/** `part:master-cylinder`: what must exist for the point to be closed. */
function readEvidence(sheet: Sheet, front: Front): { ref: string; place: Place } | null {
  const read = readWords(sheet, front)
  if (read === null) return null
  const { text } = read.words
  const colon = text.indexOf(':')
  const to = wordOf(text.slice(0, Math.max(colon, 0)), evidenceKinds)
  const name = text.slice(colon + 1).trim()
  if (to === null || name === '') {
    const message = `Unexpected ${quoted(text)} as evidence, expected a thing with its kind such as \`part:master-cylinder\``
    report(sheet, 'unknown-value', { place: read.place, message })
    return { ref: text, place: read.place }
  }
  addReference(sheet, { to, name, strictness: 'must-exist', place: read.place })
  return { ref: `${to}:${name}`, place: read.place }
}
