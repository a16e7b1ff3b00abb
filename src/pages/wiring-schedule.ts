import type { Circuit, Conductor } from '../wiring/circuit.ts'
import { listHalves } from '../wiring/pair-connectors.ts'
import { capital, endName } from '../wiring/standing.ts'
import { groundColour } from '../wiring/wire-look.ts'
import { wireWords } from '../wiring/wire-words.ts'
import type { TableRow } from './blocks.ts'
import type { Cell, Inline } from './cells.ts'
import { figure, listed, look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, heading, row, table, words } from './tables.ts'
import { wordsAddress } from './thing-addresses.ts'
import { conductorCell } from './wire-cell.ts'
import { wiringOf } from './wiring-of.ts'

/** Every circuit in the order of its wire number. */
export function schedulePart(scope: PageScope): PartOfPage[] {
  const { circuits } = wiringOf(scope)
  if (circuits.length === 0) return []
  return [
    heading('Circuit schedule', 'circuits'),
    table({
      caption: 'Circuit schedule',
      columns: [
        column('Wire', 'narrow'),
        column('Circuit, and what it feeds'),
        column('Load', 'num'),
        column('Fuse'),
        column('Cable'),
        column('Length', 'num'),
        column('Where it runs', 'wide'),
        column('Remarks'),
      ],
      rows: circuits.map(circuit => scheduleRow(scope, circuit)),
      canFilter: true,
    }),
  ]
}

/** The name of a circuit, leading to its page. */
export const circuitLink = (scope: PageScope, { id }: Pick<Circuit, 'id'>): Inline =>
  scope.thing({ kind: 'circuit', id })

function scheduleRow(scope: PageScope, circuit: Circuit): TableRow {
  const { number, feeds, use, state, load, feed, doubts } = circuit
  const words = [feeds, [state, use].filter(word => word !== null).join(', ')].filter(word => word !== null)
  return row(
    [
      wordsCell([look('strong', number)]),
      wordsCell([circuitLink(scope, circuit)], [plain(words.join('; '))]),
      writtenFigure(scope, load),
      fuseCell(scope, circuit),
      conductorCell(feed),
      writtenFigure(scope, feed.length),
      whereCell(scope, circuit),
      wordsCell(doubts.join(' ')),
    ],
    null,
    state === 'removed' ? 'gone' : 'plain',
  )
}

/** A figure that leads to the words in which it was written; it is drawn with its line on the circuit's own page. */
function writtenFigure(scope: PageScope, held: Circuit['load']): Cell {
  return wordsCell(held === null ? '' : [scope.link(held.value.text.replaceAll(' ', '\u202f'), wordsAddress(held))])
}

/** Way and rating, the box below them; a fuse in the cable itself says where. */
function fuseCell(scope: PageScope, { fuse }: Circuit): Cell {
  if (fuse === null) return wordsCell('none')
  const rating = fuse.rating === null ? [plain('rating not written')] : figure(fuse.rating.value.text)
  const type = fuse.type === null ? [] : [plain(` ${fuse.type}`)]
  const way = fuse.way === null ? [] : [plain(`way ${fuse.way}, `)]
  const after = fuse.after === null ? 'in the cable' : `in the cable, ${fuse.after.value.text} from the source`
  return wordsCell([...way, ...rating, ...type], [plain(fuse.box === null ? after : endName(scope.record, fuse.box))])
}

/** Its loom and the way back, the route below them. */
function whereCell(scope: PageScope, circuit: Circuit): Cell {
  const { loom, route, earth, back } = circuit
  const loomWords = loom === null ? [] : [scope.thing({ kind: 'loom', id: loom }), plain('; ')]
  const own = back === null ? [] : [plain(`${back.number}, ${wireWords(back)}${earth === null ? '' : ' to '}`)]
  const home =
    earth === null
      ? back === null
        ? [plain(circuit.return)]
        : []
      : [scope.thing({ kind: 'earth-point', id: earth.id })]
  const inner = route.slice(1, -1)
  const middle = inner.length === 0 ? [] : [plain(capital(inner.join(' – ')))]
  return wordsCell([...loomWords, plain('back: '), ...own, ...home], middle)
}

/** One wire of the index, of a circuit or at a connector. */
interface IndexedWire {
  readonly number: string
  readonly wire: Pick<Conductor, 'area' | 'look'>
  readonly where: readonly Inline[]
}

/** All wires by their own colour, so that a wire in the hand can be found. */
export function coloursPart(scope: PageScope): PartOfPage[] {
  const wires = indexed(scope).filter(({ wire }) => wire.look.written !== '')
  const groups = new Map<string, IndexedWire[]>()
  for (const one of wires) {
    const ground = groundColour(one.wire.look.written) ?? 'no known colour'
    groups.set(ground, [...(groups.get(ground) ?? []), one])
  }
  if (groups.size === 0) return []
  const sorted = [...groups].sort(([one], [other]) => (one < other ? -1 : 1))
  return [
    heading('Wires by colour', 'colours'),
    table({
      caption: 'Wires by colour',
      columns: [column('Wire'), column('Number', 'narrow'), column('Where', 'wide')],
      groups: sorted.map(([colour, group]) => ({
        id: null,
        heading: [plain(capital(colour))],
        rows: group
          .sort(byColour)
          .map(({ number, wire, where }) => row([conductorCell(wire), wordsCell(number), wordsCell(where)])),
      })),
      canFilter: true,
    }),
  ]
}

/** Every number, and the wire that bears it. */
export function numbersPart(scope: PageScope): PartOfPage[] {
  const wires = indexed(scope)
  if (wires.length === 0) return []
  return [
    heading('Wire numbers', 'numbers'),
    words(
      'note',
      'The numbers are this record’s own, not on the wires unless somebody put them there. W1, W2 … are circuits in the order in which the notes first name them, so that a later note changes none; R is a circuit’s return. X1/4 is the wire at way 4 of the first connector named; where its circuit is known it is a piece of that circuit’s wire.',
    ),
    table({
      caption: 'Index of wire numbers',
      columns: [column('Number', 'narrow'), column('Wire'), column('Where', 'wide')],
      rows: wires.map(({ number, wire, where }) =>
        row([wordsCell([look('strong', number)]), conductorCell(wire), wordsCell(where)]),
      ),
      canFilter: true,
    }),
  ]
}

function indexed(scope: PageScope): IndexedWire[] {
  const runs = wiringOf(scope).circuits.flatMap(circuit =>
    [circuit.feed, ...(circuit.back === null ? [] : [circuit.back])].map(wire => ({
      number: wire.number,
      wire,
      where: [circuitLink(scope, circuit), plain(`: ${wire.from} to ${wire.to}`)],
    })),
  )
  const pins = listHalves(scope.record).flatMap(half =>
    half.pins.map(pin => ({
      number: pin.number,
      wire: pin,
      where: [
        scope.thing({ kind: 'connector', id: half.id }),
        plain(`, way ${pin.pin}${pin.carries === null ? '' : `, ${pin.carries}`}`),
        ...(pin.circuit === null
          ? []
          : [plain(', '), ...listed([[scope.thing({ kind: 'circuit', id: pin.circuit })]])]),
      ],
    })),
  )
  return [...runs, ...pins]
}

function byColour(one: IndexedWire, other: IndexedWire): number {
  const [a, b] = [one.wire.look.written, other.wire.look.written]
  return a === b ? 0 : a < b ? -1 : 1
}
