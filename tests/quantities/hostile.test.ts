import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readOneQuantity } from '../../src/quantities/read-one-quantity.ts'
import { readQuantities } from '../../src/quantities/read-quantities.ts'
import { settings } from './describe-readings.ts'

const seed = 20260307
const pieces = fc.constantFrom(
  ...'0 1 12 2350 1e999 0/0 3/8 ⅝ ½ 7-3/8 1,260 12,5 12.5 ± +/- + - − / x × by to or and between from about ~ ≥ < min max £ € $ " \' ” ° % mm in ft inch mm² Nm lb kg h min AWG M8 UNF BSP gal mpg mil pounds F C V A K 5K \u200b \u200f \u202e \ufeff . , ; : ( ) half quarter a an one two twenty hundred eighths point minus raised each the \n   \ud83d\ude00 é'.split(
    ' ',
  ),
  ' ',
  ' ',
  ' ',
)
const noise = fc.array(pieces, { maxLength: 24 }).map(parts => parts.join(''))

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : []
}

test.each(Object.entries(settings))(
  'any words, with %s settings, give finite numbers and texts at their places',
  (_name, options) => {
    fc.assert(
      fc.property(fc.oneof(noise, fc.string({ unit: 'binary', maxLength: 40 })), text => {
        const { readings, doubts } = readQuantities(text, options)
        for (const { quantity, start, end } of readings) expect(text.slice(start, end)).toBe(quantity.text)
        for (const doubt of doubts) expect(text.slice(doubt.start, doubt.end)).toBe(doubt.text)
        expect(numbersIn([readings, doubts]).every(number => Number.isFinite(number))).toBe(true)
        for (const { quantity } of readings) expect((quantity.siLow ?? 0) <= (quantity.siHigh ?? Infinity)).toBe(true)
        readOneQuantity(text, options)
      }),
      { seed, numRuns: 3000 },
    )
  },
)

test('quantities come in the order of the text and do not overlap', () => {
  fc.assert(
    fc.property(noise, text => {
      const { readings } = readQuantities(text, settings.plain)
      for (const [at, reading] of readings.entries())
        expect(reading.start).toBeGreaterThanOrEqual(readings[at - 1]?.end ?? 0)
    }),
    { seed, numRuns: 3000 },
  )
})

const nothing = ['1e999 mm', '0/0 in', '3/0 in', '± mm', '±', '12 ± ± mm x', `${'9'.repeat(60)} mm`, '\u200b\u200f', '']

test.each(nothing)('`%s` is no quantity and no accident', text => {
  expect(readQuantities(text, settings.plain).readings.filter(({ quantity }) => quantity.text !== '')).toEqual([])
})

const floods: readonly (readonly [string, string])[] = [
  ['digits', '1'],
  ['fractions', '1/2, '],
  ['fractions with a unit', '1/2 in '],
  ['fraction signs', '½'],
  ['thousands', '1,111'],
  ['groups', '111 '],
  ['dots', '1.'],
  ['dashes', '1-'],
  ['inch marks', '9" '],
  ['products', '3 x '],
  ['ranges', '10 to '],
  ['number words', 'one and '],
  ['hyphens', 'twenty-'],
  ['articles', 'a '],
  ['halves', 'half a '],
  ['plus or minus', '1 ± '],
  ['minus', 'minus '],
  ['threads', 'M8 x '],
  ['money', '£1 to £2 or '],
  ['addresses', 'http://'],
  ['about', 'about '],
  ['letters', 'a'],
  ['capitals of a British thread', 'B'],
  ['pipe threads', 'G 1/4 '],
  ['hanging hyphens', '3-, '],
  ['tolerances in brackets', '(1 ± 1) '],
  ['shortened units', '3 in. by '],
  ['thousands of miles', '3 k '],
  ['feet with hyphens', "5'-"],
  ['commas behind units', '3 mm,'],
]

describe('the time taken grows with the length and no faster', () => {
  test.each(floods)('a flood of %s', (_name, unit) => {
    const time = (length: number): number => {
      const text = unit.repeat(Math.ceil(length / unit.length))
      const start = performance.now()
      readQuantities(text, settings.plain)
      return performance.now() - start
    }
    const best = (length: number): number => Math.min(...Array.from({ length: 4 }, () => time(length)))
    time(20_000)
    const short = best(25_000)
    // Eight times the length: a reader that looks back over all of it would take sixty-four times as long.
    expect(best(200_000)).toBeLessThan(32 * Math.max(short, 4))
  })
})
