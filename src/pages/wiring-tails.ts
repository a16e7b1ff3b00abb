import type { Circuit } from '../wiring/circuit.ts'
import type { Half, PinWire } from '../wiring/pair-connectors.ts'
import { capital } from '../wiring/standing.ts'
import { look, plain, wordsCell } from './inline.ts'
import type { PageRow } from './page-row.ts'
import type { PageScope } from './page-scope.ts'
import { wideRow } from './simple-page.ts'
import { column, heading, row, table } from './tables.ts'
import { conductorCell } from './wire-cell.ts'
import { halvesOf, wiringOf } from './wiring-of.ts'

/** The wires at connectors that are no circuit's own run, since their size or colour is another: they are cut and crimped too. */
export function tailsRow(scope: PageScope): PageRow[] {
  const { circuits } = wiringOf(scope)
  const tails = halvesOf(scope).flatMap(half =>
    half.pins.filter(pin => isTail(pin, circuits)).map(pin => ({ half, pin })),
  )
  if (tails.length === 0) return []
  const ticks = ['Cut', 'Crimped, at the connector', 'Crimped, far end'].map(label => column(label, 'narrow'))
  return [
    wideRow(
      heading('At connectors', 'at-connectors'),
      table({
        caption: 'Wires that begin at a connector',
        columns: [
          column('Wire', 'narrow'),
          column('Cable'),
          column('Cut to', 'num'),
          column('From', 'wide'),
          column('To', 'wide'),
          column('Carries', 'wide'),
          ...ticks,
        ],
        rows: tails.map(({ half, pin }) => tailRow(half, pin)),
        note: 'Of another size or colour than the run of their circuit, or of no circuit. No note tells how long they are, nor what is crimped at the far end. Those that came with a donor’s plug want no cutting.',
        isCaptionShown: true,
      }),
    ),
  ]
}

/** A way that has a wire, and not the very wire of its circuit; where no circuit is named, of none that has the same two colours. */
function isTail({ area, look: own, circuit }: PinWire, circuits: readonly Circuit[]): boolean {
  if (area === null && own.written === '') return false
  const named = circuits.filter(({ id }) => (circuit === null ? own.band !== null : id === circuit))
  const runs = named.flatMap(({ feed, back }) => (back === null ? [feed] : [feed, back]))
  return !runs.some(
    wire => wire.area?.value.si === area?.value.si && wire.look.ground === own.ground && wire.look.band === own.band,
  )
}

function tailRow({ name }: Half, pin: PinWire): ReturnType<typeof row> {
  const { number, terminal, to, carries } = pin
  return row([
    wordsCell([look('strong', number)]),
    conductorCell(pin),
    wordsCell([look('muted', 'measure first')]),
    wordsCell(
      [plain(`${capital(name)}, way ${pin.pin}`)],
      [terminal === null ? look('muted', 'terminal not written') : plain(terminal)],
    ),
    wordsCell(to === null ? [look('muted', 'not written')] : [plain(capital(to))]),
    wordsCell(carries === null ? '' : [look('said', carries)]),
    ...Array.from({ length: 3 }, () => ({ kind: 'tick' as const })),
  ])
}
