import type { ConnectorNode } from '../../plugins/connector/node.ts'
import type { Place } from '../findings/place.ts'
import type { FrontScalar } from '../notes/front.ts'
import { addReference } from './add-reference.ts'
import type { Around } from './around.ts'
import { placeOfPosition } from './body-place.ts'
import type { FactValue } from './fact.ts'
import { kindsOf, markWhole, type Privacy } from './privacy.ts'
import { readFigure } from './read-figure.ts'
import { addFact, markFigure, type Sheet } from './sheet.ts'

/** `:::connector{#stalk-switch mates="column-loom"}`: the name, mate and rating that stand in the container's braces. */
export function stateConnector(sheet: Sheet, node: ConnectorNode, { privacy }: Around): void {
  if (node.id === null || node.position === undefined) return
  const whole = placeOfPosition(node.position, sheet.file)
  const placeOf = (attribute: string): Place => {
    const position = node.attributePositions[attribute]
    return position === undefined ? whole : placeOfPosition(position, sheet.file)
  }
  const state = (key: string, value: FactValue, figure: string | null = null): void =>
    addConnectorFact(sheet, { id: node.id ?? '', key, place: placeOf(key), keyPlace: whole, value, figure })
  if (node.name !== null) state('name', markedWords(node.name, privacy))
  if (node.mates !== null) {
    state('mates', markedWords(node.mates, privacy))
    addReference(sheet, { to: 'connector', name: node.mates, strictness: 'must-exist', place: placeOf('mates') })
  }
  if (node.rating === null) return
  const read = readFigure(sheet, scalarAt(node.rating, placeOf('rating')), {
    path: `connector:${node.id}/rating`,
    role: 'pin',
    dimensions: ['current'],
  })
  if (read === null) return
  markFigure(sheet, read.figure, kindsOf(privacy))
  state('rating', { type: 'quantity', quantity: read.quantity }, read.figure)
}

const markedWords = (text: string, privacy: Privacy): FactValue => ({
  type: 'words',
  words: { text, marks: markWhole(text, privacy) },
})

function scalarAt(text: string, place: Place): FrontScalar {
  return { kind: 'scalar', place, text, quoted: true, pieces: [{ from: 0, line: place.line, column: place.column }] }
}

interface ConnectorStated {
  readonly id: string
  readonly key: string
  readonly place: Place
  readonly keyPlace: Place
  readonly value: FactValue
  readonly figure: string | null
}

/** States one property of a connector, or of a pin of it: `pins.31b.wire.area`. */
export function addConnectorFact(sheet: Sheet, { id, ...stated }: ConnectorStated): void {
  const said = { observed: false, with: null, note: null, supersedes: false, bare: false }
  addFact(sheet, { type: 'property', subject: { kind: 'connector', id }, ...stated, ...said })
}
