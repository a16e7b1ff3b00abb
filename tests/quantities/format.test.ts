import { describe, expect, test } from 'vitest'
import {
  formatNumber,
  formatQuantity,
  formatWarranted,
  formatWithUncertainty,
  unitSymbol,
} from '../../src/quantities/format.ts'
import { Rational } from '../../src/quantities/rational.ts'
import { placesFor, roundDecimal } from '../../src/quantities/round-decimal.ts'

const plain = (text: string): string => text.replaceAll('\u202f', '_')

describe('numbers are printed', () => {
  test.each([
    [860, '860'],
    [0.1 + 0.2, '0.3'],
    [1260, '1260'],
    [12350, '12_350'],
    [1234567.5, '1_234_567.5'],
    [-3, '−3'],
    [1e-7, '0.0000001'],
    [0, '0'],
    [1e15, '1_000_000_000_000_000'],
  ])('%d as %s', (value, expected) => {
    expect(plain(formatNumber(value))).toBe(expected)
  })

  test('what is not finite is a fault of ours', () => {
    expect(() => formatNumber(Number.NaN)).toThrow('Unexpected number NaN, expected a finite one to print')
  })
})

describe('a narrow no-break space stands before the unit', () => {
  test.each([
    [860, 'mm', '860_mm'],
    [45, 'deg', '45°'],
    [80, 'degC', '80_°C'],
    [5, 'percent', '5_%'],
    [25, 'lbf_ft', '25_lbf·ft'],
    [0.7, '1', '0.7'],
    [85, 'money:GBP', '£85'],
    [-5, 'money:SEK', '−5 SEK'],
    [2.5, 'mm2', '2.5_mm²'],
  ])('%d %s as %s', (value, unit, expected) => {
    expect(plain(formatQuantity(value, unit))).toBe(expected)
  })

  test('symbols are those of the table', () => {
    expect([unitSymbol('Ohm_km'), unitSymbol('L_100km'), unitSymbol('gn')]).toEqual(['Ω/km', 'L/100 km', 'gₙ'])
  })
})

// Two significant digits of the uncertainty at most, the value rounded alike: JCGM 100:2008, 7.2.6.
describe('digits that the uncertainty warrants', () => {
  test.each([
    [69.1234, 1.2345, 'L', '69.1 ± 1.2_L'],
    [860.04, 2, 'mm', '860.0 ± 2.0_mm'],
    [0.98765, 0.0996, 'V', '0.99 ± 0.10_V'],
    [12345.6, 316, 'N', '12_350 ± 320_N'],
    [-0.001, 0.5, 'mm', '0.00 ± 0.50_mm'],
    [100.02147, 0.00035, 'g', '100.02147 ± 0.00035_g'],
    [5, 0, 'mm', '5_mm'],
  ])('%d and U %d in %s print as %s', (value, uncertainty, unit, expected) => {
    expect(plain(formatWithUncertainty(value, uncertainty, unit))).toBe(expected)
  })

  test('the value alone shows no more digits than U warrants', () => {
    expect(plain(formatWarranted(69.1234, 1.2345, 'L'))).toBe('69.1_L')
    expect(plain(formatWarranted(1234.5, 160, 'N'))).toBe('1230_N')
  })
})

// NIST SP 811 (2008), B.7.1, rules 1 to 3 and their examples (from memory); half to even on the decimal digits.
test.each([
  ['6.9749515', 3, '6.97'],
  ['6.9749515', 4, '6.975'],
  ['6.9749515', 7, '6.974952'],
  ['6.9749505', 7, '6.974950'],
])('%s to %d digits is %s', (value, digits, expected) => {
  const exact = Rational.parse(value) ?? Rational.zero
  expect(roundDecimal(exact, placesFor(exact, digits) ?? 0)).toBe(expected)
})
