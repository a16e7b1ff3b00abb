import { describe, expect, test } from 'vitest'
import { bundleDiameterMm } from '../../src/wiring/bundle-diameter.ts'
import { drawFuseBox } from '../../src/wiring/draw-fuse-box.ts'
import { drawGraph } from '../../src/wiring/draw-graph.ts'
import { loomGraph } from '../../src/wiring/loom-graph.ts'
import { supplyGraph } from '../../src/wiring/supply-graph.ts'
import { readWiring } from '../../src/wiring/wiring.ts'
import { links } from './all-drawings.ts'
import { foldVehicle, type MadeCircuit } from './vehicle.ts'

const wiringOf = (circuits: Record<string, MadeCircuit>) => readWiring(foldVehicle({ circuits }))

describe('the bundle of a loom', () => {
  // Diameters of the smallest circle around n equal circles of diameter 1, which follow from geometry (triangle, square, hexagon, two rings).
  test.each([
    [1, 1],
    [2, 2],
    [3, 1 + 2 / Math.sqrt(3)],
    [4, 1 + Math.SQRT2],
    [7, 3],
    [19, 1 + Math.SQRT2 + Math.sqrt(6)],
  ])('of %d equal wires is no thinner than they can be packed, and no more than a sixth thicker', (count, tightest) => {
    const estimate = bundleDiameterMm(Array.from({ length: count }, () => 1))
    if (count > 1) expect(estimate).toBeGreaterThanOrEqual(tightest - 1e-9)
    expect(estimate).toBeLessThanOrEqual(tightest * 1.17)
  })

  test('of none is nothing, and one thick wire rules', () => {
    expect(bundleDiameterMm([])).toBe(0)
    expect(bundleDiameterMm([10, 1])).toBeGreaterThanOrEqual(11)
  })
})

describe('the branches of a loom', () => {
  const lamp = (route: readonly string[], length: string): MadeCircuit => ({
    loom: 'left-loom',
    box: 'front-box',
    way: '1',
    area: '1 mm²',
    length,
    route,
    feeds: route.at(-1) ?? '',
  })

  test('say how many wires lie in each, and their length where circuits end at both ends of it', () => {
    const [loom] = wiringOf({
      a: lamp(['front-box', 'sill', 'tail'], '4 m'),
      b: lamp(['front-box', 'sill'], '1.5 m'),
      c: lamp(['front-box', 'sill', 'fog'], '3 m'),
    }).looms
    expect(loom === undefined ? [] : loomGraph(loom).edges.map(({ says }) => says)).toEqual([
      'Front fuse box to sill: 3 wires, ⌀ 5 mm, 1.50 m (W1, W2, W3).',
      'Sill to tail: W1, 2.50 m (W1).',
      'Sill to fog: W3, 1.50 m (W3).',
    ])
  })

  test('of a route that comes back to a stop end there, and none hangs', () => {
    const [loom] = wiringOf({ a: lamp(['front-box', 'sill', 'front-box', 'sill', 'tail'], '4 m') }).looms
    expect(loom === undefined ? [] : loomGraph(loom).edges.map(({ from, to }) => `${from} > ${to}`)).toEqual([
      'Front fuse box > sill',
      'sill > tail',
    ])
  })
})

describe('the supply', () => {
  test('is drawn from the battery by each feed to its box, and home', () => {
    const wiring = wiringOf({
      'front-feed': {
        feeds: 'front-box',
        supply: 'battery',
        rating: '80 A',
        area: '35 mm²',
        colour: 'red',
        length: '1.7 m',
        earth: 'nose',
        back: 'chassis',
      },
      starter: {
        feeds: 'starter motor',
        use: 'starting',
        supply: 'battery',
        area: '35 mm²',
        colour: 'red',
        length: '2.3 m',
        back: '35 mm²',
        backLength: '1.1 m',
      },
      charge: { feeds: 'battery', use: 'charging', supply: 'battery', area: '16 mm²', colour: 'brown', rating: '80 A' },
      lamp: { feeds: 'lamp', box: 'front-box', way: '1', rating: '5 A' },
    })
    expect(drawGraph(supplyGraph(wiring), null, links).says).toEqual([
      'front feed, up to its fuse.',
      'front feed: W1, 35 mm² red, 1.7 m, fuse 80 A.',
      'front feed is earthed at Nose.',
      'starter: W2, 35 mm² red, 2.3 m, no fuse.',
      'starter returns by W2R, 35 mm² black, 1.1 m to the battery, negative.',
      'charge, up to its fuse.',
      'charge: W3, 16 mm² brown, fuse 80 A.',
      'Nose goes home by the chassis.',
    ])
  })

  test('of circuits that feed each other in a ring still comes out', () => {
    const wiring = wiringOf({
      a: { supply: 'b', use: 'starting', feeds: 'x' },
      b: { supply: 'a', use: 'starting', feeds: 'y' },
    })
    expect(drawGraph(supplyGraph(wiring), null, links).says).toEqual([
      'a: W1, size and colour not written, no fuse.',
      'b: W2, size and colour not written, no fuse.',
    ])
  })
})

describe('a fuse box', () => {
  test('is drawn way by way, spare, shared and impossible ways said', () => {
    const [box] = wiringOf({
      lamp: { box: 'rear-box', way: '1', rating: '5 A', area: '1 mm²', colour: 'red' },
      pump: { box: 'rear-box', way: '3', rating: '10 A', area: '2.5 mm²', colour: 'blue/white' },
      horn: { box: 'rear-box', way: '3', rating: '15 A' },
      fan: { box: 'rear-box', way: '9', rating: '5 A', colour: 'puce', area: '4 mm²' },
      odd: { box: 'rear-box', rating: '5 A' },
    }).fuseBoxes.filter(({ id }) => id === 'rear-box')
    expect(box === undefined ? [] : drawFuseBox(box, links).says).toEqual([
      'Way 1: 5 A (tan), lamp (W1, 1 mm² red).',
      'Way 2: spare.',
      'Way 3: 10 A and 15 A (red and blue), pump (W2, 2.5 mm² blue/white); horn (W3, size and colour not written); shared.',
      'Way 4: spare.',
      'Way 9: 5 A (tan), fan (W4, 4 mm² “puce”, no known colour); the box has no such way.',
      'odd names no way.',
    ])
  })
})
