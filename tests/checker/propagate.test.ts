import { derivative, evaluate as mathjs } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { workFormula } from '../../src/checker/formula.ts'
import { statedLeaf } from '../../src/checker/leaf.ts'
import { propagateTerm } from '../../src/checker/propagate.ts'
import type { Leaf } from '../../src/checker/term.ts'

/** A value with a rectangular half-width. */
function leaf(symbol: string, value: number, half: number): Leaf {
  const stated = statedLeaf('constant', { symbol, meaning: symbol, value, unit: '1' })
  return { ...stated, id: symbol, low: value - half, high: value + half, deviation: half / Math.sqrt(3) }
}

const work = (line: string, leaves: readonly Leaf[]) =>
  propagateTerm(
    workFormula(
      [{ line: `y = ${line}`, unit: '1', says: '' }],
      Object.fromEntries(leaves.map(one => [one.symbol, one])),
    ),
  )

describe('uncertainty carried through a formula', () => {
  test.each([
    ['I * (r * L + R)', { I: [7, 0.5], r: [9.548e-3, 0], L: [4.8, 0.05], R: [6e-3, 0.5e-3] }],
    ['a * b / c', { a: [1.2, 0.05], b: [3.4, 0.1], c: [0.8, 0.02] }],
    ['atan(h / l)', { h: [0.35, 0.005], l: [0.8, 0.01] }],
    ['sqrt((a - t) / (a - 30))', { a: [105, 2], t: [70, 5] }],
  ] as [string, Record<string, [number, number]>][])('%s agrees with the derivatives of mathjs', (formula, values) => {
    const leaves = Object.entries(values).map(([symbol, [value, half]]) => leaf(symbol, value, half))
    const point = Object.fromEntries(leaves.map(({ symbol, value }) => [symbol, value]))
    const squares = leaves.map(
      ({ symbol, deviation }) => (derivative(formula, symbol).evaluate(point) * deviation) ** 2,
    )
    const result = work(formula, leaves)
    expect(result.value).toBeCloseTo(mathjs(formula, point), 12)
    expect(result.uncertainty).toBeCloseTo(2 * Math.sqrt(squares.reduce((total, square) => total + square, 0)), 6)
  })

  test('what is the same in two places moves together: x − x is exact', () => {
    const x = leaf('x', 5, 1)
    const same = workFormula([{ line: 'y = p - q', unit: '1', says: '' }], { p: x, q: x })
    expect(propagateTerm(same)).toMatchObject({ value: 0, uncertainty: 0, low: 0, high: 0 })
  })

  test('the shares of the variance add up to one, the greatest first', () => {
    const { contributions } = work('a + b', [leaf('a', 1, 0.1), leaf('b', 1, 0.3)])
    expect(contributions.map(({ leaf: { symbol }, share }) => [symbol, Number(share.toFixed(12))])).toEqual([
      ['b', 0.9],
      ['a', 0.1],
    ])
  })

  test('the worst case takes the end of each value that counts against it', () => {
    expect(work('a - b', [leaf('a', 10, 1), leaf('b', 4, 0.5)])).toMatchObject({ low: 4.5, high: 7.5 })
  })

  test('a frozen value adds nothing', () => {
    const term = workFormula([{ line: 'y = a + b', unit: '1', says: '' }], {
      a: leaf('a', 1, 0.1),
      b: leaf('b', 1, 0.3),
    })
    expect(propagateTerm(term, ({ symbol }) => symbol === 'b').uncertainty).toBeCloseTo(0.2 / Math.sqrt(3), 9)
  })
})

describe('published budgets', () => {
  /** A value of which a standard deviation is published: the rectangle that has it. */
  const known = (symbol: string, value: number, u: number): Leaf => leaf(symbol, value, u * Math.sqrt(3))

  test('EURACHEM/CITAC QUAM:2012, example A1: a standard of 1002.7 mg/L has u = 0.8352 mg/L', () => {
    const volume = Math.hypot(0.1 / Math.sqrt(6), 0.02, 0.084 / Math.sqrt(3)) // mL: flask, repeatability, temperature
    const result = work('1000 * m * P / V', [
      known('m', 100.28, 0.05),
      leaf('P', 0.9999, 0.0001),
      known('V', 100, volume),
    ])
    expect(result.value).toBeCloseTo(1002.7, 1)
    expect(result.uncertainty / 2).toBeCloseTo(0.8352, 4)
  })

  test('JCGM 100:2008, annex H.1: a gauge block of 50 000 838 nm has u = 32 nm to first order', () => {
    const alpha = 11.5e-6 // 1/°C
    const leaves = [
      known('l_s', 50000623, 25),
      known('d', 215, Math.hypot(5.8, 3.9, 6.7)),
      leaf('a', 0, 1e-6),
      known('q', -0.1, 0.41),
      leaf('Q', 0, 0.05),
    ]
    const result = work(`l_s + d - l_s * (a * q + ${alpha} * Q)`, leaves)
    expect(Math.round(result.value)).toBe(50000838)
    expect(Math.round(result.uncertainty / 2)).toBe(32)
  })
})
