import { describe, expect, test } from 'vitest'
import { isNear, nearest } from '../../src/facts/near-words.ts'

describe('near words', () => {
  test.each([
    ['fuel-tank', 'feul-tank'],
    ['fuel-tank', 'fuel-tanks'],
    ['fuel-tank', 'Fuel-tank'],
    ['length', 'lenght'],
    ['strap-a', 'strap-ab'],
  ])('`%s` and `%s` are near', (one, other) => {
    expect([isNear(one, other), isNear(other, one)]).toEqual([true, true])
  })

  test.each([
    ['fuel-tank', 'fuel-tank'],
    ['leg-a', 'leg-b'],
    ['ratio-1', 'ratio-2'],
    ['fuse-9', 'fuse-10'],
    ['left-rear', 'left-front'],
    ['pump', 'strap'],
  ])('`%s` and `%s` are not near', (one, other) => {
    expect([isNear(one, other), isNear(other, one)]).toEqual([false, false])
  })

  test.each([
    ['fited', ['ordered', 'fitted', 'trial-fitted'], 'fitted'],
    ['Fitted', ['ordered', 'fitted'], 'fitted'],
    ['cots', ['cost', 'qty'], 'cost'],
    ['zzz', ['cost', 'qty'], null],
    ['at', ['qty'], null],
  ])('of `%s` among %j the nearest is %s', (word, known, meant) => {
    expect(nearest(word, known)).toBe(meant)
  })
})
