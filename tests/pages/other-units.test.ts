import { unit } from 'mathjs'
import { expect, test } from 'vitest'
import { figureInOthers, inOtherUnits } from '../../src/pages/other-units.ts'
import { plainReading } from '../../src/quantities/quantity.ts'
import { readOneQuantity } from '../../src/quantities/read-one-quantity.ts'

const other = (text: string, gallon: 'imperial' | 'us' | null = null): string | null => {
  const quantity = readOneQuantity(text, { ...plainReading, gallon: 'imperial' })
  return quantity === null ? 'not read' : inOtherUnits(quantity, gallon)
}

// Factors: NIST SP 811 (2008), appendix B.8. The digits are those that the written rounding warrants (JCGM 100:2008 7.2.6).
test.each([
  ['860 mm', '33.858 in'],
  ['860 mm ± 2 mm', '33.858 in'],
  ['7 3/8 in', '187.33 mm'],
  ['64 L', '14.08 imp gal, 16.91 US gal'],
  ['16.9 US gal', '63.97 L'],
  ['140 MPa', '20 305 psi'],
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

// Factors: NIST SP 811 (2008), appendix B.8: 4.546 09 L and 3.785 412 L.
test.each([
  ['imperial', '14.08 imp gal', '3.3 imp gal/h'],
  ['us', '16.91 US gal', '3.963 US gal/h'],
  [null, '14.08 imp gal, 16.91 US gal', '3.3 imp gal/h, 3.963 US gal/h'],
] as const)('where the build says that a gallon is %s, 64 L are %s, and 15 L/h %s', (gallon, litres, hourly) => {
  const worked = figureInOthers({ value: 15, unit: 'L_h' }, gallon)
  expect([other('64 L', gallon), worked].map(text => text?.replaceAll('\u202f', ' '))).toEqual([litres, hourly])
})

test('the litre that stands beside a gallon stays, whichever gallon the build means', () => {
  expect([other('16.9 US gal', 'imperial'), other('16.9 US gal', 'us')]).toEqual([
    other('16.9 US gal'),
    other('16.9 US gal'),
  ])
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
