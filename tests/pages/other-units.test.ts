import { unit } from 'mathjs'
import { expect, test } from 'vitest'
import { inOtherUnits } from '../../src/pages/other-units.ts'
import { plainReading } from '../../src/quantities/quantity.ts'
import { readOneQuantity } from '../../src/quantities/read-one-quantity.ts'

const other = (text: string): string | null => {
  const quantity = readOneQuantity(text, { ...plainReading, gallon: 'imperial' })
  return quantity === null ? 'not read' : inOtherUnits(quantity)
}

// Factors: NIST SP 811 (2008), appendix B.8. The digits are those that the written rounding warrants (JCGM 100:2008 7.2.6).
test.each([
  ['860 mm', '33.858 in'],
  ['860 mm ± 2 mm', '33.858 in'],
  ['7 3/8 in', '187.33 mm'],
  ['64 L', '14.08 imp gal'],
  ['25 lb ft', '33.90 N·m'],
  ['2.5 bar', '36.26 psi'],
  ['-40 °C', '−40 °F'],
  ['12 to 13 kg', '26.5 lb to 28.7 lb'],
  ['92 dB', null],
  ['M8 × 1.25', null],
])('%s is %s elsewhere', (written, expected) => {
  const found = other(written)?.replaceAll('\u202f', ' ') ?? null
  if (expected === null) expect(found).toBeNull()
  else expect(numbersOf(found ?? '')).toEqual(numbersOf(expected).map(number => expect.closeTo(number, 1)))
  if (expected !== null) expect(found?.replace(/[-−\d.]+/g, '')).toBe(expected.replace(/[-−\d.]+/g, ''))
})

test('each conversion agrees with mathjs', () => {
  const pairs = [
    ['860 mm', 'mm', 'inch'],
    ['11.5 kg', 'kg', 'lbm'],
    ['2.5 bar', 'bar', 'psi'],
    ['48 mph', 'mile/h', 'km/h'],
  ] as const
  for (const [written, from, to] of pairs) {
    const expected = unit(Number.parseFloat(written), from).toNumber(to)
    expect(Math.abs((numbersOf(other(written) ?? '')[0] ?? 0) / expected - 1)).toBeLessThan(2e-3)
  }
})

const numbersOf = (text: string): number[] => (text.replaceAll('−', '-').match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number)
