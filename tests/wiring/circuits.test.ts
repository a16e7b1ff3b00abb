import { describe, expect, test } from 'vitest'
import { drawCircuit } from '../../src/wiring/draw-circuit.ts'
import { readWiring } from '../../src/wiring/wiring.ts'
import { links } from './all-drawings.ts'
import { foldVehicle, type MadeCircuit, type Vehicle } from './vehicle.ts'

const whole: MadeCircuit = {
  feeds: 'left lamp',
  load: '21 W',
  use: 'lighting',
  supply: 'battery',
  box: 'front-box',
  way: '3',
  rating: '5 A',
  area: '1 mm²',
  colour: 'green/purple',
  length: '4.8 m',
  back: 'chassis',
  earth: 'tail',
  loom: 'left-loom',
  route: ['front-box', 'left sill', 'left lamp'],
}
const wiringOf = (vehicle: Vehicle) => readWiring(foldVehicle(vehicle))

function says(circuits: Record<string, MadeCircuit>, more: Partial<Vehicle> = {}): readonly string[] {
  const wiring = wiringOf({ circuits, ...more })
  const [first] = wiring.circuits
  if (first === undefined) throw new Error('Unexpected vehicle without a circuit')
  return drawCircuit(wiring, first, links).says
}

describe('a circuit is drawn from its source to its load and back', () => {
  test.each<[string, MadeCircuit, string[]]>([
    [
      'with all that there is to say',
      whole,
      [
        'Battery.',
        'Front fuse box, way 3.',
        'Left sill, by W1, 1 mm² green/purple, 4.8 m.',
        'Left lamp, by W1, 1 mm² green/purple, 4.8 m.',
        'Back to Tail, and home by the chassis.',
      ],
    ],
    [
      'a starter: a long lead, no fuse, its own way back',
      {
        feeds: 'starter motor',
        use: 'starting',
        duty: 'starting',
        load: '160 A',
        supply: 'battery',
        area: '35 mm²',
        colour: 'red',
        length: '2.3 m',
        back: '35 mm²',
        backLength: '1.1 m',
      },
      [
        'Battery.',
        'Starter motor, by W1, 35 mm² red, 2.3 m.',
        'Back by a wire of its own, W1R, 35 mm² black, 1.1 m; no earth point is written, so it is drawn to the battery.',
      ],
    ],
    [
      'a starter earthed at a point',
      {
        feeds: 'starter motor',
        use: 'starting',
        area: '35 mm²',
        colour: 'red',
        supply: 'battery',
        back: '35 mm²',
        backLength: '0.4 m',
        earth: 'nose',
      },
      [
        'Battery.',
        'Starter motor, by W1, 35 mm² red.',
        'Back by W1R, 35 mm² black, 0.4 m to Nose, and home by the chassis.',
      ],
    ],
    [
      'a generator: it drives the current, and says where it is earthed',
      {
        use: 'charging',
        feeds: 'battery',
        load: '55 A',
        area: '16 mm²',
        colour: 'brown',
        length: '2.1 m',
        rating: '80 A',
        earth: 'nose',
      },
      ['Alternator, earthed at Nose.', 'Fuse, by W1, 16 mm² brown, 2.1 m.', 'Battery, by W1, 16 mm² brown, 2.1 m.'],
    ],
    [
      'nothing but its name',
      { state: 'live' },
      [
        'Supply not written.',
        'What it feeds is not written, by W1, size and colour not written.',
        'No return is written.',
      ],
    ],
    [
      'behind the key, a relay and a switch',
      {
        feeds: 'pump',
        use: 'pump',
        supply: 'ignition',
        box: 'rear-box',
        way: '1',
        rating: '5 A',
        area: '2.5 mm²',
        colour: 'white',
        through: ['pump-relay', 'stop-switch'],
        back: 'chassis',
      },
      [
        'Battery.',
        'Live with the ignition.',
        'Rear fuse box, way 1.',
        'Pump relay, by W1, 2.5 mm² white.',
        'Stop switch, by W1, 2.5 mm² white.',
        'Pump, by W1, 2.5 mm² white.',
        'Back to the chassis, no earth point written, and home by the chassis.',
      ],
    ],
  ])('%s', (_, circuit, expected) => {
    expect(says({ one: circuit })).toEqual(expected)
  })

  test('by the feed of its fuse box and through a mated pair, with the colours of both sides', () => {
    const circuits = {
      lamp: whole,
      'front-feed': {
        feeds: 'front-box',
        supply: 'battery',
        rating: '80 A',
        area: '35 mm²',
        colour: 'red/white',
        length: '1.7 m',
      },
    }
    const connectors = {
      plug: { mates: 'socket', pins: { 1: { wire: '1 mm² green/purple', circuit: 'lamp' } } },
      socket: { mates: 'plug', pins: { 2: { wire: '0.75 mm² grey', to: 'lamp', meets: '1' } } },
    }
    expect(says(circuits, { connectors })).toEqual([
      'Battery.',
      'Front feed, 80 A.',
      'Front fuse box, way 3, by W2, 35 mm² red/white, 1.7 m.',
      'Left sill, by W1, 1 mm² green/purple, 4.8 m.',
      'plug, way 1 to socket, way 2, by W1, 1 mm² green/purple, 4.8 m.',
      'Left lamp, by X2/2, 0.75 mm² grey.',
      'Back to Tail, and home by the chassis.',
    ])
  })

  test('each wire leads to its circuit, a two-colour wire has a stripe, and no colour stands without its name', () => {
    const wiring = wiringOf({ circuits: { one: whole } })
    const { svg } = drawCircuit(wiring, wiring.circuits[0] ?? never(), links)
    expect(svg).toContain(
      '<a href="../circuits/one/index.html"><title>W1, 1 mm² green/purple, 4.8 m</title><g class="wire"><path class="w case"',
    )
    expect(svg).toMatch(
      /<path class="w green" d="[^"]+"\/><path class="w edge" d="[^"]+"\/><path class="w band violet"/,
    )
    expect(svg).toContain('>W1, 1\u00a0mm²</text><text class="wl" x="118" y="148">green/purple, 4.8\u00a0m</text>')
  })
})

describe('what is odd about a circuit is said', () => {
  test.each<[string, MadeCircuit, string[]]>([
    ['nothing', whole, []],
    ['no load', without('load'), ['No load is written.']],
    ['a way that the box has not', { ...whole, way: '9' }, ['Front fuse box has no way 9.']],
    ['a box that is not there', { ...whole, box: 'attic-box' }, ['There is no fuse box “attic-box”.']],
    ['no way', without('way'), ['No way of Front fuse box is written.']],
    ['a colour that nobody knows', { ...whole, colour: 'puce' }, ['The colour “puce” is not known.']],
    ['no length', without('length'), ['No length is written: measure before cutting.']],
    ['no return', { ...without('back'), earth: 'tail' }, ['No return is written.']],
    ['a part that is gone', { ...whole, feeds: 'old-lamp' }, ['It feeds Old lamp, which is not on the vehicle.']],
    ['a ring of supplies', { ...whole, supply: 'other' }, ['Its supply leads back to itself.']],
    [
      'no fuse',
      { feeds: 'lamp', load: '5 W', supply: 'battery', area: '1 mm²', length: '1 m', back: 'chassis' },
      ['No fuse is written.'],
    ],
  ])('%s', (_, circuit, expected) => {
    const parts = { 'old-lamp': '{ name: "Old lamp", action: removed }' }
    const { circuits } = wiringOf({ circuits: { one: circuit, other: { supply: 'one' } }, parts })
    expect(circuits[0]?.doubts).toEqual(expected)
  })

  test('a way used twice, at both', () => {
    const { circuits } = wiringOf({ circuits: { one: whole, two: whole } })
    expect(circuits.map(({ doubts }) => doubts)).toEqual([['Way 3 is shared with two.'], ['Way 3 is shared with one.']])
  })
})

describe('wire numbers', () => {
  test('follow the order in which the notes first name a circuit, so that a later one moves none', () => {
    const numbers = (ids: readonly string[]) =>
      wiringOf({ circuits: Object.fromEntries(ids.map(id => [id, whole])) }).circuits.map(
        ({ id, number }) => `${number} ${id}`,
      )
    expect(numbers(['zebra', 'ape'])).toEqual(['W1 zebra', 'W2 ape'])
    expect(numbers(['zebra', 'ape', 'bear'])).toEqual(['W1 zebra', 'W2 ape', 'W3 bear'])
  })
})

function without(key: keyof MadeCircuit): MadeCircuit {
  return Object.fromEntries(Object.entries(whole).filter(([name]) => name !== key))
}

function never(): never {
  throw new Error('Unexpected vehicle without a circuit')
}
