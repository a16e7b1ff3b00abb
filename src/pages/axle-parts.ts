import { quantityAt } from '../record/lookups.ts'
import type { Part } from '../record/record.ts'
import { pageAddress } from './addresses.ts'
import { type AxleAnswer, addedMasses, areAxlesWeighed, axleState, unweighedParts } from './axle-figures.ts'
import { drawAxleLoads } from './axle-view.ts'
import type { TableRow } from './blocks.ts'
import type { Cell } from './cells.ts'
import { figure, listed, look, plain, wordsCell } from './inline.ts'
import { massText } from './masses.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, heading, row, table, words } from './tables.ts'
import type { Hung } from './weights-drawing.ts'

/** For the page of one answer: the drawing, the axles in a table, and which parts nobody weighed. */
export function axleDrawing(scope: PageScope): PartOfPage[] {
  const masses = scope.link('every mass and its place', `${pageAddress('checks', 'axle-loads')}#masses`)
  return [
    heading('What stands where', 'where'),
    ...drawAxleLoads(scope),
    axleTable(scope),
    ...unweighedLine(scope),
    words('note', [plain('In a table: '), masses, plain('.')]),
  ]
}

/** For the page of the check: the same, and every mass with the words in which it was written. */
export function axleMasses(scope: PageScope): PartOfPage[] {
  return [
    heading('What stands where', 'where'),
    ...drawAxleLoads(scope),
    axleTable(scope),
    heading('Masses and their places', 'masses', 3),
    massTable(scope),
    ...unweighedLine(scope),
  ]
}

function axleTable(scope: PageScope): PartOfPage {
  const [unladen, laden] = [axleState(scope, false), axleState(scope, true)]
  const cell = (answer: AxleAnswer | null): Cell =>
    wordsCell(answer === null ? 'not known' : [plain(answer.text, answer.href)])
  return table({
    caption: 'What stands on each axle, and the centre of gravity',
    columns: [column('What', 'wide'), column('Unladen', 'num'), column('Laden', 'num')],
    rows: [
      row([wordsCell('On the front axle'), cell(unladen.front), cell(laden.front)]),
      row([wordsCell('On the rear axle'), cell(unladen.rear), cell(laden.rear)]),
      ...(unladen.total === null && laden.total === null
        ? []
        : [row([wordsCell('On both'), cell(unladen.total), cell(laden.total)])]),
      row([wordsCell('Centre of gravity behind the front axle'), cell(unladen.centre), cell(laden.centre)]),
    ],
  })
}

function massTable(scope: PageScope): PartOfPage {
  const placed = scope.record.parts.filter(part => part.onVehicle && isPlaced(part))
  const place = (part: Part): number => quantityAt(part, 'at')?.value.si ?? 0
  return table({
    caption: 'Masses and their places',
    columns: [
      column('Part', 'wide'),
      column('Quantity', 'num'),
      column('Mass of one', 'figure'),
      column('Behind the front axle', 'figure'),
    ],
    groups: [
      {
        id: null,
        heading: [plain('On the vehicle')],
        rows: placed.sort((a, b) => place(a) - place(b)).map(part => massRow(scope, part)),
      },
      { id: null, heading: [plain('What laden adds')], rows: addedMasses(scope).map(mass => addedRow(scope, mass)) },
    ],
  })
}

function addedRow(scope: PageScope, { name, kg, atMm, href }: Hung): TableRow {
  return row([
    wordsCell([plain(name, href)]),
    wordsCell(''),
    wordsCell(figure(massText(scope, kg))),
    wordsCell(figure(`${Math.round(atMm)} mm`)),
  ])
}

const isPlaced = (part: Part): boolean => quantityAt(part, 'mass') !== null && quantityAt(part, 'at') !== null

function massRow(scope: PageScope, part: Part): TableRow {
  const cell = (key: string): Cell => {
    const held = quantityAt(part, key)
    return held === null ? wordsCell('') : { kind: 'leader', leader: scope.leader(held.value.text, held) }
  }
  return row([
    wordsCell([scope.thing({ kind: 'part', id: part.id })]),
    wordsCell(part.qty === '1' ? '' : part.qty),
    cell('mass'),
    cell('at'),
  ])
}

/** Which parts are in no disc; where the axles were weighed they are in the loads all the same. */
function unweighedLine(scope: PageScope): PartOfPage[] {
  const parts = unweighedParts(scope.record)
  if (parts.length === 0) return []
  const names = listed(parts.map(part => [scope.thing({ kind: 'part', id: part.id })]))
  const count = parts.length === 1 ? '1 part' : `${parts.length} parts`
  const inside = areAxlesWeighed(scope)
    ? 'The axles were weighed, so the loads above have them all the same.'
    : 'The loads above are summed from the discs, so these are not in them.'
  return [
    words('note', [
      look('strong', 'Unweighed: '),
      plain(`${count} on the vehicle without a mass or a place, in no disc. ${inside} `),
      ...names,
      plain('.'),
    ]),
  ]
}
