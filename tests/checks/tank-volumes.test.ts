import Module from 'manifold-3d'
import { beforeAll, describe, expect, test } from 'vitest'
import tankVolume from '../../src/checks/tank-volume.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from './answer-to.ts'

let solids: Awaited<ReturnType<typeof Module>>

beforeAll(async () => {
  solids = await Module()
  solids.setup()
})

type Corner = [number, number]

/** What manifold-3d makes of an outline moved in by the wall, corners kept sharp, and drawn out; litres of millimetres. */
function prismLitres(corners: readonly Corner[], length: number, wall: number): number {
  const outline = new solids.CrossSection([[...corners]], 'NonZero').offset(-wall, 'Miter', 100)
  return outline.extrude(length - 2 * wall).volume() / 1e6
}

const litres = (given: Given): number => answerTo(tankVolume, { given }).result?.value ?? Number.NaN
const written = (corners: readonly Corner[], length: number): string =>
  `prism of ${corners.map(([x, y]) => `[${x},${y}]`).join(' ')} x ${length} mm`

describe('a prism inside its wall has the volume that manifold-3d gives', () => {
  test.each([
    [
      'a box as a prism',
      [
        [0, 0],
        [380, 0],
        [380, 300],
        [0, 300],
      ],
      860,
      3,
    ],
    [
      'a stepped corner',
      [
        [0, 0],
        [520, 0],
        [520, 140],
        [260, 140],
        [260, 300],
        [0, 300],
      ],
      640,
      2,
    ],
    [
      'a sloping floor',
      [
        [0, 40],
        [500, 0],
        [500, 260],
        [0, 260],
      ],
      700,
      1.5,
    ],
    [
      'a channel in the floor for a shaft',
      [
        [0, 0],
        [180, 0],
        [180, 80],
        [320, 80],
        [320, 0],
        [500, 0],
        [500, 240],
        [0, 240],
      ],
      720,
      3,
    ],
    [
      'a sharp nose',
      [
        [0, 0],
        [600, 90],
        [0, 180],
      ],
      400,
      2,
    ],
    [
      'no wall at all',
      [
        [0, 0],
        [520, 0],
        [520, 140],
        [260, 300],
        [0, 300],
      ],
      640,
      0,
    ],
  ] as [string, Corner[], number, number][])('%s', (_, corners, length, wall) => {
    // manifold-3d offsets outlines on a grid of its own: it is good to about one in ten thousand here.
    const expected = prismLitres(corners, length, wall)
    expect(
      Math.abs(litres({ 'volume/outside': written(corners, length), 'tank/wall': `${wall} mm` }) / expected - 1),
    ).toBeLessThan(1e-4)
    const reversed = litres({ 'volume/outside': written([...corners].reverse(), length), 'tank/wall': `${wall} mm` })
    expect(Math.abs(reversed / expected - 1)).toBeLessThan(1e-4)
  })

  test('a cylinder, as one of 2000 sides', () => {
    const expected = solids.Manifold.cylinder(794, 147, 147, 2000).volume() / 1e6
    expect(
      Math.abs(litres({ 'volume/outside': 'cylinder 300 x 800 mm', 'tank/wall': '3 mm' }) / expected - 1),
    ).toBeLessThan(1e-5)
  })
})

describe('published and exact volumes', () => {
  test.each([
    [
      'a cylinder 1.5 m across and 5 m long holds 8.835 729 m³ (fluids, after D. Jones, Calculating Tank Volume)',
      { 'volume/outside': 'cylinder 1500 x 5000 mm', 'tank/wall': '0 mm' },
      8835.729,
    ],
    [
      'an imperial gallon by its definition is 277.42 in³',
      { 'volume/outside': 'box 10 x 10 x 2.7742 in', 'tank/wall': '0 in' },
      4.546,
    ],
    ['a cubic decimetre is a litre', { 'volume/outside': 'box 100 x 100 x 100 mm', 'tank/wall': '0 mm' }, 1],
  ])('%s', (_, given, expected) => {
    expect(litres(given)).toBeCloseTo(expected, 3)
  })

  test('cut-outs are taken off as they stand, wherever they are written', () => {
    const whole = { 'volume/outside': 'box 500 x 400 x 300 mm', 'tank/wall': '2 mm' }
    const less = litres({ ...whole, 'volume/less': 'box 100 x 50 x 40 mm; cylinder 60 x 200 mm' })
    expect(litres(whole) - less).toBeCloseTo(0.2 + (Math.PI / 4) * 0.6 ** 2 * 2, 9)
  })

  test('a prism cut in two holds what it held', () => {
    const half = litres({
      'volume/outside': written(
        [
          [0, 0],
          [260, 0],
          [260, 300],
          [0, 300],
        ],
        640,
      ),
      'tank/wall': '0 mm',
    })
    const whole = litres({
      'volume/outside': written(
        [
          [0, 0],
          [520, 0],
          [520, 300],
          [0, 300],
        ],
        640,
      ),
      'tank/wall': '0 mm',
    })
    expect(2 * half).toBeCloseTo(whole, 9)
  })

  test('a wall that leaves nothing inside is named, and no volume is given', () => {
    expect(
      answerTo(tankVolume, { given: { 'volume/outside': 'box 860 x 380 x 6 mm', 'tank/wall': '3 mm' } }),
    ).toMatchObject({ verdict: 'missing', missing: ['example/wall'] })
    expect(
      answerTo(tankVolume, { given: { 'volume/outside': 'box 10 x 10 x 500 mm', 'tank/wall': '20 mm' } }),
    ).toMatchObject({ verdict: 'missing', missing: ['example/wall'] })
  })
})

describe('a measured fill', () => {
  const exact = {
    'tank/length': '500 mm ± 0',
    'tank/width': '200 mm ± 0',
    'tank/height': '100 mm ± 0',
    'tank/wall': '0 mm ± 0',
  }

  test.each([
    ['10 L ± 0', 'pass'],
    ['10.01 L ± 0', 'fail'],
    ['10.2 L ± 0.2', 'pass'],
    ['10.25 L ± 0.2', 'fail'],
    ['about 10.5 L', 'pass'],
  ])('of %s beside exactly 10 L: %s', (filled, expected) => {
    expect(answerTo(tankVolume, { given: { ...exact, 'tank/filled-volume': filled } }).verdict).toBe(expected)
  })

  test('agrees up to the root of both expanded uncertainties squared', () => {
    const given = {
      'tank/length': '500 mm ± 3',
      'tank/width': '200 mm ± 0',
      'tank/height': '100 mm ± 0',
      'tank/wall': '0 mm ± 0',
      'tank/filled-volume': '10.1 L ± 0.04',
    }
    const { result, limit } = answerTo(tankVolume, { given })
    const [calculated, measured] = [(2 * 0.06) / Math.sqrt(3), (2 * 0.04) / Math.sqrt(3)] // L: 3 mm × 200 × 100 mm; 0.04 L
    expect(result?.uncertainty).toBeCloseTo(calculated, 6)
    expect(limit?.max).toBeCloseTo(10.1 + Math.hypot(calculated, measured), 6)
    expect(limit?.min).toBeCloseTo(10.1 - Math.hypot(calculated, measured), 6)
  })
})

test('a tank that is on order or gone is not asked about', () => {
  const given = { 'tank/wall': '2 mm', 'tank/length': '500 mm' }
  expect(answerTo(tankVolume, { given }).verdict).toBe('missing')
  expect(() => answerTo(tankVolume, { given: { ...given, 'state/example': 'removed' } })).toThrow(
    'Unexpected silence of tank-volume',
  )
})
