import Big from 'big.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formatMoney } from '../../src/quantities/format-money.ts'
import { convertMoney, roundMoney, timesMoney } from '../../src/quantities/money.ts'
import { readMoney } from '../../src/quantities/read-money.ts'
import { settings } from './describe-readings.ts'

const gbp = (amount: string) => ({ amount, currency: 'GBP' })

describe('money is read', () => {
  test.each([
    ['£184', '184', 'GBP'],
    ['£31.40', '157/5', 'GBP'],
    ['184 GBP', '184', 'GBP'],
    ['GBP 184', '184', 'GBP'],
    ['€12.50', '25/2', 'EUR'],
    ['$9', '9', 'USD'],
    ['85 quid', '85', 'GBP'],
    ['£1,250.50', '2501/2', 'GBP'],
    ['1200 JPY', '1200', 'JPY'],
    ['3.255 KWD', '651/200', 'KWD'],
    ['CAD 85', '85', 'CAD'],
    ['-£5', '-5', 'GBP'],
    ['about £40', '40', 'GBP'],
  ])('%s is %s %s', (text, amount, currency) => {
    expect(readMoney(text, settings.plain)).toEqual({ amount, currency })
  })

  test.each(['184', '£5 to £6', 'at least £5', '5 mm', 'free', '', '5 XYZ', '25 pounds', '£12,50'])(
    '`%s` is no money',
    text => {
      expect(readMoney(text, settings.plain)).toBeNull()
    },
  )

  test('€12,50 is money under decimal: comma', () => {
    expect(readMoney('€12,50', settings.comma)).toEqual({ amount: '25/2', currency: 'EUR' })
  })
})

describe('money is exact', () => {
  // big.js 7 is the oracle: exact decimals; mode 1 rounds half away from zero.
  const cents = fc.integer({ min: -10_000_000, max: 10_000_000 }).map(value => new Big(value).div(100))

  test('multiples and conversions round as big.js does', () => {
    fc.assert(
      fc.property(
        cents,
        cents,
        fc.integer({ min: 0, max: 500 }),
        fc.integer({ min: 1, max: 99_999 }),
        (a, b, count, rate) => {
          const exact = a.plus(b).times(count).times(new Big(rate).div(10_000))
          const sum = timesMoney(gbp(a.plus(b).toFixed()), `${count}`)
          const ours = roundMoney(convertMoney(sum, new Big(rate).div(10_000).toFixed(), 'EUR'))
          const digits = formatMoney(ours).replace(/[€,]/g, '').replace('−', '-')
          expect(new Big(digits).eq(exact.round(2, 1))).toBe(true)
        },
      ),
      { seed: 5, numRuns: 500 },
    )
  })

  test('1.255 three times is 3.77 and not 3.78: rounding comes last', () => {
    expect(formatMoney(timesMoney(gbp('1.255'), '3'))).toBe('£3.77')
    expect(formatMoney(gbp('1.255'))).toBe('£1.26')
  })

  test('a rate is exact: 3.10 EUR at 0.86 is 2.666 GBP, then £2.67', () => {
    const converted = convertMoney({ amount: '3.10', currency: 'EUR' }, '0.86', 'GBP')
    expect(converted).toEqual(gbp('1333/500'))
    expect(roundMoney(converted)).toEqual(gbp('267/100'))
  })
})

// Digits behind the mark by ISO 4217: yen none, dinars of Kuwait three.
test.each([
  [{ amount: '1234.5', currency: 'JPY' }, '1,235 JPY'],
  [{ amount: '3.2555', currency: 'KWD' }, '3.256 KWD'],
  [{ amount: '-1234567/100', currency: 'GBP' }, '−£12,345.67'],
  [{ amount: '0.005', currency: 'EUR' }, '€0.01'],
  [{ amount: '184', currency: 'GBP' }, '£184.00'],
])('%o prints as %s', (money, expected) => {
  expect(formatMoney(money)).toBe(expected)
})
