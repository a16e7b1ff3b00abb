import { countTerminals } from '../wiring/count-terminals.ts'
import { type Cut, type Drum, sumDrums } from '../wiring/cut-list.ts'
import { wireLook } from '../wiring/wire-look.ts'
import { metres } from '../wiring/wire-words.ts'
import type { TableRow } from './blocks.ts'
import { figure, look, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, row, table } from './tables.ts'
import { wireWith } from './wire-cell.ts'
import { halvesOf } from './wiring-of.ts'

/** What is to be crimped: how many terminals of each sort, on which size of wire. */
export function terminalTable(scope: PageScope, cuts: readonly Cut[]): PartOfPage {
  const pins = halvesOf(scope).flatMap(half => half.pins)
  return table({
    caption: 'Terminals that this takes',
    columns: [column('Terminal'), column('On wire of', 'figure'), column('How many', 'num')],
    rows: countTerminals(cuts, pins).map(({ terminal, size, count }) =>
      row([
        wordsCell(terminal === null ? [look('muted', 'not written: look at the part, and write it down')] : terminal),
        wordsCell(size === null ? 'size not written' : figure(size)),
        wordsCell(String(count)),
      ]),
    ),
    note: 'One for each end, two more where a wire is cut at a relay or switch, one for each way of a connector that its circuits meet. The size of wire must lie within what the terminal’s maker allows.',
    isCaptionShown: true,
  })
}

/** How much of each cable the list takes. */
export function drumTable(cuts: readonly Cut[]): PartOfPage {
  return table({
    caption: 'Cable that this takes',
    columns: [column('Cable'), column('Wires', 'num'), column('Length in all', 'num'), column('Besides', 'wide')],
    rows: sumDrums(cuts).map(drumRow),
    isCaptionShown: true,
  })
}

function drumRow({ size, colour, count, totalM, unmeasured }: Drum): TableRow {
  return row([
    { kind: 'wires', wires: [wireWith(size === '' ? 'size not written' : size, wireLook(colour))] },
    wordsCell(String(count)),
    wordsCell(figure(metres(totalM))),
    wordsCell(unmeasured === 0 ? '' : `${unmeasured} of them not measured yet, not in this length`),
  ])
}
