import type { Thing } from '../record/record.ts'
import type { Atlas } from './atlas.ts'
import type { Inline } from './cells.ts'
import { choicesPart } from './circuit-choices.ts'
import { circuitDrawing } from './circuit-drawing.ts'
import { lampPart } from './circuit-lamps.ts'
import { meterPart } from './circuit-meter.ts'
import { look, plain, wordsCell } from './inline.ts'
import type { PartOfPage } from './page-parts.ts'
import { type PageScope, pageScope, spaced, standing, valueText } from './page-scope.ts'
import { simplePage, textRow, wideRow } from './simple-page.ts'
import type { Page, Term } from './site-data.ts'
import { subjectChecks } from './subject-checks.ts'
import { column, heading, row, table, words } from './tables.ts'
import { subjectAddress } from './thing-addresses.ts'
import { thingTable } from './thing-table.ts'
import { wireCell } from './wire-cell.ts'
import { wiringOf } from './wiring-of.ts'
import { withoutFuse } from './without-fuse.ts'

/** One circuit from its source to its earth: the way it takes, its schedule, its checks, the pins that carry it. */
export function makeCircuitPage(atlas: Atlas, circuit: Thing): Page {
  const scope = pageScope(atlas, subjectAddress({ kind: 'circuit', id: circuit.id }))
  return simplePage(scope, {
    title: circuit.name,
    longTitle: `${circuit.name}, circuit`,
    section: 'wiring',
    gutter: gutterOf(scope, circuit),
    rows: [
      textRow(...lede(scope, circuit)),
      wideRow({
        kind: 'beside',
        left: [heading('The way it takes', 'way'), ...circuitDrawing(scope, circuit)],
        right: [
          heading('Its schedule', 'schedule'),
          ...thingTable(scope, circuit, { caption: `Schedule of ${circuit.name}`, not: ['name'] }),
        ],
      }),
      textRow(...lampPart(scope, circuit), ...withoutFuse(scope, circuit)),
      wideRow(...meterPart(scope, circuit.id)),
      wideRow(...subjectChecks(scope, [circuit.id])),
      wideRow(...choicesPart(atlas.extras.choices?.get(circuit.id) ?? [])),
      wideRow(...pinsOf(scope, circuit)),
    ],
  })
}

/** The words of a property, null where none stand. */
export function wordOf(circuit: Pick<Thing, 'properties'>, key: string): string | null {
  const held = standing(circuit.properties, key)
  return held === null ? null : valueText(held.value)
}

function gutterOf(scope: PageScope, circuit: Thing): Term[] {
  const terms: readonly (readonly [string, Inline | null])[] = [
    ['Circuit', look('path', circuit.id)],
    ['Wire', plain(wiringOf(scope).circuits.find(({ id }) => id === circuit.id)?.number ?? '')],
    ['State', worded(circuit, 'state')],
    ['Use', worded(circuit, 'use')],
    ['Duty', worded(circuit, 'duty')],
    ['System', thingOf(scope, circuit, 'system')],
    ['Loom', thingOf(scope, circuit, 'loom')],
  ]
  return terms.flatMap(([term, word]): Term[] => (word === null ? [] : [{ term, words: [word] }]))
}

function worded(circuit: Thing, key: string): Inline | null {
  const word = wordOf(circuit, key)
  return word === null ? null : plain(spaced(word))
}

function thingOf(scope: PageScope, circuit: Thing, kind: 'system' | 'loom'): Inline | null {
  const id = wordOf(circuit, kind)
  return id === null ? null : scope.thing({ kind, id })
}

function lede(scope: PageScope, circuit: Thing): PartOfPage[] {
  const feeds = wordOf(circuit, 'feeds')
  if (feeds === null) return []
  const isPart = scope.record.parts.some(part => part.id === feeds)
  return [
    words('lede', [
      plain('Feeds '),
      isPart ? scope.thing({ kind: 'part', id: feeds }) : look('said', feeds),
      plain('.'),
    ]),
  ]
}

/** The pins of all connectors that carry the circuit. */
function pinsOf(scope: PageScope, circuit: Thing): PartOfPage[] {
  const rows = scope.record.connectors.flatMap(connector =>
    connector.pins
      .filter(pin => wordOf(pin, 'circuit') === circuit.id)
      .map(pin =>
        row([
          wordsCell([scope.thing({ kind: 'connector', id: connector.id })]),
          wordsCell(pin.pin),
          wireCell(pin.properties, 'wire'),
          wordsCell(wordOf(pin, 'to') ?? ''),
          wordsCell(wordOf(pin, 'carries') === null ? '' : [look('said', wordOf(pin, 'carries') ?? '')]),
        ]),
      ),
  )
  if (rows.length === 0) return []
  const columns = [column('Connector'), column('Pin', 'narrow'), column('Wire'), column('To'), column('Carries')]
  return [heading('Where it passes a connector', 'pins'), table({ caption: 'Pins that carry it', columns, rows })]
}
