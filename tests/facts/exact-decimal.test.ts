import { Big } from 'big.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { asMoney, exactDecimal, positiveDecimal } from '../../src/facts/exact-decimal.ts'

describe('exact decimals', () => {
  test('a rational over a power of ten comes out as big.js writes it', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: -(10n ** 15n), max: 10n ** 15n }),
        fc.integer({ min: 0, max: 8 }),
        (over, places) => {
          const expected = new Big(over.toString()).div(new Big(10).pow(places))
          expect(new Big(exactDecimal(`${over}/${10n ** BigInt(places)}`) ?? 'none').eq(expected)).toBe(true)
        },
      ),
    )
  })

  test.each([
    ['184', '184'],
    ['59/8', '7.375'],
    ['-1/20', '-0.05'],
    ['1/3', null],
    ['1/0', null],
    ['pi', null],
  ])('%s → %s', (rational, decimal) => {
    expect(exactDecimal(rational)).toBe(decimal)
  })

  test.each([
    ['184', '184.00'],
    ['12.5', '12.50'],
    ['1.2345', '1.2345'],
  ])('%s of money is written %s', (decimal, money) => {
    expect(asMoney(decimal)).toBe(money)
  })

  test.each([
    ['2', 'point', '2'],
    ['2.50', 'point', '2.50'],
    ['2,5', 'comma', '2.5'],
    ['0', 'point', null],
    ['-1', 'point', null],
    ['2,5', 'point', null],
    ['two', 'point', null],
  ] as const)('`%s` with a decimal %s → %s', (text, mark, decimal) => {
    expect(positiveDecimal(text, mark)).toBe(decimal)
  })
})
