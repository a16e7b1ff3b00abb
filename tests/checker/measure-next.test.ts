import { describe, expect, test } from 'vitest'
import { measureNext } from '../../src/checker/measure-next.ts'
import type { Verdict } from '../../src/checker/verdict.ts'

/** A verdict that waits for these paths; only what is read of it. */
const waiting = (subject: string, ...paths: string[]): Verdict =>
  ({
    check: 'voltage-drop',
    subject,
    aspect: null,
    working: { measureNext: paths.map(path => ({ path, why: `${path} is not written` })) },
  }) as unknown as Verdict

const order = (...verdicts: Verdict[]): string[] => measureNext(verdicts).map(({ path }) => path)

describe('what to measure next', () => {
  test('what settles an answer alone comes before what settles none alone', () => {
    expect(order(waiting('a', 'p', 'q'), waiting('b', 'r'))).toEqual(['r', 'p', 'q'])
  })

  test('what settles more answers comes first', () => {
    expect(order(waiting('a', 'p'), waiting('b', 'q'), waiting('c', 'q'))).toEqual(['q', 'p'])
  })

  test('once a figure is taken as measured, answers that lack only one more come next', () => {
    expect(order(waiting('a', 'p', 'q'), waiting('b', 'p'), waiting('c', 'x', 'y', 'z'))).toEqual([
      'p',
      'q',
      'x',
      'y',
      'z',
    ])
  })

  test('among equals the one that more answers lack comes first, then the order of names', () => {
    expect(order(waiting('a', 'p'), waiting('b', 'q'), waiting('c', 'q', 'r'))).toEqual(['q', 'p', 'r'])
    expect(order(waiting('a', 'z'), waiting('b', 'y'))).toEqual(['y', 'z'])
  })

  test('each says why, and which answers wait for it', () => {
    expect(measureNext([waiting('a', 'p'), waiting('b', 'p')])).toEqual([
      { path: 'p', why: 'p is not written', settles: ['voltage-drop a', 'voltage-drop b'] },
    ])
  })

  test('with every answer closed there is nothing to measure', () => {
    expect(measureNext([waiting('a')])).toEqual([])
  })
})
