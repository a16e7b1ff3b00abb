import { describe, expect, test } from 'vitest'
import { quantitiesOverlap } from '../../src/quantities/quantities-overlap.ts'
import type { Quantity } from '../../src/quantities/quantity.ts'
import { readBareNumber } from '../../src/quantities/read-bare-number.ts'
import { readOneQuantity } from '../../src/quantities/read-one-quantity.ts'
import { settings } from './describe-readings.ts'

const read = (text: string) => readOneQuantity(text, settings.plain)

describe('a value that is one quantity', () => {
  test.each([
    '860 mm ± 2 mm', 'about 64 L', '≥ 200 mm', '612 mm to 618 mm', 'from 612 to 618 mm', '£184', '1980 mm', 'AWG 14', '4/0 AWG',
    '6.5 h', '12 V', ' 11.5 kg ', 'M8 × 1.25', '7 3/8 in', 'at least 200 mm', '5 %', '-5 °C', '6 ft 2 in', '2 mΩ', '12 in.', '85 quid',
  ])('`%s` is one', (text) => {
    expect(read(text)?.text).toBe(text.trim().replace(/^from |\.$/g, ''))
  }) // biome-ignore format: a table reads better in rows

  test.each([
    '', 'sheet-metal shop', '860 mm and 380 mm', '860 x 380 x 300 mm', '60/55W', '3 gal', '12,5 mm', '4.30', '2.5 mm² green/purple',
    'box 860 mm', '860 mm long', '15 A blade fuse', '2 in the box', 'M8 x 20', '45 and 120 mm',
  ])('`%s` is not', (text) => {
    expect(read(text)).toBeNull()
  }) // biome-ignore format: a table reads better in rows

  test('everything known of it is there', () => {
    const expected: Quantity = {
      text: '7 3/8 in ± 1/16',
      number: 7.375,
      low: null,
      high: null,
      unit: 'in',
      dimension: 'length',
      si: 0.187325,
      siLow: null,
      siHigh: null,
      plus: 0.0625,
      minus: 0.0625,
      approximate: false,
      bound: null,
      rounding: 0.03125,
      exact: { number: '59/8', low: null, high: null },
      numberText: '7 3/8',
      thread: null,
      group: null,
      whole: null,
    }
    expect(read('7 3/8 in ± 1/16')).toEqual(expected)
  })

  test('a bound keeps its end, exactly', () => {
    expect(read('at least 1/3 m')).toMatchObject({
      number: 1 / 3,
      low: 1 / 3,
      siLow: 1 / 3,
      high: null,
      exact: { number: '1/3', low: '1/3', high: null },
    })
  })
})

describe('a number without a unit', () => {
  test.each([
    ['4.30', 4.3, '43/10'],
    ['-2', -2, '-2'],
    ['1/2', 0.5, '1/2'],
    ['0.446', 0.446, '223/500'],
    ['12,400', 12400, '12400'],
    ['three', 3, '3'],
  ])('%s keeps its digits', (text, number, exact) => {
    expect(readBareNumber(text)).toMatchObject({
      number,
      numberText: text,
      unit: '1',
      dimension: 'ratio',
      exact: { number: exact },
    })
  })

  test.each(['4.30 mm', '', 'a', '1.2.3', '2/0', '12,5', '3:1'])('`%s` is none', text => {
    expect(readBareNumber(text)).toBeNull()
  })
})

describe('equal as written, in any unit', () => {
  const overlap = (one: string, other: string): boolean | null => {
    const [a, b] = [read(one), read(other)]
    return a === null || b === null ? null : quantitiesOverlap(a, b)
  }

  test.each([
    ['33.86 in', '860 mm'],
    ['860 mm', '86 cm'],
    ['10 to 12 mm', '11 mm'],
    ['12 AWG', '12 AWG'],
    ['25 lb ft', '34 Nm'],
    ['176 °F', '80 °C'],
    ['7 3/8 in', '187.3 mm'],
    ['2/0 AWG', '67.43 mm²'],
  ])('%s is %s', (one, other) => {
    expect(overlap(one, other)).toBe(true)
  })

  test.each([
    ['33.7 in', '860 mm'],
    ['860 mm', '861 mm'],
    ['860 mm', '860 L'],
    ['10 to 12 mm', '14 mm'],
    ['12 AWG', '14 AWG'],
    ['£85', '£85'],
  ])('%s is not %s', (one, other) => {
    expect(overlap(one, other)).toBe(false)
  })
})
