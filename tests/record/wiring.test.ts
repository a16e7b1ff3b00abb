import { describe, expect, test } from 'vitest'
import { findThing, latest, quantityAt, resolvePath, wordsAt } from '../../src/record/lookups.ts'
import type { Thing } from '../../src/record/record.ts'
import { pathText } from '../../src/record/resolve-name.ts'
import { build, figure, fold, measured, part, type Said, said, session, subject } from './stated.ts'

const first = '2026-03-07-a'
const second = '2026-03-14-b'
const recordOf = (...notes: Said[][]) =>
  fold(notes.map((facts, at) => session(at === 0 ? first : second, facts))).record

const circuit = (id: string, box: string, way: string | null, state: string | null = null): Said[] => [
  said(subject('circuit', id), 'fuse.box', box),
  ...(way === null ? [] : [said(subject('circuit', id), 'fuse.way', way)]),
  ...(state === null ? [] : [said(subject('circuit', id), 'state', state)]),
]

const box = [part('aux-fuses'), said(subject('part', 'aux-fuses'), 'kind', 'fuse-box')]

describe('a fuse box', () => {
  test('has its ways in their order, the spare ones too, and circuits that name no way apart', () => {
    const record = recordOf([
      ...box,
      measured('aux-fuses/ways', '4'),
      ...circuit('horn', 'aux-fuses', '10'),
      ...circuit('pump', 'aux-fuses', '2'),
      ...circuit('side-lamps', 'aux-fuses', '2'),
      ...circuit('radio', 'aux-fuses', null),
      ...circuit('fan', 'aux-fuses', '3', 'removed'),
      ...circuit('heater', 'main-fuses', '1'),
    ])
    expect(record.fuseBoxes).toEqual([
      {
        id: 'aux-fuses',
        ways: 4,
        used: [
          { way: '1', circuits: [] },
          { way: '2', circuits: ['pump', 'side-lamps'] },
          { way: '3', circuits: [] },
          { way: '4', circuits: [] },
          { way: '10', circuits: ['horn'] },
        ],
        unplaced: ['radio'],
      },
    ])
  })

  test('is a part of that kind, and no other', () => {
    expect(recordOf([part('aux-fuses'), ...circuit('pump', 'aux-fuses', '2')]).fuseBoxes).toEqual([])
  })
})

describe('a connector', () => {
  const stalk = subject('connector', 'stalk-switch')

  test('has its pins in the order written, each with what stands, the names as text', () => {
    const { connectors } = recordOf(
      [
        said(stalk, 'mates', 'column-loom'),
        said(stalk, 'pins.31b.wire.colour', 'black'),
        said(stalk, 'pins.01.carries', 'side lamps'),
        said(stalk, 'pins.01.wire.area', figure('0.75 mm2')),
      ],
      [said(stalk, 'pins.01.carries', 'tail lamps'), said(stalk, 'pins.2.to', 'light-switch/2')],
    )
    const [connector] = connectors
    expect([connector?.mates, connector?.pins.map(({ pin }) => pin)]).toEqual(['column-loom', ['31b', '01', '2']])
    const pin: Pick<Thing, 'properties'> = connector?.pins[1] ?? { properties: {} }
    expect([wordsAt(pin, 'carries')?.value.text, quantityAt(pin, 'wire.area')?.value.text]).toEqual([
      'tail lamps',
      '0.75 mm2',
    ])
    expect(pin.properties.carries?.length).toBe(2)
  })

  test('loses a pin that is taken back, and keeps its history', () => {
    const { connectors } = recordOf(
      [said(stalk, 'pins.1.carries', 'horn'), said(stalk, 'pins.2.carries', 'fan')],
      [said(stalk, 'pins.1', null)],
    )
    expect(connectors[0]?.pins.map(({ pin }) => pin)).toEqual(['2'])
    expect(connectors[0]?.properties['pins.1.carries']?.map(({ value }) => value.type)).toEqual(['words', 'nothing'])
  })

  test('that is a part of kind connector is one thing under both names', () => {
    const record = recordOf([
      part('stalk-switch'),
      said(subject('part', 'stalk-switch'), 'kind', 'connector'),
      measured('stalk-switch/rating', '10 A'),
      said(stalk, 'mates', 'column-loom'),
    ])
    expect(record.connectors.map(({ kind, id, mates }) => [kind, id, mates])).toEqual([
      ['connector', 'stalk-switch', 'column-loom'],
    ])
    for (const thing of [record.connectors[0], record.parts[0]])
      expect(thing === undefined ? null : quantityAt(thing, 'rating')?.value.text).toBe('10 A')
  })
})

describe('looms and earth points', () => {
  const lamps = subject('circuit', 'side-lamps')

  test('first named by a circuit are thereby declared, and gone where the circuit takes the name back', () => {
    const named = [
      said(lamps, 'loom', 'nose-loom'),
      said(lamps, 'earth', 'left-rear'),
      said(lamps, 'return.loom', 'tail-loom'),
    ]
    const record = recordOf(named)
    expect([record.looms.map(({ id }) => id), record.earthPoints.map(({ id }) => id)]).toEqual([
      ['nose-loom', 'tail-loom'],
      ['left-rear'],
    ])
    expect(recordOf(named, [said(lamps, 'loom', 'tail-loom')]).looms.map(({ id }) => id)).toEqual(['tail-loom'])
  })

  test('in words that are no identifier declare nothing', () => {
    expect(recordOf([said(lamps, 'earth', 'under the seat bolt')]).earthPoints).toEqual([])
  })
})

describe('a return', () => {
  const pump = subject('circuit', 'fuel-pump')
  const cable = [said(pump, 'return', 'cable'), said(pump, 'return.area', figure('2.5 mm2'))]
  const areaAfter = (...notes: Said[][]): string | null => {
    const [found] = recordOf(...notes).circuits
    return found === undefined ? null : (quantityAt(found, 'return.area')?.value.text ?? null)
  }

  test('by the chassis takes back what was said of its cable', () => {
    expect(areaAfter(cable, [said(pump, 'return', 'chassis')])).toBeNull()
  })

  test('by a cable of which only the length is told again keeps its area', () => {
    expect(areaAfter(cable, [said(pump, 'return', 'cable'), said(pump, 'return.length', figure('3 m'))])).toBe(
      '2.5 mm2',
    )
  })
})

describe('a volume', () => {
  const volume = subject('volume', 'fuel-tank')
  const box = (text: string, line: number) => {
    const [length, width, height] = [figure('860 mm'), figure('380 mm'), figure('300 mm')]
    return {
      text,
      shape: { form: 'box' as const, length, width, height },
      place: { file: 'x', line, column: 1, endLine: line, endColumn: 9 },
      figures: [`q-${line}`],
    }
  }
  const shapes = (key: string, ...texts: string[]): Said =>
    ({ ...said(volume, key, null), value: { type: 'shapes', shapes: texts.map(box) } }) as Said

  test('has one wall with its part, and a list of cut-outs replaces the list', () => {
    const record = recordOf(
      [
        part('fuel-tank'),
        shapes('outside', 'box a'),
        shapes('less', 'box b', 'box c'),
        said(volume, 'wall', figure('3 mm')),
      ],
      [shapes('less', 'box d')],
    )
    const [tank] = record.volumes
    expect([tank?.outside?.value.text, tank?.less.map(({ value }) => value.text), tank?.wall?.value.text]).toEqual([
      'box a',
      ['box d'],
      '3 mm',
    ])
    expect(tank?.properties.less?.length).toBe(2)
    expect(record.parts[0] === undefined ? null : quantityAt(record.parts[0], 'wall')?.value.text).toBe('3 mm')
    expect(record.measurements).toEqual([])
  })

  test('takes the wall that was measured on the part', () => {
    expect(
      recordOf([part('fuel-tank'), shapes('outside', 'box a'), measured('fuel-tank/wall', '2.5 mm')]).volumes[0]?.wall
        ?.value.text,
    ).toBe('2.5 mm')
  })
})

describe('paths', () => {
  const of = build([said(subject('build', 'electrical'), 'nominal', figure('12 V'))])
  const { record } = fold(
    [session(first, [part('fuel-tank'), ...circuit('pump', 'aux-fuses', '2'), measured('shaft/length', '612 mm')])],
    { of },
  )

  test.each([
    ['fuel-tank/length', 'part fuel-tank length'],
    ['pump/fuse.way', 'circuit pump fuse.way'],
    ['circuit:pump/fuse.way', 'circuit pump fuse.way'],
    ['shaft/length', 'part shaft length'],
    ['vehicle/wheelbase', 'vehicle vehicle wheelbase'],
    ['build:electrical/nominal', 'build electrical nominal'],
    ['fuel-tank', 'part fuel-tank '],
    ['winch/length', null],
    ['circuit:winch/load', null],
    ['Fuel tank/length', null],
    ['constructor/length', null],
  ])('%s resolves to %s', (path, expected) => {
    const found = resolvePath(record, path)
    expect(found === null ? null : `${found.subject.kind} ${found.subject.id} ${found.property}`).toBe(expected)
  })

  test.each([
    [subject('part', 'fuel-tank'), 'length', 'fuel-tank/length'],
    [subject('vehicle', 'vehicle'), 'wheelbase', 'vehicle/wheelbase'],
    [subject('circuit', 'pump'), 'fuse.rating', 'circuit:pump/fuse.rating'],
    [subject('build', 'electrical'), 'nominal', 'build:electrical/nominal'],
  ])('of %j and %s is %s', (of, property, path) => {
    expect(pathText(of, property)).toBe(path)
  })

  test('a thing is found by kind and name, one that was only measured too', () => {
    const found = [
      subject('part', 'shaft'),
      subject('build', 'electrical'),
      subject('circuit', 'pump'),
      subject('loom', 'pump'),
    ].map(of => findThing(record, of)?.id ?? null)
    expect(found).toEqual(['shaft', 'electrical', 'pump', null])
  })

  test('a property by a name that every object has is none', () => {
    expect(latest(record.vehicle, 'constructor')).toBeNull()
    expect(latest(record.vehicle, '__proto__')).toBeNull()
  })
})
