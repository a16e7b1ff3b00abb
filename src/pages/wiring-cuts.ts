import { allowanceWords, type Cut } from '../wiring/cut-list.ts'
import type { Half } from '../wiring/pair-connectors.ts'
import { capital } from '../wiring/standing.ts'
import { metres } from '../wiring/wire-words.ts'
import type { TableRow } from './blocks.ts'
import type { Cell } from './cells.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, row, table } from './tables.ts'
import { conductorCell } from './wire-cell.ts'
import { halvesOf } from './wiring-of.ts'
import { circuitLink } from './wiring-schedule.ts'

interface CutTable {
  readonly caption: string
  readonly cuts: readonly Cut[]
  /** On the sheet for the bench each wire has a box to tick. */
  readonly isBench: boolean
}

/** The wires to be cut, thinnest first, one drum's wires together. */
export function cutTable(scope: PageScope, { caption, cuts, isBench }: CutTable): PartOfPage {
  const tick = isBench ? ['Cut', 'Crimped, from', 'Crimped, to'].map(label => column(label, 'narrow')) : []
  return table({
    caption,
    columns: [
      column('Wire', 'narrow'),
      column('Cable'),
      column('Written', 'num'),
      column('Cut to', 'num'),
      column('From', 'wide'),
      column('To', 'wide'),
      column('By way of', 'wide'),
      ...tick,
    ],
    rows: cuts.map(cut => cutRow(scope, cut, isBench)),
    note: `Cut to: ${allowanceWords}.`,
    isCaptionShown: true,
  })
}

function cutRow(scope: PageScope, cut: Cut, isBench: boolean): TableRow {
  const { wire, circuit, writtenM, cutM } = cut
  const joins = joinsOf(scope, cut)
  return row([
    wordsCell(
      [look('strong', wire.number)],
      [circuitLink(scope, circuit), ...(circuit.state === 'live' ? [] : [plain(`, ${circuit.state}`)])],
    ),
    conductorCell(wire),
    wordsCell(writtenM === null ? '' : figure(wire.length?.value.text ?? '')),
    wordsCell(cutM === null ? [look('muted', 'measure first')] : figure(metres(cutM))),
    endCell(wire.from, wire.terminals.from),
    endCell(wire.to, wire.terminals.to),
    wordsCell(capital(stopsBetween(cut)), joins === '' ? [] : [plain(joins)]),
    ...(isBench ? Array.from({ length: 3 }, () => ({ kind: 'tick' as const })) : []),
  ])
}

/** An end and the terminal that goes on it. */
function endCell(end: string, terminal: string | null): Cell {
  return wordsCell([plain(capital(end))], [terminal === null ? look('muted', 'terminal not written') : plain(terminal)])
}

/** The stops of a run without its ends. */
function stopsBetween({ wire, circuit }: Cut): string {
  if (wire !== circuit.feed) return ''
  const start = wire.from.replace(/, way .*$/, '')
  const inner = circuit.route.filter((stop, index) => stop !== start && index < circuit.route.length - 1)
  return inner.filter(stop => !wire.cutAt.includes(stop)).join(' – ')
}

/** Where a run is cut on its way, and the ways of connectors that its circuit meets. */
function joinsOf(scope: PageScope, { wire, circuit }: Cut): string {
  if (wire !== circuit.feed) return ''
  const ways = halvesOf(scope).flatMap(half => waysAt(half, circuit.id))
  const places = circuit.through.map(({ name, terminal }) => withTerminal(name, terminal))
  const cuts = places.length === 0 ? [] : [`Cut and made off at ${places.join('; ')}.`]
  return [...cuts, ...(ways.length === 0 ? [] : [`Also at ${ways.join('; ')}.`])].join(' ')
}

/** `Trailer socket, ways 1 and 4 (X5/1, X5/4; 2.8 mm pin)`, the ways of one terminal together. */
function waysAt({ name, pins }: Half, circuit: string): string[] {
  const here = pins.filter(pin => pin.circuit === circuit)
  return [...new Set(here.map(({ terminal }) => terminal))].map(terminal => {
    const alike = here.filter(pin => pin.terminal === terminal)
    const ways = `${alike.length === 1 ? 'way' : 'ways'} ${alike.map(({ pin }) => pin).join(' and ')}`
    const numbers = alike.map(({ number }) => number).join(', ')
    return `${name}, ${ways} (${terminal === null ? numbers : `${numbers}; ${terminal}`})`
  })
}

const withTerminal = (words: string, terminal: string | null): string =>
  terminal === null ? words : `${words}, ${terminal}`
