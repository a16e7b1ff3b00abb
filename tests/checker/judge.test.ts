import { describe, expect, test } from 'vitest'
import { judge, worstOf } from '../../src/checker/judge.ts'

const at = (value: number, limit: number, uncertainty: number, side: 'min' | 'max' = 'max') =>
  judge({ value, limit, side, uncertainty })

describe('a result against the greatest that it may be', () => {
  test.each([
    ['well below', 0.2, 0.36, 0.03, 'pass'],
    ['below by just more than U', 0.32, 0.36, 0.0399, 'pass'],
    ['below by U', 0.32, 0.36, 0.04, 'marginal'],
    ['below by less than U', 0.35, 0.36, 0.03, 'marginal'],
    ['at the limit with an uncertainty', 0.36, 0.36, 0.001, 'marginal'],
    ['above by less than U', 0.37, 0.36, 0.03, 'marginal'],
    ['above by U', 0.39, 0.36, 0.03, 'marginal'],
    ['above by just more than U', 0.3901, 0.36, 0.03, 'fail'],
    ['exact and at the limit', 0.36, 0.36, 0, 'pass'],
    ['exact and past it by a rounding of floats', 0.030000000000000006, 0.03, 0, 'pass'],
    ['exact and past it by more', 0.0300001, 0.03, 0, 'fail'],
    ['no offender', 0, 0, 0, 'pass'],
    ['one offender', 1, 0, 0, 'fail'],
  ] as const)('%s', (_, value, limit, uncertainty, expected) => {
    expect(at(value, limit, uncertainty)).toBe(expected)
  })
})

describe('a result against the least that it may be', () => {
  test.each([
    ['well above', 220, 200, 1, 'pass'],
    ['above by less than U', 200.5, 200, 1, 'marginal'],
    ['below by less than U', 199.5, 200, 1, 'marginal'],
    ['below by more than U', 198.9, 200, 1, 'fail'],
    ['exact and at the limit', 200, 200, 0, 'pass'],
    ['exact and short', 199.999, 200, 0, 'fail'],
  ] as const)('%s', (_, value, limit, uncertainty, expected) => {
    expect(at(value, limit, uncertainty, 'min')).toBe(expected)
  })
})

test('of several the worst stands: fail before marginal before pass', () => {
  expect([
    worstOf(['pass', 'fail', 'marginal']),
    worstOf(['pass', 'marginal']),
    worstOf(['pass']),
    worstOf([]),
  ]).toEqual(['fail', 'marginal', 'pass', 'pass'])
})
