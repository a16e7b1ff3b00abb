import { drawPair } from '../wiring/draw-pair.ts'
import { type Half, listHalves, type Pair, type PairRow, type PinWire, pairUp } from '../wiring/pair-connectors.ts'
import { anchorName } from './addresses.ts'
import type { TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, heading, row, table, words } from './tables.ts'
import { noteAddress } from './thing-addresses.ts'
import { conductorCell } from './wire-cell.ts'
import { drawingLinks, wiringOf, wiringPart } from './wiring-of.ts'

/** Each mated pair once: its drawing, and its table. */
export function connectorsPart(scope: PageScope): PartOfPage[][] {
  return wiringOf(scope).pairs.map(pair => [
    heading(pair.left.name, anchorName('c', pair.left.id)),
    words('note', [...pairWords(scope, pair)]),
    ...pairParts(scope, pair),
  ])
}

/** One connector with its mate beside it, itself on the left. */
export function connectorPair(scope: PageScope, id: string): Pair | null {
  const halves = listHalves(scope.record)
  const own = halves.find(half => half.id === id)
  const mate = halves.find(half => half.id === own?.mates && half.id !== id) ?? null
  return own === undefined ? null : pairUp(own, mate)
}

/** The drawing of a pair and the same as a table. */
export function pairParts(scope: PageScope, pair: Pair): PartOfPage[] {
  return [
    wiringPart(
      drawPair(pair, drawingLinks(scope)),
      pair.right === null
        ? []
        : 'What goes in on the left, what comes out on the right; ways as they meet, not as they lie in the shell.',
    ),
    ...pair.doubts.map(doubt => words('note', doubt)),
    pairTable(scope, pair),
  ]
}

function pairWords(scope: PageScope, { left, right }: Pair): Inline[] {
  const own = [scope.thing({ kind: 'connector', id: left.id }), plain(` (${left.number})`)]
  if (right === null) return [...own, plain(' plugs into nothing that the notes name.')]
  return [...own, plain(' plugs into '), scope.thing({ kind: 'connector', id: right.id }), plain(` (${right.number}).`)]
}

function pairTable(scope: PageScope, pair: Pair): PartOfPage {
  const mated =
    pair.right === null
      ? []
      : [column('Meets', 'narrow'), column('Wire there'), column('To there'), column('Carries there')]
  return table({
    caption:
      pair.right === null
        ? `${pair.left.name}, way by way`
        : `${pair.left.name} and ${pair.right.name}, way against way`,
    columns: [
      column('Way', 'narrow'),
      column('Wire'),
      column('To'),
      column('Carries'),
      ...mated,
      column('Remarks'),
      column('Written', 'narrow'),
    ],
    rows: pair.rows.map(one => pairRow(scope, pair, one)),
  })
}

function pairRow(scope: PageScope, { left, right }: Pair, one: PairRow): TableRow {
  const remarks = [
    ...(one.state === 'mated' ? [] : [one.state === 'unmated' && right === null ? '' : one.state]),
    ...(one.doubt === null ? [] : [one.doubt]),
  ].filter(Boolean)
  const there = right === null ? [] : [wordsCell(one.rightWay ?? 'nothing'), ...sideCells(scope, one.right)]
  const own: Cell[] = [
    wordsCell(one.leftWay === null ? [look('muted', 'nothing')] : [look('strong', one.leftWay)]),
    ...sideCells(scope, one.left),
  ]
  return row(
    [
      ...own,
      ...there,
      wordsCell(remarks.join('; ')),
      writtenCell(scope, one.left === null ? right : left, one.left ?? one.right),
    ],
    null,
    one.state === 'no wire' ? 'gone' : 'plain',
  )
}

function sideCells(scope: PageScope, pin: PinWire | null): Cell[] {
  if (pin === null) return [wordsCell([look('muted', 'no wire')]), wordsCell(''), wordsCell('')]
  const circuit = pin.circuit === null ? [] : [scope.thing({ kind: 'circuit', id: pin.circuit })]
  const carries = pin.carries === null ? [] : [look('said', pin.carries)]
  return [
    conductorCell(pin),
    wordsCell([plain(pin.to ?? '')], pin.terminal === null ? [] : [look('muted', pin.terminal)]),
    carries.length === 0 ? wordsCell(circuit) : wordsCell(carries, circuit),
  ]
}

function writtenCell(scope: PageScope, half: Half | null, pin: PinWire | null): Cell {
  const written = scope.record.connectors.find(({ id }) => id === half?.id)?.pins.find(known => known.pin === pin?.pin)
  if (written === undefined) return wordsCell('')
  return {
    kind: 'balloon',
    balloon: scope.balloon(written.session),
    words: [scope.link(`line ${written.place.line}`, noteAddress(written.session))],
  }
}
