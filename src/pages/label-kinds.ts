import type { Subject } from '../facts/fact.ts'
import type { AsBuiltRecord, Thing } from '../record/record.ts'
import { anchorName, pageAddress } from './addresses.ts'
import type { Atlas } from './atlas.ts'
import { standing } from './page-scope.ts'
import { isGone } from './part-states.ts'
import { hasSheet } from './sheet.ts'
import { subjectAddress } from './thing-addresses.ts'
import { wiringOf } from './wiring-of.ts'

/** Something that may bear a label. */
export interface Labelled {
  readonly name: string
  /** As a link in a note writes it: `circuit:fuel-pump`. */
  readonly identifier: string
  /** Its page within the record. */
  readonly address: string
}

export interface LabelKind {
  readonly title: string
  readonly id: string
  readonly things: readonly Labelled[]
}

/** Everything at hand that may bear a label, by kind; what has left the build bears none. */
export function labelKinds(atlas: Atlas): LabelKind[] {
  const { record } = atlas
  const hasWiring = hasSheet(atlas, 'wiring')
  const boxes = hasWiring ? wiringOf(atlas).fuseBoxes : []
  const others = new Set([...boxes, ...record.connectors, ...record.looms].map(({ id }) => id))
  const parts = record.parts.filter(part => !isGone(part.state) && !others.has(part.id))
  const kinds = [
    { title: 'Parts', id: 'parts', things: parts.map(labelled('part')) },
    { title: 'Fuse boxes', id: 'fuse-boxes', things: boxes.map(labelledBox) },
    { title: 'Connectors', id: 'connectors', things: record.connectors.map(labelled('connector')) },
    { title: 'Wires by circuit', id: 'circuits', things: record.circuits.filter(isThere).map(labelled('circuit')) },
    { title: 'Looms', id: 'looms', things: hasWiring ? record.looms.map(labelled('loom')) : [] },
    { title: 'Earth points', id: 'earth-points', things: earthPoints(record, hasWiring) },
  ]
  return kinds.filter(({ things }) => things.length > 0)
}

const labelled =
  (kind: Subject['kind']) =>
  ({ id, name }: Pick<Thing, 'id' | 'name'>): Labelled => ({
    name,
    identifier: `${kind}:${id}`,
    address: subjectAddress({ kind, id }),
  })

const labelledBox = ({ id, name }: { readonly id: string; readonly name: string }): Labelled => ({
  name,
  identifier: `part:${id}`,
  address: `${pageAddress('wiring')}#${anchorName('f', id)}`,
})

function isThere({ properties }: Thing): boolean {
  const state = standing(properties, 'state')
  return !(state?.value.type === 'words' && state.value.words.text === 'removed')
}

const earthPoints = ({ earthPoints: points }: AsBuiltRecord, hasWiring: boolean): Labelled[] =>
  hasWiring ? points.map(labelled('earth-point')) : []
