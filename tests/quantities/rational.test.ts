import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { Rational } from '../../src/quantities/rational.ts'

const whole = fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n })
const bottom = fc.bigInt({ min: 1n, max: 10n ** 9n })
const fraction = fc.tuple(whole, bottom)
const asText = ({ s, n, d }: Fraction): string => (d === 1n ? `${s * n}` : `${s * n}/${d}`)

// fraction.js 5 is the oracle: its fractions are exact bigints too.
const operations = [
  ['plus', (a: Rational, b: Rational) => a.plus(b), (a: Fraction, b: Fraction) => a.add(b)],
  ['minus', (a: Rational, b: Rational) => a.minus(b), (a: Fraction, b: Fraction) => a.sub(b)],
  ['times', (a: Rational, b: Rational) => a.times(b), (a: Fraction, b: Fraction) => a.mul(b)],
] as const

describe('rationals agree with fraction.js', () => {
  test.each(operations)('%s', (_name, ours, theirs) => {
    fc.assert(
      fc.property(fraction, fraction, ([a, b], [c, d]) => {
        expect(ours(Rational.of(a, b), Rational.of(c, d)).toString()).toBe(
          asText(theirs(new Fraction(a, b), new Fraction(c, d))),
        )
      }),
      { seed: 1 },
    )
  })

  test('over', () => {
    fc.assert(
      fc.property(fraction, fraction, ([a, b], [c, d]) => {
        fc.pre(c !== 0n)
        const quotient = new Fraction(a, b).div(new Fraction(c, d))
        expect(Rational.of(a, b).over(Rational.of(c, d)).toString()).toBe(asText(quotient))
      }),
      { seed: 2 },
    )
  })

  test('as a float and in order', () => {
    fc.assert(
      fc.property(fraction, fraction, ([a, b], [c, d]) => {
        expect(Rational.of(a, b).toNumber()).toBe(Number(a) / Number(b))
        expect(Math.sign(Rational.of(a, b).compare(Rational.of(c, d)))).toBe(
          new Fraction(a, b).compare(new Fraction(c, d)),
        )
      }),
      { seed: 3 },
    )
  })
})

test('7 3/8 in is exactly 187.325 mm', () => {
  const length = Rational.of(7).plus(Rational.of(3, 8)).times(Rational.of(254, 10))
  expect(length.toString()).toBe('7493/40')
  expect(length.toNumber()).toBe(187.325)
})

test('a float goes to a rational and back without loss', () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), value => {
      expect(Rational.fromNumber(value).toNumber()).toBe(value === 0 ? 0 : value)
    }),
    { seed: 4, numRuns: 500 },
  )
})

test('very large and very small rationals become the nearest float', () => {
  expect(Rational.of(10n ** 300n, 3n).toNumber()).toBe(10 ** 300 / 3)
  expect(Rational.of(1n, 3n * 10n ** 300n).toNumber()).toBeCloseTo(3.3333333333333334e-301, 310)
})

test.each([
  ['59/8', '59/8'],
  ['-12.5', '-25/2'],
  ['7', '7'],
  ['4.30', '43/10'],
])('%s is read as %s', (text, expected) => {
  expect(Rational.parse(text)?.toString()).toBe(expected)
})

test.each(['1/0', '', 'one', '1e3', '1.2.3', '--1'])('`%s` is no rational', text => {
  expect(Rational.parse(text)).toBeNull()
})

test.each([
  ['5/2', 3n],
  ['-5/2', -3n],
  ['7/3', 2n],
])('%s rounds half away from zero to %s', (text, expected) => {
  expect(Rational.parse(text)?.roundHalfUp()).toBe(expected)
})
