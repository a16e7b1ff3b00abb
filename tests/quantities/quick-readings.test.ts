import fc from 'fast-check'
import { expect, test } from 'vitest'
import { nextAnchor } from '../../src/quantities/anchor.ts'
import { Rational } from '../../src/quantities/rational.ts'

const seed = 20260307

// The same rule told as one pattern, which the scanner must agree with; JavaScript's own regular expressions are the oracle.
const words =
  'half quarter zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fourty fifty sixty seventy eighty ninety nought'
const units =
  'inch foot yard metre millimetre litre kilo hour half third quarter fifth sixth eighth tenth twelfth sixteenth thirty sixty hundredth thousandth hundred thousand million'
const codes = 'minus point third eighth tenth sixteenth awg swg gbp eur usd chf sek nok dkk aud nzd cad jpy'
const either = (list: string) => list.replaceAll(' ', '|')
const pattern = new RegExp(
  `[0-9０-９¼-¾⅐-⅞£€$]|://|\\bwww\\.|\\b(?:${either(words)})\\b|\\ban?\\s(?=(?:${either(units)})|[a-z]{1,12} and )|\\b(?:${either(codes)})(?=\\s)`,
  'gi',
)
const pieces = fc.constantFrom(
  ...`${words} ${units} ${codes} a an A AN One TWO Www. www www. :// : / - _ $ £ ½ ⅞ Ⅷ 7 ３ é ſ K µ and x on th seve fourt`.split(
    ' ',
  ),
  ...[' ', ' ', ' ', '\n', '\t', '\u00a0', '\u0001'],
)
const text = fc.oneof(
  fc.array(pieces, { maxLength: 12 }).map(parts => parts.join('')),
  fc.string({ unit: 'binary', maxLength: 30 }),
)

function expected(source: string, from: number): number {
  pattern.lastIndex = from
  return pattern.exec(source)?.index ?? source.length
}

test('the scanner finds the places that the pattern of the same rule finds, from every place on', () => {
  fc.assert(
    fc.property(text, source => {
      const places = Array.from({ length: source.length + 1 }, (_, from) => from)
      expect(places.map(from => nextAnchor(source, from))).toEqual(places.map(from => expected(source, from)))
    }),
    { seed, numRuns: 4000 },
  )
})

const part = fc.oneof(
  fc.integer({ min: -5000, max: 5000 }).map(BigInt),
  fc.bigInt({ min: -(10n ** 40n), max: 10n ** 40n }),
)
const below = fc.oneof(fc.integer({ min: 1, max: 5000 }).map(BigInt), fc.bigInt({ min: 1n, max: 10n ** 40n }))
const rational = fc.tuple(part, below).map(([top, bottom]) => Rational.of(top, bottom))

test('a product goes straight to the float that the reduced product gives, at sizes small and large', () => {
  fc.assert(
    fc.property(rational, rational, (one, two) => {
      expect(one.productAsNumber(two)).toBe(one.times(two).toNumber())
    }),
    { seed, numRuns: 4000 },
  )
})

test('a sum and a product are the same fractions that bigints alone give', () => {
  fc.assert(
    fc.property(rational, rational, (one, two) => {
      const [a, b, c, d] = [one.top, one.bottom, two.top, two.bottom]
      expect(`${one.plus(two)}`).toBe(`${Rational.of(a * d + c * b, b * d)}`)
      expect(`${one.times(two)}`).toBe(`${Rational.of(a * c, b * d)}`)
      expect(Math.sign(one.compare(two))).toBe(a * d < c * b ? -1 : a * d > c * b ? 1 : 0)
    }),
    { seed, numRuns: 4000 },
  )
})
