import { quantityAt } from '../record/lookups.ts'
import type { AsBuiltRecord } from '../record/record.ts'
import { type MeterPoint, meterPoints } from '../wiring/meter-points.ts'
import type { TableRow } from './blocks.ts'
import { figure, look, plain, wordsCell } from './inline.ts'
import { readingsPart } from './meter-readings.ts'
import { meterRules } from './meter-rules.ts'
import type { PartOfPage } from './page-parts.ts'
import type { PageScope } from './page-scope.ts'
import { column, heading, row, table, words } from './tables.ts'
import { wiringOf } from './wiring-of.ts'

/** What a meter should read at each station with the load on, so that a bad joint is found between two of them. Empty where a figure is missing. */
export function meterPart(scope: PageScope, id: string): PartOfPage[] {
  const losses = scope.atlas.extras.voltages?.get(id) ?? null
  const wiring = wiringOf(scope)
  const circuit = wiring.circuits.find(one => one.id === id)
  // The starter pulls the battery itself down, and a generator drives its circuit the other way.
  if (losses === null || circuit === undefined || circuit.duty === 'starting' || circuit.use === 'charging') return []
  const points = meterPoints(wiring, circuit, losses)
  const total = losses.feed + losses.out + losses.back + losses.joints
  const isFeed = wiring.circuits.some(({ supply }) => supply === id)
  const rules = meterRules(circuit, {
    ...losses,
    isFeed: isFeed || circuit.part?.partKind === 'fuse-box',
    coldCranking: coldCranking(scope.record),
  })
  const across = `${volts(losses.nominal - total)} of ${volts(losses.nominal)}`
  return [
    heading('What a meter should read', 'meter'),
    words('note', [
      plain(
        'Dim, slow or weak? Switch it on, put the black lead on the battery’s negative post and the red one on each place in turn. Where a reading falls short of its line by more than a little, what lies just before it is bad: a joint, a contact, the cable. On the way back a bad joint makes the reading too high. With all as it should be ',
      ),
      ...figure(across),
      plain(' stand across the load.'),
    ]),
    table({
      caption: 'Voltages along the way, load on',
      columns: [
        column('Red lead on', 'wide'),
        column('Lost', 'num'),
        column(`Reads, at ${volts(losses.nominal)}`, 'num'),
        column('Right', 'narrow'),
      ],
      rows: points.map(point => pointRow(point, losses.nominal)),
      note: [
        `From the working of the voltage drop, at ${losses.current.toFixed(1)} A.`,
        'Half of the joints are taken to lie on the way out and half on the way back. A range stands where no note tells how far along the wire a place lies.',
        losses.assumed.length === 0 ? '' : `Assumed: ${losses.assumed.join('; ')}.`,
        'A charged battery stands above nominal: read it first, and take away what is lost.',
      ]
        .filter(Boolean)
        .join(' '),
      isCaptionShown: true,
    }),
    ...readingsPart(scope, circuit),
    ...rules.map(rule => words('note', rule)),
    words(
      'caution',
      'The circuit is live while you measure. Measure where metal is bare, and pierce no insulation. Keep the leads’ tips from touching each other or the body, and rings and watch-straps off; the fuse stays in. Local rules and licensed practice decide.',
    ),
  ]
}

/** Of the battery among the parts, else as build.md has it. */
function coldCranking(record: AsBuiltRecord): number | null {
  const battery = record.parts.find(({ partKind }) => partKind === 'battery')
  const ofPart = battery === undefined ? null : quantityAt(battery, 'cold-cranking')
  return (ofPart ?? quantityAt(record.settings, 'battery.cold-cranking'))?.value.si ?? null
}

function pointRow({ words: place, side, lost }: MeterPoint, nominal: number): TableRow {
  const reads = side === 'out' ? { least: nominal - lost.most, most: nominal - lost.least } : lost
  return row(
    [
      wordsCell([plain(place)], side === 'back' ? [look('muted', 'way back')] : []),
      wordsCell(figure(range(lost))),
      wordsCell(figure(range(reads))),
      { kind: 'tick' },
    ],
    null,
    'plain',
  )
}

const volts = (value: number): string => `${value.toFixed(2)} V`

const range = ({ least, most }: MeterPoint['lost']): string =>
  volts(least) === volts(most) ? volts(least) : `${least.toFixed(2)} to ${volts(most)}`
