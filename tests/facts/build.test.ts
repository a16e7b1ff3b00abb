import { describe, expect, test } from 'vitest'
import { readSettings } from '../../src/facts/read-settings.ts'
import { readNote } from '../../src/notes/read-note.ts'
import { plainReading } from '../../src/quantities/quantity.ts'
import { factsOf, figures, properties, references, stated, told } from './stated.ts'

const file = 'content/build.md'
const build = (lines: string) => stated(`---\ntitle: Sandpiper\n${lines}\n---\n`, file)

const whole = build(`summary: Open two-seat beach utility
started: 2026-01-10
currency: GBP
rates: { EUR: 0.86 }
units: { length: mm, volume: L, mass: kg }
gallon: imperial
mil: mm
decimal: point
approximate: 5 %
electrical:
  nominal: 12 V
  ambient: 30 °C
  zones: { engine-bay: 70 °C }
  alternator: 70 A
  battery: { capacity: 60 Ah, cold-cranking: 540 A }
donors:
  corvane: { name: "Corvane 1600 hatchback", cost: "£650" }
systems:
  electrical: Electrical
  fuel: Fuel
limits:
  voltage-drop/lighting: { max: 2 %, why: builder's own target }
  duct-area: { min: 85 %, why: the fan has room to spare }
requirements:
  left-drive-shaft/length: 612 mm to 618 mm
  fuel-tank/ground-clearance: at least 200 mm
  check:voltage-drop: all circuits
  check:cable-rating: [fuel-pump, side-lamps]
identity: { chassis-number: AB12345, plate: none yet }
looms: { body-loom: { name: Body loom, sleeve: 12 mm } }
earth-points: { left-rear: { name: Left rear, count: 4, resistance: 2 mΩ } }
editions:
  public: { withhold: [cost, source, people, place, identity] }
  inspector: { withhold: [cost] }
  full: {}`)

describe('build.md', () => {
  test('a whole build.md is read without a finding', () => {
    expect(told(whole)).toEqual([])
    expect(whole.session).toBeNull()
    expect(whole.build).toMatchObject({
      title: { text: 'Sandpiper' },
      summary: { text: 'Open two-seat beach utility' },
      started: '2026-01-10',
      currency: 'GBP',
      rates: { EUR: '0.86' },
      units: { length: 'mm', volume: 'L', mass: 'kg' },
      approximateShare: 0.05,
      identity: [
        { key: 'chassis-number', words: { text: 'AB12345' } },
        { key: 'plate', words: { text: 'none yet' } },
      ],
    })
  })

  test('settings and things are properties', () => {
    expect(properties(whole)).toEqual([
      'build:electrical nominal = 12 V (voltage)',
      'build:electrical ambient = 30 °C (temperature)',
      'build:electrical zones.engine-bay = 70 °C (temperature)',
      'build:electrical alternator.rating = 70 A (current)',
      'build:electrical battery.capacity = 60 Ah (charge)',
      'build:electrical battery.cold-cranking = 540 A (current)',
      'system:electrical name = Electrical',
      'system:fuel name = Fuel',
      'loom:body-loom name = Body loom',
      'loom:body-loom sleeve = 12 mm (length)',
      'earth-point:left-rear name = Left rear',
      'earth-point:left-rear count = 4 (ratio)',
      'earth-point:left-rear resistance = 2 mΩ (resistance)',
    ])
  })

  test('limits, requirements, askings, donors and editions are stated', () => {
    expect(
      factsOf(whole, 'limit').map(({ check, of, min, max, why }) => [check, of, min?.text, max?.text, why?.text]),
    ).toEqual([
      ['voltage-drop', 'lighting', undefined, '2 %', "builder's own target"],
      ['duct-area', null, '85 %', undefined, 'the fan has room to spare'],
    ])
    expect(factsOf(whole, 'requirement').map(({ path, value }) => [path, value.text])).toEqual([
      ['left-drive-shaft/length', '612 mm to 618 mm'],
      ['fuel-tank/ground-clearance', 'at least 200 mm'],
    ])
    expect(factsOf(whole, 'asking').map(({ check, subjects }) => [check, subjects])).toEqual([
      ['voltage-drop', null],
      ['cable-rating', ['fuel-pump', 'side-lamps']],
    ])
    expect(factsOf(whole, 'donor')).toMatchObject([
      {
        id: 'corvane',
        name: { text: 'Corvane 1600 hatchback' },
        cost: { amount: { amount: '650.00', currency: 'GBP' } },
      },
    ])
    expect(factsOf(whole, 'edition').map(({ name, withhold }) => [name, withhold])).toEqual([
      ['public', ['cost', 'source', 'people', 'place', 'identity']],
      ['inspector', ['cost']],
      ['full', []],
    ])
  })

  test('checks that it names must exist; what it requires need not be there yet', () => {
    expect(references(whole)).toEqual([
      'check voltage-drop (must-exist)',
      'check duct-area (must-exist)',
      'check voltage-drop (must-exist)',
      'check cable-rating (must-exist)',
    ])
  })

  test('its figures are settings and prices', () => {
    expect(figures(whole)).toEqual([
      'q-1 5 % (setting build:approximate)',
      'q-2 12 V (setting build:electrical/nominal)',
      'q-3 30 °C (setting build:electrical/ambient)',
      'q-4 70 °C (setting build:electrical/zones.engine-bay)',
      'q-5 70 A (setting build:electrical/alternator.rating)',
      'q-6 60 Ah (setting build:electrical/battery.capacity)',
      'q-7 540 A (setting build:electrical/battery.cold-cranking)',
      'q-8 £650 (price donor:corvane/cost)',
      'q-9 2 % (setting limit:voltage-drop/lighting/max)',
      'q-10 85 % (setting limit:duct-area/min)',
      'q-11 612 mm to 618 mm (setting left-drive-shaft/length)',
      'q-12 at least 200 mm (setting fuel-tank/ground-clearance)',
      'q-13 12 mm (setting loom:body-loom/sleeve)',
      'q-14 4 (setting earth-point:left-rear/count)',
      'q-15 2 mΩ (setting earth-point:left-rear/resistance)',
    ])
  })

  test.each([
    ['curency: GBP', '3:1-8 unknown-key Unexpected key `curency`, expected `currency` → currency'],
    [
      'currency: pounds',
      '3:11-17 unknown-value Unexpected `pounds` for `currency`, expected a code of three letters such as `GBP`',
    ],
    [
      'rates: { EUR: dear }',
      '3:15-19 not-a-quantity Unexpected `dear` for `rates/EUR`, expected a number such as `0.86`',
    ],
    [
      'rates: { euro: 0.86 }',
      '3:10-14 unknown-key Unexpected key `euro` in `rates`, expected a code of three letters such as `EUR`',
    ],
    [
      'units: { length: bits }',
      '3:18-22 unknown-value Unexpected `bits` for `units/length`, expected a unit of that dimension such as `mm`, `L` or `kg`',
    ],
    [
      'units: { length: kg }',
      '3:18-20 dimension Unexpected `kg` for `units/length`, expected a unit of that dimension such as `mm`, `L` or `kg`',
    ],
    ['gallon: metric', '3:9-15 unknown-value Unexpected `metric` for `gallon`, expected `imperial` or `us`'],
    [
      'approximate: some',
      '3:14-18 not-a-quantity Unexpected `some` for `build:approximate`, expected a number such as `4.30`',
    ],
    [
      'started: last year',
      '3:10-19 bad-date Unexpected `last year` for `started`, expected a day that exists, written as `2026-03-07`',
    ],
    [
      'electrical: { nominal: 12 A }',
      '3:24-28 dimension Unexpected `12 A` for `build:electrical/nominal`, expected a voltage such as `12 V`',
    ],
    [
      'electrical: { nominl: 12 V }',
      '3:15-21 unknown-key Unexpected key `nominl` in `electrical`, expected `nominal` → nominal',
    ],
    [
      'limits: { voltage-drop: { max: 2 % } }',
      '3:11-23 limit-without-why Unexpected limit `voltage-drop` without a reason, expected `why:` → why: …',
    ],
    [
      'limits: { voltage-drop: { max: small, why: mine } }',
      '3:32-37 not-a-quantity Unexpected `small` for `limit:voltage-drop/max`, expected a number with its unit such as `860 mm`',
    ],
    [
      'limits: { voltage-drop: 2 % }',
      '3:25-28 not-a-quantity Unexpected `2 %` for `limits/voltage-drop`, expected `at least` or `at most` before it, or `{ max: …, why: … }`',
    ],
    [
      'requirements: { fuel-tank/length: 3 L }',
      '3:35-38 dimension Unexpected `3 L` for `fuel-tank/length`, expected a length such as `860 mm`',
    ],
    [
      'requirements: { fuel-tank: 3 L }',
      '3:17-26 unknown-key Unexpected key `fuel-tank` in `requirements`, expected a path such as `fuel-tank/length` or `check:voltage-drop`',
    ],
    [
      'editions: { public: { withhold: [prices] } }',
      '3:34-40 unknown-value Unexpected `prices` for `editions/public/withhold/1`, expected `cost`, `source`, `people`, `place` or `identity`',
    ],
  ])('`%s` is told once', (lines, finding) => {
    expect(told(build(lines))).toEqual([finding])
  })

  test('an edition whose list cannot be read withholds everything', () => {
    expect(factsOf(build('editions: { public: { withhold: [prices] } }'), 'edition')).toMatchObject([
      { name: 'public', withhold: ['cost', 'source', 'people', 'place', 'identity'] },
    ])
  })
})

describe('what build.md sets for the other notes', () => {
  const settings = (lines: string) =>
    readSettings(readNote({ file, bytes: new TextEncoder().encode(`---\ntitle: x\n${lines}\n---\n`) }, plainReading))

  test.each([
    [
      'gallon: us\nmil: thou\ndecimal: comma\napproximate: 10 %',
      { gallon: 'us', mil: 'thou', decimal: 'comma', approximate: 0.1 },
    ],
    ['approximate: 0.02', { gallon: null, mil: null, decimal: 'point', approximate: 0.02 }],
    ['gallon: metric\napproximate: lots', { gallon: null, mil: null, decimal: 'point', approximate: 0.05 }],
  ])('`%s` → %j', (lines, expected) => {
    expect(settings(lines)).toEqual(expected)
  })

  test('without build.md nothing is set, and about is worth one part in twenty', () => {
    expect(readSettings(null)).toEqual({ gallon: null, mil: null, decimal: 'point', approximate: 0.05 })
  })
})
