import { expect, test } from 'vitest'
import { awgArea, awgDiameter, awgOfArea, gaugeNumber } from '../../src/quantities/awg.ts'

/** Diameters as printed, to four digits: T. R. Kuphaldt, Lessons In Electric Circuits (inches); OpenStax College Physics (millimetres). */
const diameters: readonly (readonly [string, number, number])[] = [
  ['4/0', 0.46, 25.4e-3], ['1/0', 0.3249, 25.4e-3], ['6', 0.162, 25.4e-3], ['8', 0.1285, 25.4e-3], ['10', 0.1019, 25.4e-3],
  ['14', 0.06408, 25.4e-3], ['16', 0.05082, 25.4e-3], ['18', 0.0403, 25.4e-3], ['22', 0.02535, 25.4e-3],
  ['12', 2.053, 1e-3], ['1/0', 8.252, 1e-3], ['14', 1.628, 1e-3],
] // biome-ignore format: a table reads better in rows

test.each(diameters)('gauge %s is %d in units of %d m across', (written, size, unit) => {
  const gauge = gaugeNumber(written) ?? Number.NaN
  expect(Math.abs(awgDiameter(gauge) / (size * unit) - 1)).toBeLessThan(6e-4)
})

/** Circular mils as printed: T. R. Kuphaldt, Lessons In Electric Circuits; a circular mil is π/4 × (0.0254 mm)². */
test.each([
  ['4/0', 211600],
  ['2/0', 133100],
])('gauge %s is %d circular mils', (written, mils) => {
  const circularMil = (Math.PI / 4) * 0.0254e-3 ** 2
  expect(awgArea(gaugeNumber(written) ?? Number.NaN) / (mils * circularMil)).toBeCloseTo(1, 3)
})

test('ASTM B258 fixes two gauges: 36 is 0.005 in and 4/0 is 0.46 in', () => {
  expect(awgDiameter(36)).toBeCloseTo(0.005 * 0.0254, 15)
  expect(awgDiameter(-3)).toBeCloseTo(0.46 * 0.0254, 12)
})

test('an area goes back to its gauge', () => {
  expect(awgOfArea(awgArea(12))).toBeCloseTo(12, 10)
})

test.each(['5/8', 'x', '', '123'])('`%s` is no gauge', written => {
  expect(gaugeNumber(written)).toBeNull()
})
