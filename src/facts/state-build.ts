import type { Front, FrontMap } from '../notes/front.ts'
import { buildKeys, earthPointKeys, electricalKeys, loomKeys } from './build-keys.ts'
import { privateKinds, wordOf } from './closed-words.ts'
import type { Subject } from './fact.ts'
import { words } from './field-makers.ts'
import { schemaOf } from './field-schema.ts'
import type { Fields } from './fields.ts'
import { entriesOf, entryOf, itemsOf, scalarOf } from './front-tree.ts'
import { readWords } from './read-words.ts'
import { reportNothing } from './report-nothing.ts'
import { addFact, type Sheet } from './sheet.ts'
import { stateFields } from './state-fields.ts'
import { stateLimits } from './state-limits.ts'
import { readCost } from './state-mention.ts'
import { stateRequirements } from './state-requirements.ts'
import { reportStructure } from './structure-findings.ts'

const buildSchema = schemaOf(buildKeys)

/** What each key of build.md states; the others are the build's head. */
const sections: Readonly<Record<string, (sheet: Sheet, section: Front) => void>> = {
  electrical: (sheet, section) =>
    stateThing(sheet, section, { kind: 'build', id: 'electrical', fields: electricalKeys }),
  donors: stateDonors,
  systems: (sheet, section) => stateThings(sheet, section, { kind: 'system', fields: { name: words() } }),
  looms: (sheet, section) => stateThings(sheet, section, { kind: 'loom', fields: loomKeys }),
  'earth-points': (sheet, section) => stateThings(sheet, section, { kind: 'earth-point', fields: earthPointKeys }),
  limits: (sheet, section) => stateLimits(sheet, entriesOf(section)),
  requirements: (sheet, section) => stateRequirements(sheet, entriesOf(section)),
  editions: stateEditions,
}

/** What the front matter of build.md states, in the order of its keys. */
export function stateBuild(sheet: Sheet, front: FrontMap): void {
  reportStructure(sheet, { front, schema: buildSchema })
  for (const { key, value } of front.entries) if (Object.hasOwn(sections, key)) sections[key]?.(sheet, value)
}

type NamedThing = Subject & { readonly fields: Fields }

/** Things by their names, each with its mapping; a lone text is the thing's name, and nothing declares it all the same. */
function stateThings(sheet: Sheet, section: Front, of: Omit<NamedThing, 'id'>): void {
  for (const entry of entriesOf(section)) {
    const { value } = entry
    reportNothing(sheet, entry, { path: `${of.kind}:${entry.key}`, leaves: 'it goes by that word alone' })
    const isShort = value.kind !== 'map' || value.entries.length === 0
    const short: Front = value.kind === 'scalar' ? value : { kind: 'nothing', place: value.place }
    const map: Front = { kind: 'map', place: value.place, entries: [{ ...entry, key: 'name', value: short }] }
    stateThing(sheet, isShort ? map : value, { ...of, id: entry.key })
  }
}

function stateThing(sheet: Sheet, value: Front, { kind, id, fields }: NamedThing): void {
  if (value.kind === 'map')
    stateFields(sheet, { subject: { kind, id }, role: 'setting', key: '' }, { map: value, fields })
}

/** Vehicles that parts come from, each with its price. */
function stateDonors(sheet: Sheet, section: Front): void {
  for (const entry of entriesOf(section)) {
    const { key, keyPlace, value } = entry
    reportNothing(sheet, entry, { path: `donor:${key}`, leaves: 'it goes by that word alone and cost nothing' })
    addFact(sheet, {
      type: 'donor',
      id: key,
      place: keyPlace,
      name: readWords(sheet, value.kind === 'scalar' ? value : entryOf(value, 'name')?.value)?.words ?? null,
      cost: readCost(sheet, entryOf(value, 'cost')?.value, `donor:${key}/cost`),
    })
  }
}

/** Who the record is published for. An edition whose list cannot be read withholds everything. */
function stateEditions(sheet: Sheet, section: Front): void {
  for (const entry of entriesOf(section)) {
    const { key, keyPlace, value } = entry
    if (value.kind === 'nothing' && key !== 'full')
      reportNothing(sheet, entry, { path: `editions/${key}`, leaves: 'that edition withholds nothing' })
    const written = itemsOf(entryOf(value, 'withhold')?.value)
    const known = written.flatMap(front => wordOf(scalarOf(front)?.text, privateKinds) ?? [])
    const isClear = known.length === written.length && (value.kind === 'map' || value.kind === 'nothing')
    addFact(sheet, { type: 'edition', name: key, place: keyPlace, withhold: isClear ? known : privateKinds })
  }
}
