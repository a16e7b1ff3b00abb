import Module from 'manifold-3d'
import { beforeAll, describe, expect, test } from 'vitest'
import { dipTable } from '../../src/checker/derived/dip-table.ts'
import { exampleId, type Given, makeRecord } from '../checker/record-maker.ts'

let solids: Awaited<ReturnType<typeof Module>>

beforeAll(async () => {
  solids = await Module()
  solids.setup()
})

type Solid = ReturnType<typeof solids.Manifold.cube>
type Corner = [number, number]

const table = (given: Given, stepMm: number) => dipTable(makeRecord(given), exampleId, stepMm)
const litresAt = (given: Given, heightMm: number): number =>
  table(given, heightMm).find(mark => Math.abs(mark.heightMm - heightMm) < 1e-9)?.litres ?? Number.NaN
const fullLitres = (given: Given): number => table(given, 1000).at(-1)?.litres ?? Number.NaN

/** What manifold-3d leaves of a solid below a height, in litres of millimetres, z up. */
const below = (solid: Solid, height: number): number => solid.trimByPlane([0, 0, -1], -height).volume() / 1e6

/** An outline with y up, moved in by the wall with its corners kept sharp, lying on its floor at z 0. */
function prism(corners: readonly Corner[], length: number, wall: number): Solid {
  const outline = new solids.CrossSection([[...corners]], 'NonZero').offset(-wall, 'Miter', 100)
  const solid = outline.extrude(length - 2 * wall).rotate([90, 0, 0])
  return solid.translate([0, 0, -(solid.boundingBox().min[2] ?? 0)])
}

const sloping: readonly Corner[] = [
  [0, 0],
  [520, 0],
  [520, 140],
  [260, 300],
  [0, 300],
]
const stepped: readonly Corner[] = [
  [0, 60],
  [200, 60],
  [200, 0],
  [500, 0],
  [500, 260],
  [0, 260],
]
const written = (corners: readonly Corner[], length: number): string =>
  `prism of ${corners.map(([x, y]) => `[${x},${y}]`).join(' ')} x ${length} mm`

describe('what a tank holds up to a height is what manifold-3d cuts off below it', () => {
  test.each([10, 75, 139, 200, 290, 293])('a prism with a sloping top, at %i mm', height => {
    const given = { 'volume/outside': written(sloping, 640), 'tank/wall': '3 mm' }
    // The outline offset of manifold-3d lies on a grid of its own, good to about one in ten thousand.
    expect(litresAt(given, height) / below(prism(sloping, 640, 3), height)).toBeCloseTo(1, 3)
  })

  test.each([20, 57, 60, 100, 250])('a prism whose floor is stepped, at %i mm', height => {
    const given = { 'volume/outside': written(stepped, 640), 'tank/wall': '2 mm' }
    expect(litresAt(given, height) / below(prism(stepped, 640, 2), height)).toBeCloseTo(1, 3)
  })

  test.each([10, 40, 41, 200, 257])('a box with a channel on its floor, at %i mm', height => {
    const given = {
      'volume/outside': 'box 720 x 340 x 260 mm',
      'tank/wall': '1.5 mm',
      'volume/less': 'box 120 x 110 x 40 mm',
    }
    const inside = solids.Manifold.cube([717, 337, 257]).subtract(solids.Manifold.cube([120, 110, 40]))
    expect(litresAt(given, height)).toBeCloseTo(below(inside, height), 9)
  })

  test.each([1, 100, 147, 250, 290])('a cylinder on its side, at %i mm', height => {
    const given = { 'volume/outside': 'cylinder 300 x 800 mm', 'tank/wall': '2 mm' }
    const sides = 4096 // of the polygon by which manifold-3d draws a circle
    const solid = solids.Manifold.cylinder(796, 148, 148, sides).rotate([90, 0, 0]).translate([0, 0, 148])
    expect(litresAt(given, height) / below(solid, height)).toBeCloseTo(1, 3)
  })
})

describe('published tanks', () => {
  const cylinder = { 'volume/outside': 'cylinder 1500 x 5000 mm', 'tank/wall': '0 mm' }

  test('a cylinder 1.5 m across and 5 m long holds 4417.864 669 L half full and twice that to the brim (test of the fluids library)', () => {
    expect(litresAt(cylinder, 750)).toBeCloseTo(4417.864669, 6)
    expect(fullLitres(cylinder)).toBeCloseTo(8835.729338, 6)
  })

  test('a lying cylinder 10 m long, its level 1 m wide and 0.2 m below the top, holds 15.138 m³ (hackmath 3613)', () => {
    const radius = (500 ** 2 + 200 ** 2) / (2 * 200) // mm, the circle through the level's ends and the top
    const given = { 'volume/outside': `cylinder ${2 * radius} x 10000 mm`, 'tank/wall': '0 mm' }
    expect(litresAt(given, 2 * radius - 200) / 1000).toBeCloseTo(15.138, 3)
  })
})

describe('a dip table', () => {
  const given = { 'tank/length': '500 mm', 'tank/width': '300 mm', 'tank/height': '200 mm', 'tank/wall': '2 mm' }

  test('begins at nothing, ends at the brim, and rises', () => {
    const marks = table(given, 50)
    expect(marks.map(({ heightMm }) => Number(heightMm.toFixed(6)))).toEqual([0, 50, 100, 150, 196])
    expect(marks.map(({ litres }) => Number(litres.toFixed(3)))).toEqual([0, 7.341, 14.682, 22.022, 28.776])
  })

  test('what is below a level and what is above it, turned over, are the whole', () => {
    const upright = { 'volume/outside': written(sloping, 640), 'tank/wall': '3 mm' }
    const turned = sloping.map(([x, y]): Corner => [x, 300 - y])
    const over = { 'volume/outside': written(turned, 640), 'tank/wall': '3 mm' }
    expect(litresAt(upright, 100) + litresAt(over, 194)).toBeCloseTo(fullLitres(upright), 9)
  })

  test('an outline written the other way round holds the same', () => {
    const given = { 'volume/outside': written(sloping, 640), 'tank/wall': '3 mm' }
    const back = { ...given, 'volume/outside': written([...sloping].reverse(), 640) }
    expect(litresAt(back, 120)).toBeCloseTo(litresAt(given, 120), 9)
  })

  test('there is none without a wall, without a shape, or of a part that is not there', () => {
    const { 'tank/wall': _, ...noWall } = given
    expect(table(noWall, 50)).toEqual([])
    expect(table({ 'tank/filled-volume': '58 L' }, 50)).toEqual([])
    expect(dipTable(makeRecord(given), 'other-tank', 50)).toEqual([])
  })
})
