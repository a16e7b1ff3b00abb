import { describe, expect, test } from 'vitest'
import { figures, properties, references, statedFront, told } from './stated.ts'

const circuit = (line: string) => statedFront(`circuits:\n  fuel-pump:\n    ${line}`)
const own = (line: string): string[] =>
  properties(circuit(line)).map(property => property.replace('circuit:fuel-pump ', ''))

describe('short forms of a circuit', () => {
  test.each([
    ['fuse: 15 A', ['fuse.rating = 15 A (current)']],
    [
      'fuse: { rating: 15 A, type: blade, after: 150 mm, let-through: 950 A²s }',
      [
        'fuse.rating = 15 A (current)',
        'fuse.type = blade',
        'fuse.after = 150 mm (length)',
        'fuse.let-through = 950 A²s (let-through)',
      ],
    ],
    ['cable: 2.5 mm² green/purple', ['cable.area = 2.5 mm² (area)', 'cable.colour = green/purple']],
    ['cable: green/purple, 2.5 mm²', ['cable.colour = green/purple', 'cable.area = 2.5 mm² (area)']],
    ['cable: 2.5 mm²', ['cable.area = 2.5 mm² (area)']],
    ['cable: AWG 14 red', ['cable.area = AWG 14 (area)', 'cable.colour = red']],
    ['cable: { area: AWG 14 }', ['cable.area = AWG 14 (area)']],
    ['return: chassis', ['return = chassis']],
    ['return: 2.5 mm² black', ['return.area = 2.5 mm² (area)', 'return = cable', 'return.colour = black']],
    [
      'return: { area: 2.5 mm², length: 2 m, loom: rear-loom }',
      ['return = cable', 'return.area = 2.5 mm² (area)', 'return.length = 2 m (length)', 'return.loom = rear-loom'],
    ],
    ['load: 84 W', ['load = 84 W (power)']],
    ['joints: 6 mΩ', ['joints = 6 mΩ (resistance)']],
    ['through: pump-relay', ['through = [pump-relay]']],
    ['load: ~', ['load = nothing']],
  ])('`%s` is read', (line, expected) => {
    expect(told(circuit(line))).toEqual([])
    expect(own(line)).toEqual(expected)
  })

  test('a nested mapping that is taken back is taken back as a whole', () => {
    expect(own('fuse: ~')).toEqual(['fuse = nothing'])
  })

  test.each([
    [
      'fuse: big',
      '6:11-14 not-a-quantity Unexpected `big` for `circuit:fuel-pump/fuse.rating`, expected a current such as `7 A`',
    ],
    [
      'fuse: 15 mm',
      '6:11-16 dimension Unexpected `15 mm` for `circuit:fuel-pump/fuse.rating`, expected a current such as `7 A`',
    ],
    [
      'cable: 2.5 mm green',
      '6:12-18 dimension Unexpected `2.5 mm` for `circuit:fuel-pump/cable.area`, expected an area such as `2.5 mm²`',
    ],
    [
      'cable: thick',
      '6:12-17 not-a-quantity Unexpected `thick` for `circuit:fuel-pump/cable.area`, expected an area such as `2.5 mm²`',
    ],
    [
      'cable: 2.5 mm² or 4 mm²',
      '6:12-28 not-a-quantity Unexpected `2.5 mm² or 4 mm²` for `circuit:fuel-pump/cable`, expected one section and its colour such as `2.5 mm² green/purple`',
    ],
    [
      'return: earth',
      '6:13-18 not-a-quantity Unexpected `earth` for `circuit:fuel-pump/return.area`, expected an area such as `2.5 mm²`',
    ],
    [
      'cable: 2.5 mm² b/w',
      '6:20-23 ambiguous-colour Unexpected `b` in the colour `b/w`, expected `black`, `blue` or `brown`',
    ],
    [
      'cable: { colour: gr }',
      '6:22-24 ambiguous-colour Unexpected `gr` in the colour `gr`, expected `green` or `grey`',
    ],
    [
      'load: 7 A and 3 A',
      '6:11-22 not-a-quantity Unexpected `7 A and 3 A` for `circuit:fuel-pump/load`, expected a current such as `7 A` or a power such as `84 W`',
    ],
  ])('`%s` is told', (line, finding) => {
    expect(told(circuit(line))).toEqual([finding])
  })
})

describe('names in a circuit', () => {
  test.each([
    ['fuse: { box: aux-fuses }', ['fuse-box aux-fuses (must-exist)']],
    ['zone: engine-bay', ['zone engine-bay (must-exist)']],
    ['system: fuel', ['system fuel (must-exist)']],
    ['supply: ignition', []],
    ['supply: main-feed', ['circuit main-feed (must-exist)']],
    ['loom: body-loom', ['loom body-loom (near-only)']],
    ['earth: left-rear', ['earth-point left-rear (near-only)']],
    ['through: [pump-relay, main-switch]', ['part pump-relay (near-only)', 'part main-switch (near-only)']],
    ['feeds: lift pump', []],
    ['feeds: lift-pump', ['part lift-pump (near-only)']],
  ])('`%s` refers to %j', (line, expected) => {
    expect(references(circuit(line))).toEqual(expected)
  })
})

describe('pins', () => {
  test('a pin is its wire, its far end, what it carries and the way that it meets', () => {
    const note = statedFront(
      'connectors:\n  stalk-switch:\n    rating: 10 A\n    pins:\n      31b: { wire: 0.75 mm² brown, to: earth post, carries: earth }\n      01: white/black\n      2: { wire: { area: 1 mm², colour: GN-YE }, meets: 5 }',
    )
    expect(told(note)).toEqual([])
    expect(properties(note).map(property => property.replace('connector:stalk-switch ', ''))).toEqual([
      'rating = 10 A (current)',
      'pins.31b.wire.area = 0.75 mm² (area)',
      'pins.31b.wire.colour = brown',
      'pins.31b.to = earth post',
      'pins.31b.carries = earth',
      'pins.01.wire.colour = white/black',
      'pins.2.wire.area = 1 mm² (area)',
      'pins.2.wire.colour = GN-YE',
      'pins.2.meets = 5',
    ])
    expect(figures(note)).toEqual([
      'q-1 10 A (pin connector:stalk-switch/rating)',
      'q-2 0.75 mm² (pin connector:stalk-switch/pins.31b.wire.area)',
      'q-3 1 mm² (pin connector:stalk-switch/pins.2.wire.area)',
    ])
  })

  test('a wire with a length for a section is told', () => {
    expect(told(statedFront('connectors: { stalk: { pins: { 1: { wire: 0.75 mm white } } } }'))).toEqual([
      '4:43-50 dimension Unexpected `0.75 mm` for `connector:stalk/pins.1.wire.area`, expected an area such as `2.5 mm²`',
    ])
  })
})
