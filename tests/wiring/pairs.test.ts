import { describe, expect, test } from 'vitest'
import { drawPair } from '../../src/wiring/draw-pair.ts'
import { pairConnectors } from '../../src/wiring/pair-connectors.ts'
import { links } from './all-drawings.ts'
import { foldVehicle, type Vehicle } from './vehicle.ts'

type Connectors = NonNullable<Vehicle['connectors']>

const pairsOf = (connectors: Connectors, parts: Vehicle['parts'] = {}) =>
  pairConnectors(foldVehicle({ circuits: { lamp: {}, pump: {} }, connectors, parts }))
const says = (connectors: Connectors, parts: Vehicle['parts'] = {}) =>
  pairsOf(connectors, parts).map(pair => drawPair(pair, links).says)

const plug = (pins: Connectors[string]['pins'], mates: string | null = 'socket'): Connectors[string] =>
  mates === null ? { pins } : { mates, pins }

describe('two halves are set way against way', () => {
  test.each<[string, Connectors, string[][]]>([
    [
      'each on its own number',
      {
        plug: plug({ 1: { wire: '1 mm² red', to: 'lamp', carries: 'lamp' } }),
        socket: plug({ 1: { wire: '1 mm² blue/white', to: 'switch', carries: 'lamp' } }, 'plug'),
      },
      [['Way 1, 1 mm² red, lamp, lamp meets way 1, 1 mm² blue/white, lamp, switch.']],
    ],
    [
      'crossed over as one side says',
      {
        plug: plug({ 1: { wire: 'red', meets: '2' }, 2: { wire: 'blue', meets: '1' } }),
        socket: plug({ 1: { wire: 'green' }, 2: { wire: 'brown' } }, 'plug'),
      },
      [
        [
          'Way 1, size not written red meets way 2, size not written brown.',
          'Way 2, size not written blue meets way 1, size not written green.',
        ],
      ],
    ],
    [
      'crossed over as the other side says',
      { plug: plug({ 1: { wire: 'red' } }), socket: plug({ 5: { wire: 'green', meets: '1' } }, 'plug') },
      [['Way 1, size not written red meets way 5, size not written green.']],
    ],
    [
      'unmated on either side',
      { plug: plug({ 1: { wire: 'red' } }), socket: plug({ 2: { wire: 'green' } }, 'plug') },
      [['Way 1 meets nothing: size not written red.', 'Nothing meets way 2, size not written green.']],
    ],
    [
      'doubled',
      {
        plug: plug({ 1: { wire: 'red' }, 2: { wire: 'blue', meets: '1' } }),
        socket: plug({ 1: { wire: 'green' } }, 'plug'),
      },
      [
        [
          'Way 1, size not written red meets way 1, size not written green; doubled.',
          'Way 2, size not written blue meets way 1, size not written green; doubled.',
        ],
      ],
    ],
    [
      'with different things on the two sides',
      {
        plug: plug({ 1: { wire: 'red', carries: 'horn' } }),
        socket: plug({ 1: { wire: 'red', carries: 'lamp' } }, 'plug'),
      },
      [
        [
          'Way 1, size not written red, horn meets way 1, size not written red, lamp; the two sides carry different things.',
        ],
      ],
    ],
    [
      'of two circuits',
      {
        plug: plug({ 1: { wire: 'red', circuit: 'lamp' } }),
        socket: plug({ 1: { wire: 'red', circuit: 'pump' } }, 'plug'),
      },
      [['Way 1, size not written red meets way 1, size not written red; two circuits are written.']],
    ],
    [
      'mated to itself',
      { plug: plug({ 1: { wire: 'red' } }, 'plug') },
      [['Way 1 meets nothing: size not written red.', 'plug is written as its own mate.']],
    ],
    [
      'without a mate',
      { plug: plug({ 1: { wire: 'puce' } }, null) },
      [['Way 1 meets nothing: size not written “puce”, no known colour.']],
    ],
    [
      'one that is another’s',
      {
        plug: plug({ 1: { wire: 'red' } }),
        socket: plug({ 1: { wire: 'red' } }, 'third'),
        third: plug({ 1: { wire: 'blue' } }),
      },
      [
        [
          'Way 1, size not written red meets way 1, size not written red.',
          'socket names another half than plug as its mate.',
        ],
        ['Way 1, size not written red meets way 1, size not written blue.'],
        [
          'Way 1, size not written blue meets way 1, size not written red.',
          'socket names another half than third as its mate.',
        ],
      ].filter((_, at) => at !== 2),
    ],
  ])('%s', (_, connectors, expected) => {
    expect(says(connectors).slice(0, expected.length)).toEqual(expected)
  })

  test('ways without a wire on either side are shown where the part says how many there are', () => {
    const parts = { plug: '{ kind: connector, ways: 2 }', socket: '{ kind: connector, ways: 2 }' }
    const [pair] = pairsOf({ plug: plug({ 1: { wire: 'red' } }), socket: plug({ 1: { wire: 'red' } }, 'plug') }, parts)
    expect(pair?.rows.map(({ leftWay, rightWay, state }) => [leftWay, rightWay, state])).toEqual([
      ['1', '1', 'mated'],
      ['2', '2', 'no wire'],
    ])
  })

  test('each pair once, and its wires numbered by half and way', () => {
    const pairs = pairsOf({ plug: plug({ '31b': { wire: 'red' } }), socket: plug({ '31b': { wire: 'red' } }, 'plug') })
    expect(
      pairs.map(({ left, right, rows }) => [left.id, right?.id, rows[0]?.left?.number, rows[0]?.right?.number]),
    ).toEqual([['plug', 'socket', 'X1/31b', 'X2/31b']])
  })
})
