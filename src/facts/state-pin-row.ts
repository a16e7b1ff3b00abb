import type { Nodes } from 'mdast'
import { addReference } from './add-reference.ts'
import { enterNode } from './body-figure.ts'
import { wordsOf } from './body-words.ts'
import type { FactValue } from './fact.ts'
import { figuresIn } from './figures-in.ts'
import type { Privacy } from './privacy.ts'
import { reportColour } from './property-stated.ts'
import type { WordsRead } from './read-words.ts'
import type { Row } from './row.ts'
import type { Sheet } from './sheet.ts'
import { addConnectorFact } from './state-connector.ts'

/** `| 1 | 0.75 mm² white/black | light-switch/2 | side lamps |` inside a connector. */
export function statePinRow(sheet: Sheet, row: Row): void {
  const id = row.around.connector?.id ?? null
  const pin = row.wordsOf('pin')
  if (id === null || pin === null) return
  const state = (key: string, read: { place: WordsRead['place']; value: FactValue; figure: string | null }): void =>
    addConnectorFact(sheet, { id, key: `pins.${pin.words.text}.${key}`, keyPlace: pin.place, ...read })
  stateWire(sheet, row, { state, path: `connector:${id}/pins.${pin.words.text}.wire` })
  for (const key of ['to', 'carries', 'circuit', 'meets', 'terminal']) {
    const read = row.wordsOf(key)
    if (read === null) continue
    state(key, { place: read.place, value: { type: 'words', words: read.words }, figure: null })
    if (key === 'circuit')
      addReference(sheet, { to: 'circuit', name: read.words.text, strictness: 'must-exist', place: read.place })
  }
}

interface Wire {
  readonly state: (key: string, read: { place: WordsRead['place']; value: FactValue; figure: string | null }) => void
  readonly path: string
}

/** The section is the cell's one area; the other words of the cell are the colour. */
function stateWire(sheet: Sheet, row: Row, { state, path }: Wire): void {
  const nodes = row.cellOf('wire')?.children ?? []
  const figures = figuresIn(nodes)
  const area = figures.find(({ quantity }) => quantity.dimension === 'area') ?? figures[0]
  const asked = { path: `${path}.area`, role: 'pin', dimensions: ['area'] } as const
  const read = area === undefined ? null : enterNode(sheet, area, asked)
  if (read !== null)
    state('wire.area', { place: read.place, value: { type: 'quantity', quantity: read.quantity }, figure: read.figure })
  const colour = coloursOf(nodes, { file: sheet.file, privacy: row.around.privacy })
  if (colour === null) return
  state('wire.colour', { place: colour.place, value: { type: 'words', words: colour.words }, figure: null })
  reportColour(sheet, { text: colour.words.text, place: colour.place, path: `${path}.colour` })
}

/** The words of a cell without its figures. */
function coloursOf(nodes: readonly Nodes[], where: { file: string; privacy: Privacy }): WordsRead | null {
  return wordsOf(
    nodes.filter(({ type }) => type !== 'quantity'),
    where,
  )
}
