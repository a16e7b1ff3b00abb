import ucum from '@lhncbc/ucum-lhc'
import { describe, expect, test } from 'vitest'
import { convertExactly, fromSi, toSi } from '../../src/quantities/convert.ts'
import { propagate, type UncertainInput } from '../../src/quantities/propagate.ts'
import { Rational } from '../../src/quantities/rational.ts'
import { tradeCode } from '../../src/quantities/trade-codes.ts'
import { unitOf } from '../../src/quantities/units.ts'
import { off, shareOff } from './put.ts'

const ofDecimal = (text: string): Rational => Rational.parse(text) ?? Rational.zero
const si = (value: string, unit: string): number => toSi(ofDecimal(value), unitOf(unit)) ?? Number.NaN
const inUnit = (value: string, from: string, to: string): number => fromSi(si(value, from), unitOf(to)) ?? Number.NaN

describe('units, exactly as they are defined', () => {
  test.each([
    ['UCUM essence file 2.2', 'in', '25.4', 'mm'],
    ['UCUM essence file 2.2', 'ft', '0.3048', 'm'],
    ['UCUM essence file 2.2', 'mi', '1609.344', 'm'],
    ['UCUM essence file 2.2', 'gal_us', '3.785411784', 'L'],
    ['UCUM essence file 2.2', 'lb', '0.45359237', 'kg'],
    ['UCUM essence file 2.2', 'lbf', '4.4482216152605', 'N'],
    ['UCUM essence file 2.2', 'bar', '100000', 'Pa'],
    ['NIST SP 811, B.8', 'mph', '1.609344', 'km_h'],
  ])('%s: 1 %s is %s %s', (_, from, expected, to) => {
    const found = convertExactly(Rational.one, unitOf(from), unitOf(to))
    expect(found?.minus(ofDecimal(expected)).isZero()).toBe(true)
  })
})

describe('units, as rounded in print', () => {
  test.each([
    ['NIST SP 811, B.8', '1', 'gal_us', 'L', 3.785412, 5e-7],
    ['NIST SP 811, B.8', '1', 'lbf', 'N', 4.448222, 5e-7],
    ['QUDT', '1', 'psi', 'Pa', 6894.757293168361, 6.9e-9],
    ['NIST SP 811, B.8', '1', 'psi', 'Pa', 6894.757, 5e-4],
    ['NIST SP 811, B.8', '1', 'hp', 'W', 745.6999, 5e-5],
    ['NIST SP 811, B.8', '1', 'lbf_ft', 'Nm', 1.355818, 5e-7],
    ['NIST SP 811, B.8', '0', 'degF', 'K', 255.372222, 1e-6],
    ['NIST SP 811, B.8', '194', 'degF', 'degC', 90, 1e-9],
  ])('%s: %s %s in %s is %d', (_, value, from, to, expected, tolerance) => {
    expect(off(inUnit(value, from, to), expected)).toBeLessThanOrEqual(tolerance)
  })

  test('NIST SP 811, B.8: a horsepower of 550 ft·lbf/s is neither the metric one, 735.4988 W, nor the electric one, 746 W', () => {
    expect(off(inUnit('1', 'PS', 'W'), 735.4988)).toBeLessThanOrEqual(5e-5)
    expect([off(inUnit('1', 'hp', 'W'), 735.4988) > 10, off(inUnit('1', 'hp', 'W'), 746) > 0.2]).toEqual([true, true])
  })
})

test('a US gallon is no imperial gallon: 231 in³ beside 4.546 09 L, a fifth apart (UCUM essence file 2.2)', () => {
  expect(inUnit('1', 'gal_imp', 'L')).toBeCloseTo(4.54609, 12)
  expect(inUnit('1', 'gal_us', 'in3')).toBeCloseTo(231, 9)
  expect(inUnit('1', 'gal_imp', 'gal_us')).toBeCloseTo(1.20095, 5)
})

test('49 CFR 393.67 prints 94.75 L for 25 US gallons and 75.8 L/min for 20 a minute; exactly they are 94.635 L and 75.708 L/min', () => {
  const found = [inUnit('25', 'gal_us', 'L'), inUnit('20', 'gal_us_min', 'L_min')]
  expect(found).toEqual([expect.closeTo(94.6352946, 9), expect.closeTo(75.70823568, 9)])
  expect([off(found[0] ?? 0, 94.75) > 0.1, off(found[1] ?? 0, 75.8) > 0.09]).toEqual([true, true])
})

const ucumUnits = ucum.UcumLhcUtils.getInstance()

describe('codes of QUDT and UCUM', () => {
  test.each([
    ['mm', 'mm'],
    ['m', 'm'],
    ['kg', 'kg'],
    ['L', 'L'],
    ['gal_us', '[gal_us]'],
    ['psi', '[psi]'],
    ['bar', 'bar'],
    ['lb', '[lb_av]'],
    ['Nm', 'N.m'],
    ['km_h', 'km.h-1'],
    ['in', '[in_i]'],
    ['degC', 'Cel'],
  ])('%s is `%s`', (id, code) => {
    const { status, toVal } = ucumUnits.convertUnitTo(unitOf(id).ucum ?? '', 1, code)
    expect([status, toVal]).toEqual(['succeeded', expect.closeTo(1, 12)])
  })
})

const given = (name: string, value: number, standard: number): UncertainInput => {
  const half = standard * Math.sqrt(3)
  return { name, source: name, value, standard, low: value - half, high: value + half }
}
const sizeOf = (result: ReturnType<typeof propagate>, name: string, source: string): number =>
  Math.abs(result?.[name]?.contributions.find(one => one.source === source)?.size ?? Number.NaN)

describe('JCGM 100:2008, annex H.1, an end gauge, in nm', () => {
  const result = propagate(
    ({ ls = 0, d = 0, random = 0, systematic = 0, dAlpha = 0, theta = 0, alpha = 0, dTheta = 0 }) => ({
      length: ls + d + random + systematic - ls * (dAlpha * theta + alpha * dTheta),
    }),
    [
      given('ls', 50000623, 25),
      given('d', 215, 5.8),
      given('random', 0, 3.9),
      given('systematic', 0, 6.7),
      given('dAlpha', 0, 1e-6 / Math.sqrt(3)), // rectangular
      given('theta', -0.1, 0.41),
      given('alpha', 11.5e-6, 1.2e-6),
      given('dTheta', 0, 0.05 / Math.sqrt(3)), // rectangular
    ],
  )

  test('the length is 50 000 838 nm, u is 32 nm at first order', () => {
    expect(off(result?.length?.value ?? 0, 50000838)).toBeLessThanOrEqual(0.5)
    expect(off(result?.length?.standard ?? 0, 32)).toBeLessThanOrEqual(0.5)
  })

  test.each([
    ['dAlpha', 2.88679, 1e-4],
    ['dTheta', 16.599, 2e-3],
    ['ls', 25, 1e-3],
  ])('%s carries %d nm', (source, size, tolerance) => {
    expect(off(sizeOf(result, 'length', source), size)).toBeLessThanOrEqual(tolerance)
  })
})

test.each([
  ['r', 127.732, 0.07, 0.001, 0.0015],
  ['x', 219.85, 0.3, 0.005, 0.006],
])('JCGM 100:2008, annex H.2, correlated readings: %s is %d Ω, u %d Ω', (name, value, standard, near, tolerance) => {
  const found = propagate(
    ({ v = 0, i = 1, phi = 0 }) => ({ r: (v * Math.cos(phi)) / i, x: (v * Math.sin(phi)) / i }),
    [given('v', 4.999, 0.0032), given('i', 0.019661, 9.5e-6), given('phi', 1.04446, 0.00075)],
    [
      { sources: ['v', 'i'], coefficient: -0.36 },
      { sources: ['v', 'phi'], coefficient: 0.86 },
      { sources: ['i', 'phi'], coefficient: -0.65 },
    ],
  )?.[name]
  expect(off(found?.value ?? 0, value)).toBeLessThanOrEqual(near)
  expect(off(found?.standard ?? 0, standard)).toBeLessThanOrEqual(tolerance)
})

test('EURACHEM/CITAC QUAM:2012, A1: 1002.7 mg/L, u 0.835 mg/L from rectangular and triangular inputs', () => {
  const volume = Math.hypot(0.1 / Math.sqrt(6), 0.02, 0.084 / Math.sqrt(3))
  const found = propagate(
    ({ m = 0, p = 0, v = 1 }) => ({ c: (1000 * m * p) / v }),
    [given('m', 100.28, 0.05), given('p', 0.9999, 0.0001 / Math.sqrt(3)), given('v', 100, volume)],
  )?.c
  expect(off(found?.value ?? 0, 1002.7)).toBeLessThanOrEqual(0.05)
  expect(shareOff(found?.standard ?? 0, 0.835199)).toBeLessThanOrEqual(1.2e-5)
})

describe('QUDT unit vocabulary: codes by which other programs know the units', () => {
  // The torque of schema.org is described by units of force for a length; N·m is NU, and a foot pound-force is none of these.
  test.each([
    ['mm', 'mm', 'MMT'],
    ['m', 'm', 'MTR'],
    ['kg', 'kg', 'KGM'],
    ['L', 'L', 'LTR'],
    ['gal_us', '[gal_us]', 'GLL'],
    ['gal_imp', '[gal_br]', 'GLI'],
    ['psi', '[psi]', 'PS'],
    ['bar', 'bar', 'BAR'],
    ['lb', '[lb_av]', 'LBR'],
    ['Nm', 'N.m', 'NU'],
    ['km_h', 'km/h', 'KMH'],
    ['in', '[in_i]', 'INH'],
    ['degC', 'Cel', 'CEL'],
  ])('%s is %s in UCUM and %s in UN/ECE Recommendation 20', (unit, code, trade) => {
    const written = unitOf(unit).ucum
    expect(written === code || (unit === 'km_h' && written === 'km.h-1')).toBe(true)
    expect(tradeCode(unit)).toBe(trade)
  })

  test.each(['lbf_ft', 'furlong', 'constructor'])('%s has no code that was read', unit => {
    expect(tradeCode(unit)).toBeNull()
  })
})
