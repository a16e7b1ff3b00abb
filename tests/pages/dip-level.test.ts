import { describe, expect, test } from 'vitest'
import { levelAt } from '../../src/pages/dip-level.ts'

const marksOf = (brimMm: number, litresAt: (mm: number) => number) => {
  const heights = Array.from({ length: Math.ceil(brimMm / 10) }, (_, at) => at * 10)
  return [...heights, brimMm].map(heightMm => ({ heightMm, litres: litresAt(heightMm) }))
}

/** MathWorld, Circular Segment, equation for the area from radius and height; litres of a lying cylinder, a metre long. */
const lying = (r: number) => (h: number) =>
  (r * r * Math.acos((r - h) / r) - (r - h) * Math.sqrt(2 * r * h - h * h)) / 1e3

describe('the height at which a tank is full', () => {
  test('is in a box the same share of its height', () => {
    expect(
      levelAt(
        marksOf(257, mm => mm * 0.24),
        0.95,
      ),
    ).toBeCloseTo(0.95 * 257, 9)
  })

  test.each([100, 150, 210])('is in a lying cylinder of radius %d mm within half a millimetre of the segment', r => {
    const level = levelAt(marksOf(2 * r, lying(r)), 0.95) ?? 0
    const slope = 2 * Math.sqrt(2 * r * level - level * level) // mm² to a millimetre: the chord
    const off = (lying(r)(level) * 1e3 - 0.95 * Math.PI * r * r) / slope
    expect(Math.abs(off)).toBeLessThan(0.5)
  })

  test.each([
    ['without marks', []],
    ['of a tank that holds nothing', marksOf(30, () => 0)],
  ])('is not told %s', (_, marks) => {
    expect(levelAt(marks, 0.95)).toBeNull()
  })
})
