import { expect, test } from 'vitest'
import { factsOf, figures, properties, references, slice, stated, told } from './stated.ts'

const note = `---
title: Tank in for size, and the column loom
date: 2026-03-07
hours: 6 h 30
parts:
  fuel-tank:
    name: "Steel tank, folded to a drawing"
    kind: tank
    system: fuel
    action: trial-fitted
    fits: with-work
    from: corvane
    cost: £184
    qty: 1
    mass: 11.5 kg
    at: 1980 mm
    replaces: old-tank
    number: T-60
    receipt: photos/tank-receipt.jpg
    photos: [ photos/tank.jpg ]
    why: the stepped corner must clear the foot of the roll bar by 40 mm
spend:
  - { what: primer and seam sealer, cost: £31.40, system: fuel }
measurements:
  fuel-tank:
    length: 860 mm ± 2 mm
    filled-volume: { value: 92 L, with: metered pump, note: to the neck }
circuits:
  fuel-pump:
    feeds: lift pump
    use: pump
    load: 7 A
    fuse: { box: aux-fuses, way: 3, rating: 15 A }
    cable: { area: 2.5 mm², colour: green/purple, insulation: 105 °C }
    length: 4.8 m
    return: chassis
    zone: engine-bay
    route: [aux-fuses, left sill, lift pump]
connectors:
  stalk-switch:
    mates: column-loom
    pins:
      1: { wire: 0.75 mm² white/black, to: light-switch/2, circuit: side-lamps, meets: 5 }
volumes:
  fuel-tank:
    outside: box 860 x 380 x 300 mm
    wall: 3 mm
    less: [ box 374 x 90 x 40 mm ]
tests:
  - { what: "side lamps, left and right", result: pass }
temporary:
  - { id: borrowed-clip, what: borrowed clip on the demister hose, part: demister-hose, until: the right clip comes, before: road }
clears: [ taped-lens ]
closes: [ seal-hatch ]
---
The tank is :measure[860 mm]{of="fuel-tank/depth" with="steel tape"} deep and holds about 64 litres.

- [ ] seal the engine hatch :job{#seal-hatch before=road}
`

const read = stated(note)

test('a whole session note is read without a finding', () => {
  expect(told(read)).toEqual([])
  expect(read.session).toMatchObject({
    id: '2026-03-07-tank',
    date: '2026-03-07',
    hours: { amount: '6.5' },
    title: { text: 'Tank in for size, and the column loom' },
  })
})

test('each property of it is stated in the order of the file', () => {
  expect(properties(read)).toEqual([
    'part:fuel-tank name = Steel tank, folded to a drawing',
    'part:fuel-tank kind = tank',
    'part:fuel-tank system = fuel',
    'part:fuel-tank mass = 11.5 kg (mass)',
    'part:fuel-tank at = 1980 mm (length)',
    'part:fuel-tank number = T-60',
    'part:fuel-tank receipt = photos/tank-receipt.jpg',
    'part:fuel-tank photos = [photos/tank.jpg]',
    'part:fuel-tank length = 860 mm ± 2 mm (length)',
    'part:fuel-tank filled-volume = 92 L (volume)',
    'circuit:fuel-pump feeds = lift pump',
    'circuit:fuel-pump use = pump',
    'circuit:fuel-pump load = 7 A (current)',
    'circuit:fuel-pump fuse.box = aux-fuses',
    'circuit:fuel-pump fuse.way = 3',
    'circuit:fuel-pump fuse.rating = 15 A (current)',
    'circuit:fuel-pump cable.area = 2.5 mm² (area)',
    'circuit:fuel-pump cable.colour = green/purple',
    'circuit:fuel-pump cable.insulation = 105 °C (temperature)',
    'circuit:fuel-pump length = 4.8 m (length)',
    'circuit:fuel-pump return = chassis',
    'circuit:fuel-pump zone = engine-bay',
    'circuit:fuel-pump route = [aux-fuses, left sill, lift pump]',
    'connector:stalk-switch mates = column-loom',
    'connector:stalk-switch pins.1.wire.area = 0.75 mm² (area)',
    'connector:stalk-switch pins.1.wire.colour = white/black',
    'connector:stalk-switch pins.1.to = light-switch/2',
    'connector:stalk-switch pins.1.circuit = side-lamps',
    'connector:stalk-switch pins.1.meets = 5',
    'volume:fuel-tank outside = box 860 x 380 x 300 mm',
    'volume:fuel-tank wall = 3 mm (length)',
    'volume:fuel-tank less = box 374 x 90 x 40 mm',
    'part:fuel-tank depth = 860 mm (length)',
  ])
})

test('its figures are counted through front matter and body', () => {
  expect(figures(read)).toEqual([
    'q-1 £184 (price fuel-tank/cost)',
    'q-2 11.5 kg (measurement fuel-tank/mass)',
    'q-3 1980 mm (measurement fuel-tank/at)',
    'q-4 40 mm (prose)',
    'q-5 £31.40 (price spend/1/cost)',
    'q-6 860 mm ± 2 mm (measurement fuel-tank/length)',
    'q-7 92 L (measurement fuel-tank/filled-volume)',
    'q-8 7 A (circuit circuit:fuel-pump/load)',
    'q-9 15 A (circuit circuit:fuel-pump/fuse.rating)',
    'q-10 2.5 mm² (circuit circuit:fuel-pump/cable.area)',
    'q-11 105 °C (circuit circuit:fuel-pump/cable.insulation)',
    'q-12 4.8 m (circuit circuit:fuel-pump/length)',
    'q-13 0.75 mm² (pin connector:stalk-switch/pins.1.wire.area)',
    'q-14 860 (volume volume:fuel-tank/outside)',
    'q-15 380 (volume volume:fuel-tank/outside)',
    'q-16 300 mm (volume volume:fuel-tank/outside)',
    'q-17 3 mm (volume volume:fuel-tank/wall)',
    'q-18 374 (volume volume:fuel-tank/less)',
    'q-19 90 (volume volume:fuel-tank/less)',
    'q-20 40 mm (volume volume:fuel-tank/less)',
    'q-21 860 mm (measurement fuel-tank/depth)',
    'q-22 about 64 litres (prose)',
  ])
})

test('its names that must lead somewhere are references', () => {
  expect(references(read)).toEqual([
    'system fuel (must-exist)',
    'donor corvane (near-only)',
    'part old-tank (must-exist)',
    'photo photos/tank-receipt.jpg (must-exist)',
    'photo photos/tank.jpg (must-exist)',
    'system fuel (must-exist)',
    'fuse-box aux-fuses (must-exist)',
    'zone engine-bay (must-exist)',
    'connector column-loom (must-exist)',
    'circuit side-lamps (must-exist)',
    'part demister-hose (must-exist)',
  ])
})

test('what was done, paid, tried, left for later and closed is stated', () => {
  expect(factsOf(read, 'mention')).toMatchObject([
    {
      part: 'fuel-tank',
      action: { word: 'trial-fitted' },
      fits: 'with-work',
      cost: { amount: { amount: '184.00', currency: 'GBP' }, figure: 'q-1' },
      qty: { amount: '1' },
      replaces: { id: 'old-tank' },
    },
  ])
  expect(factsOf(read, 'spend')).toMatchObject([
    {
      what: { text: 'primer and seam sealer' },
      cost: { amount: { amount: '31.40', currency: 'GBP' }, figure: 'q-5' },
      system: 'fuel',
    },
  ])
  expect(factsOf(read, 'test')).toMatchObject([
    { what: { text: 'side lamps, left and right' }, result: 'pass', note: null },
  ])
  expect(factsOf(read, 'temporary')).toMatchObject([
    { id: 'borrowed-clip', part: 'demister-hose', until: { text: 'the right clip comes' }, before: 'road' },
  ])
  expect(factsOf(read, 'closing')).toMatchObject([
    { of: 'temporary', named: 'taped-lens' },
    { of: 'job', named: 'seal-hatch' },
  ])
  expect(factsOf(read, 'job')).toMatchObject([
    { id: 'seal-hatch', explicit: true, words: { text: 'seal the engine hatch' }, done: false, before: 'road' },
  ])
})

test('measurements are observations and tell how they were made; statements are not', () => {
  const observed = factsOf(read, 'property').filter(fact => fact.observed)
  expect(
    observed.map(({ key, with: how, note: said, bare }) => [key, how?.text ?? null, said?.text ?? null, bare]),
  ).toEqual([
    ['mass', null, null, false],
    ['at', null, null, false],
    ['length', null, null, true],
    ['filled-volume', 'metered pump', 'to the neck', true],
    ['depth', 'steel tape', null, true],
  ])
})

test('every figure stands where its place says, and facts are plain JSON', () => {
  for (const { place, quantity } of read.figures) expect(slice(note, place)).toBe(quantity.text)
  expect(JSON.parse(JSON.stringify(read))).toEqual(read)
})
