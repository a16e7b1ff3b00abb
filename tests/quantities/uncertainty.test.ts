import { describe, expect, test } from 'vitest'
import { readOneQuantity } from '../../src/quantities/read-one-quantity.ts'
import { standardUncertainty } from '../../src/quantities/uncertainty.ts'
import { settings } from './describe-readings.ts'

function spreadOf(text: string, share?: number) {
  const quantity = readOneQuantity(text, settings.plain)
  return quantity === null ? null : standardUncertainty(quantity, share)
}

// u = a/√3 for the half-width a of a rectangular distribution: JCGM 100:2008, 4.3.7. Half-widths worked by hand.
describe('the half-width of what is written', () => {
  test.each([
    ['860 mm ± 2 mm', 0.86, 0.002],
    ['860 mm', 0.86, 0.0005],
    ['4.30 m', 4.3, 0.005],
    ['100 Ω ± 5 %', 100, 5],
    ['about 64 L', 0.064, 0.0032],
    ['6 to 7 in', 0.1651, 0.0127],
    ['45° ± 1°', Math.PI / 4, Math.PI / 180],
    ['20 °C ± 2 °C', 293.15, 2],
    ['1/2 in', 0.0127, 0.00079375],
    ['3/64 in', 0.001190625, 0.0254 / 128],
    ['1,260 mm', 1.26, 0.0005],
    ['5 %', 0.05, 0.005],
  ])('%s is %d, half-width %d', (text, value, half) => {
    const spread = spreadOf(text)
    expect(spread?.value).toBeCloseTo(value, 12)
    expect(spread?.standard).toBeCloseTo(half / Math.sqrt(3), 12)
    expect([spread?.low, spread?.high]).toEqual([expect.closeTo(value - half, 12), expect.closeTo(value + half, 12)])
  })

  test('an approximate temperature is worth a share of its degrees, not of its kelvins', () => {
    expect(spreadOf('about 80 °C')?.standard).toBeCloseTo(4 / Math.sqrt(3), 10)
  })

  test('the share of about is the build’s own', () => {
    expect(spreadOf('about 64 L', 0.1)?.standard).toBeCloseTo(0.0064 / Math.sqrt(3), 12)
  })

  test('an uneven tolerance is taken about its middle (JCGM 100:2008, 4.3.8)', () => {
    const spread = spreadOf('30 mm +0.1/-0')
    expect(spread?.value).toBeCloseTo(0.03005, 12)
    expect(spread?.standard).toBeCloseTo(0.0001 / Math.sqrt(12), 12)
  })

  test('a bound keeps its side and is not averaged', () => {
    const { value, bound } = spreadOf('at least 200 mm') ?? {}
    expect([value, bound]).toEqual([0.2, 'min'])
  })

  test('a gauge is exact by its definition', () => {
    expect(spreadOf('12 AWG')?.standard).toBe(0)
    expect(spreadOf('2/0 AWG')?.standard).toBe(0)
  })

  test('a consumption in miles per gallon is turned with its ends', () => {
    const spread = spreadOf('30 mpg (imp)')
    expect(spread?.low).toBeLessThan(spread?.value ?? 0)
    expect(spread?.high).toBeGreaterThan(spread?.value ?? 1)
  })

  test.each(['£85', 'M8'])('%s has none', text => {
    expect(spreadOf(text)).toBeNull()
  })
})
