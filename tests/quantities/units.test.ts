import ucum from '@lhncbc/ucum-lhc'
import { unit as mathUnit } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { convertExactly, exactSi, fromSi, toSi } from '../../src/quantities/convert.ts'
import { combineVectors, dimensionVector, isSameVector, powerVector } from '../../src/quantities/dimensions.ts'
import { Rational } from '../../src/quantities/rational.ts'
import { findUnit, unitOf, units } from '../../src/quantities/units.ts'

const ucumUnits = ucum.UcumLhcUtils.getInstance()
const one = (id: string, value = '1') => toSi(Rational.parse(value) ?? Rational.zero, unitOf(id))

/** Printed factors to SI: NIST SP 811 (2008), appendix B.8, seven digits as transcribed in the CRAN package NISTunits 1.0.1. */
const printed: readonly (readonly [string, number, number])[] = [
  ['gal_us', 3.785412e-3, 5e-10],
  ['lbf', 4.448222, 5e-7],
  ['psi', 6894.757, 5e-4],
  ['hp', 745.6999, 5e-5],
  ['lbf_ft', 1.355818, 5e-7],
  ['lbf_in', 0.1129848, 5e-8],
  ['PS', 735.4988, 5e-5],
  ['mph', 0.44704, 1e-15],
  ['gal_us_min', 6.30902e-5, 5e-11],
]

/** Exact definitions: UCUM 2.2 essence file and QUDT. */
const defined: readonly (readonly [string, string])[] = [
  ['in', '127/5000'],
  ['ft', '381/1250'],
  ['mi', '201168/125'],
  ['gal_imp', '454609/100000000'],
  ['gal_us', '473176473/125000000000'],
  ['lb', '45359237/100000000'],
  ['bar', '100000'],
  ['L_100km', '1/100000000'],
]

describe('factors to SI', () => {
  test.each(printed)('%s is %d as NIST SP 811 prints it', (id, factor, tolerance) => {
    expect(Math.abs((one(id) ?? 0) - factor)).toBeLessThanOrEqual(tolerance)
  })

  test.each(defined)('%s is %s exactly', (id, factor) => {
    expect(exactSi(Rational.one, unitOf(id))?.toString()).toBe(factor)
  })

  const withCode = units.filter(({ ucum: code, scale }) => code !== null && (scale === 'factor' || scale === 'angle'))
  const bases: Record<string, string> = {
    length: 'm', area: 'm2', volume: 'm3', mass: 'kg', density: 'kg/m3', force: 'N', pressure: 'Pa', torque: 'N.m', energy: 'J',
    power: 'W', time: 's', speed: 'm/s', acceleration: 'm/s2', frequency: '/s', angle: 'rad', temperature: 'K', voltage: 'V',
    current: 'A', charge: 'C', resistance: 'Ohm', 'resistance-per-length': 'Ohm/m', capacitance: 'F', inductance: 'H',
    flow: 'm3/s', consumption: 'm3/m', 'spring-rate': 'N/m', 'let-through': 'A2.s', 'count-per-length': '/m', 'luminous-flux': 'lm',
    'luminous-intensity': 'cd', illuminance: 'lx', ratio: '1',
  } // biome-ignore format: a table reads better in rows

  // @lhncbc/ucum-lhc is the oracle; its conventional mercury is rounded to six digits, so those two units are held to 1e-5.
  test.each(withCode.filter(({ dimension }) => bases[dimension] !== undefined))(
    '$id agrees with UCUM $ucum',
    ({ id, ucum: code, dimension }) => {
      const { status, toVal } = ucumUnits.convertUnitTo(code ?? '', 1, bases[dimension] ?? '')
      expect(status).toBe('succeeded')
      const tolerance = id.endsWith('Hg') ? 1e-5 : 1e-12
      expect(Math.abs((toVal ?? 0) / (one(id) ?? 1) - 1)).toBeLessThan(tolerance)
    },
  )

  test.each(units.filter(({ ucum: code }) => code !== null))(
    '$id has a UCUM code that UCUM knows: $ucum',
    ({ ucum: code }) => {
      expect(ucumUnits.validateUnitString(code ?? '').status).toBe('valid')
    },
  )

  // mathjs is the second oracle, with its own table; psi there is good to 1e-9 only.
  test.each([
    ['in', 'inch', 'm'], ['yd', 'yard', 'm'], ['oz', 'oz', 'kg'], ['lbf', 'lbf', 'N'], ['psi', 'psi', 'Pa'], ['kWh', 'kWh', 'J'],
    ['mph', 'mi/h', 'm/s'], ['L_h', 'L/h', 'm^3/s'], ['deg', 'deg', 'rad'], ['ft2', 'sqft', 'm^2'], ['kOhm', 'kohm', 'ohm'],
  ])('%s agrees with mathjs', (id, theirs, si) => {
    expect((one(id) ?? 0) / mathUnit(1, theirs).toNumber(si)).toBeCloseTo(1, 8)
  }) // biome-ignore format: a table reads better in rows
})

describe('temperatures have an offset', () => {
  // (t + 459.67)/1.8, NIST SP 811 B.8; UCUM agrees.
  test.each([
    ['degF', '0', 255.372222, 1e-6],
    ['degF', '194', 363.15, 1e-9],
    ['degC', '-3', 270.15, 1e-9],
    ['degC', '105', 378.15, 1e-9],
  ])('%s %s is %d K', (id, value, kelvin, tolerance) => {
    expect(Math.abs((one(id, value) ?? 0) - kelvin)).toBeLessThanOrEqual(tolerance)
    const code = unitOf(id).ucum ?? ''
    expect(Math.abs((ucumUnits.convertUnitTo(code, Number(value), 'K').toVal ?? 0) - kelvin)).toBeLessThanOrEqual(
      tolerance,
    )
  })

  test('194 °F is exactly 90 °C', () => {
    expect(convertExactly(Rational.of(194), unitOf('degF'), unitOf('degC'))?.toString()).toBe('90')
  })
})

describe('what is used on the way', () => {
  test('30 mpg by the imperial gallon is 9.416 L/100 km', () => {
    // 100 km / (30 × 1.609344 km) × 4.54609 L, by hand
    expect(convertExactly(Rational.of(30), unitOf('mpg_imp'), unitOf('L_100km'))?.toNumber()).toBeCloseTo(9.41603, 5)
  })

  test('0 mpg is no consumption', () => {
    expect(toSi(Rational.zero, unitOf('mpg_imp'))).toBeNull()
    expect(fromSi(0, unitOf('mpg_us'))).toBeNull()
  })
})

describe('conversions', () => {
  const straight = units.filter(({ scale }) => scale !== 'none')
  test.each(straight)('$id comes back from SI as it went', there => {
    const si = toSi(Rational.parse('12.5') ?? Rational.zero, there)
    expect((fromSi(si ?? 0, there) ?? 0) / 12.5).toBeCloseTo(1, 10)
  })

  test('7 3/8 in is exactly 187.325 mm, and is no number of litres', () => {
    const inches = Rational.of(59, 8)
    expect(convertExactly(inches, unitOf('in'), unitOf('mm'))?.toString()).toBe('7493/40')
    expect(convertExactly(inches, unitOf('in'), unitOf('L'))).toBeNull()
  })
})

describe('the unit table', () => {
  test('each identifier stands once', () => {
    expect(new Set(units.map(({ id }) => id)).size).toBe(units.length)
  })

  test('an unknown identifier is none, and a currency is one', () => {
    expect(findUnit('furlong')).toBeNull()
    expect(findUnit('money:GBP')?.dimension).toBe('money')
    expect(() => unitOf('furlong')).toThrow('Unexpected unit `furlong`, expected an identifier of the unit table')
  })

  test('dimensions multiply: force by length is torque, power over voltage is current', () => {
    expect(
      isSameVector(combineVectors(dimensionVector('force'), dimensionVector('length'), 1), dimensionVector('torque')),
    ).toBe(true)
    expect(
      isSameVector(
        combineVectors(dimensionVector('power'), dimensionVector('voltage'), -1),
        dimensionVector('current'),
      ),
    ).toBe(true)
    expect(isSameVector(powerVector(dimensionVector('length'), 3), dimensionVector('volume'))).toBe(true)
    expect(isSameVector(dimensionVector('length'), dimensionVector('mass'))).toBe(false)
  })
})
