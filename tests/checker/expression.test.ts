import fc from 'fast-check'
import { evaluate as mathjs } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/checker/evaluate.ts'
import { namesIn, parseExpression, withoutNames } from '../../src/checker/expression.ts'
import { type NamePrinter, printExpression, printSymbol } from '../../src/checker/mathml.ts'

const names = { a: 2.5, b: 0.75, c: 12, r_20: 7.98e-3 }
const symbols: NamePrinter = { mode: 'symbols', name: printSymbol, size: () => null }
const text = (formula: string): string => printExpression(parseExpression(formula), symbols).text
const mathml = (formula: string): string => printExpression(parseExpression(formula), symbols).mathml

describe('an expression gives what mathjs gives', () => {
  test.each([
    'a + b * c',
    '(a + b) * c',
    'a - b - c',
    'a / b / c',
    'a / (b * c)',
    '-a^2',
    '(-a)^2',
    '2^3^2',
    'a * -b',
    'sqrt(a^2 + b^2)',
    'exp(-b) * sin(a)',
    'cos(a) + tan(b)',
    'asin(b) + acos(b) + atan(c)',
    'min(a, b, c) + max(a, b, c)',
    'abs(b - c)',
    'pi / 4 * a^2',
    'r_20 * (1 + 0.00393 * (70 - 20))',
    '1.5e-3 * c',
  ])('%s', formula => {
    expect(evaluate(parseExpression(formula), names)).toBeCloseTo(mathjs(formula, names), 12)
  })

  test('ln is the natural logarithm, which mathjs calls log', () => {
    expect(evaluate(parseExpression('226 * sqrt(ln((234.5 + 160) / (234.5 + 70)))'), {})).toBeCloseTo(
      mathjs('226 * sqrt(log((234.5 + 160) / (234.5 + 70)))'),
      12,
    )
  })

  test('any expression, as it is printed back, is the same to mathjs', () => {
    fc.assert(
      fc.property(anyExpression(), formula => {
        const printed = text(formula)
          .replace(/×/g, '*')
          .replace(/−/g, '-')
          .replace(/²/g, '^2')
          .replace(/³/g, '^3')
          .replace(/\u202f/g, '')
          .replace(/√/g, 'sqrt')
        const [ours, theirs] = [evaluate(parseExpression(formula), names), mathjs(printed, names)]
        expect(
          ours === theirs || Math.abs(Number(ours) - theirs) <= 1e-9 * Math.abs(theirs) || Number.isNaN(theirs),
        ).toBe(true)
      }),
      { seed: 7, numRuns: 500 },
    )
  })
})

/** Formulas of up to four levels of the names above, small numbers and the four rules. */
function anyExpression(): fc.Arbitrary<string> {
  return fc.letrec<{ all: string; leaf: string; sum: string; power: string; root: string; minus: string }>(tie => ({
    all: fc.oneof({ maxDepth: 4 }, tie('leaf'), tie('sum'), tie('power'), tie('root'), tie('minus')),
    leaf: fc.constantFrom('a', 'b', 'c', '2', '0.5', '3'),
    sum: fc
      .tuple(tie('all'), fc.constantFrom('+', '-', '*', '/'), tie('all'))
      .map(([left, sign, right]) => `(${left}) ${sign} (${right})`),
    power: tie('all').map(base => `(${base})^2`),
    root: tie('all').map(of => `sqrt(abs(${of}))`),
    minus: tie('all').map(of => `-(${of})`),
  })).all
}

describe('an expression over sets', () => {
  const masses = { m: [120, 80, 60], x: [0.5, 1.5, 2.5], L: 2.4 }

  test.each([
    ['sum(m)', 260],
    ['sum(m * x) / L', (60 + 120 + 150) / 2.4],
    ['max(m) - min(m)', 60],
    ['sum(m * (L - x)) / L + sum(m * x) / L', 260],
    ['sum(x - 1)', 1.5],
  ])('%s is %f', (formula, expected) => {
    expect(evaluate(parseExpression(formula), masses)).toBeCloseTo(expected, 12)
  })

  test('sets of unequal size do not meet', () => {
    expect(() => evaluate(parseExpression('sum(m * y)'), { ...masses, y: [1, 2] })).toThrow(
      'Unexpected sets of 3 and 2, expected equal ones',
    )
  })
})

describe('units in a formula', () => {
  test.each([
    ['t - 20 degC', { t: 343.15 }, 50],
    ['V / 10 + 4 km_h', { V: 10 }, 1 + 4 / 3.6],
    ['17.241 Ohm_km * 1 mm2 / A', { A: 4e-6 }, 4.31025e-3],
  ])('%s', (formula, values, expected) => {
    expect(evaluate(parseExpression(formula), values)).toBeCloseTo(expected, 12)
  })
})

describe('a formula that cannot be read', () => {
  test.each([
    ['a +', 'Unexpected `end` in `a +` at 4, expected a number, a name or `(`'],
    ['(a', 'Unexpected `end` in `(a` at 3, expected `)`'],
    ['a b', 'Unexpected `b` in `a b` at 3, expected the end'],
    ['a ? b', 'Unexpected `?` in `a ? b` at 3, expected a formula'],
    [
      'log(a)',
      'Unexpected function `log` in `log(a)`, expected one of sqrt, ln, exp, sin, cos, tan, asin, acos, atan, abs, min, max, sum',
    ],
  ])('%s', (formula, message) => {
    expect(() => parseExpression(formula)).toThrow(new Error(message))
  })

  test('a name without a value is a fault of the check', () => {
    expect(() => evaluate(parseExpression('a + z'), names)).toThrow(
      'Unexpected name `z` in a formula, expected one of a, b, c, r_20',
    )
  })
})

describe('a printed formula', () => {
  test.each([
    ['r_20 * (1 + alpha * (t - 20 degC))', 'r_20 × (1 + α × (t − 20\u202f°C))'],
    ['a - (b - c)', 'a − (b − c)'],
    ['a - b - c', 'a − b − c'],
    ['a / (b * c)', 'a / (b × c)'],
    ['(a + b)^2', '(a + b)²'],
    ['sum(m * x) / L', 'Σ (m × x) / L'],
    ['226 * sqrt(ln(a / b))', '226 × √(ln(a / b))'],
    ['2 * atan(h / l)', '2 × arctan(h / l)'],
  ])('%s is %s in one line', (formula, line) => {
    expect(text(formula)).toBe(line)
  })

  test.each([
    ['a / b', '<mfrac><mrow><mi>a</mi></mrow><mrow><mi>b</mi></mrow></mfrac>'],
    ['r_20 * L', '<msub><mi>r</mi><mn>20</mn></msub><mo>\u2062</mo><mi>L</mi>'],
    ['DeltaU', '<mrow><mi>Δ</mi><mi>U</mi></mrow>'],
    ['sqrt(a)', '<msqrt><mi>a</mi></msqrt>'],
    [
      't_i_back^2',
      '<msup><mrow><msub><mi>t</mi><mi mathvariant="normal">i,back</mi></msub></mrow><mrow><mn>2</mn></mrow></msup>',
    ],
    ['t - 20 degC', '<mi>t</mi><mo>−</mo><mn>20</mn><mspace width="0.17em"/><mi mathvariant="normal">°C</mi>'],
  ])('%s in MathML', (formula, expected) => {
    expect(mathml(formula)).toBe(expected)
  })
})

describe('what is absent', () => {
  const left = (formula: string, ...absent: string[]): string | null => {
    const kept = withoutNames(parseExpression(formula), new Set(absent))
    return kept === null ? null : printExpression(kept, symbols).text
  }

  test.each([
    ['I * R + U', ['U'], 'I × R'],
    ['I * R + U', ['R'], 'U'],
    ['a - b', ['a'], '−b'],
    ['a * (b + c)', ['c'], 'a × b'],
    ['min(a, b)', ['b'], 'min(a)'],
    ['a / b', ['b'], null],
  ] as const)('%s without %s is %s', (formula, absent, expected) => {
    expect(left(formula, ...absent)).toBe(expected)
  })

  test('the names of a formula are told once each, in order, without pi', () => {
    expect(namesIn(parseExpression('pi / 4 * d^2 * (L - 2 * w) * d'))).toEqual(['d', 'L', 'w'])
  })
})
