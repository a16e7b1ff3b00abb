import { describe, expect, test } from 'vitest'
import fuseProtectsCable from '../../src/checks/fuse-protects-cable.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from './answer-to.ts'

/** What a cable carries by the check: the limit of its fuse. */
function carried(given: Given): number {
  return answerTo(fuseProtectsCable, { given: { 'circuit/fuse.rating': '1 A', ...given } }).limit?.max ?? Number.NaN
}

const alone = (area: string, insulation: string): number =>
  carried({ 'circuit/cable.area': area, 'circuit/cable.insulation': insulation, 'build/ambient': '30 °C' })

/** A cable in a loom with others, in a zone of that temperature. */
function inLoom(area: string, cables: number, zone: string): number {
  const others = Object.fromEntries(
    Array.from({ length: cables - 1 }, (_, at) => [`circuit:other-${at}/loom`, 'body-loom']),
  )
  return carried({
    'circuit/cable.area': area,
    'circuit/cable.insulation': '105 °C',
    'circuit/zone': 'place',
    'build/zones.place': zone,
    'circuit/loom': 'body-loom',
    ...others,
  })
}

describe('33 CFR 183.425, table 5, below 50 V, one conductor at 30 °C', () => {
  test.each([
    ['18 AWG', [10, 10, 15, 20, 20, 25, 25]],
    ['16 AWG', [15, 15, 20, 25, 25, 30, 35]],
    ['14 AWG', [20, 20, 25, 30, 35, 40, 45]],
    ['12 AWG', [25, 25, 35, 40, 45, 50, 55]],
    ['10 AWG', [40, 40, 50, 55, 60, 70, 70]],
    ['8 AWG', [55, 65, 70, 70, 80, 90, 100]],
    ['6 AWG', [80, 95, 100, 100, 120, 125, 135]],
    ['4 AWG', [105, 125, 130, 135, 160, 170, 180]],
    ['3 AWG', [120, 145, 150, 155, 180, 195, 210]],
    ['2 AWG', [140, 170, 175, 180, 210, 225, 240]],
    ['1 AWG', [165, 195, 210, 210, 245, 265, 280]],
    ['1/0 AWG', [195, 230, 245, 245, 285, 305, 325]],
    ['2/0 AWG', [225, 265, 285, 285, 330, 355, 370]],
    ['3/0 AWG', [260, 310, 330, 330, 385, 410, 430]],
    ['4/0 AWG', [300, 360, 385, 385, 445, 475, 510]],
  ])('%s', (area, row) => {
    expect(
      ['60 °C', '75 °C', '80 °C', '90 °C', '105 °C', '125 °C', '200 °C'].map(insulation =>
        Number(alone(area, insulation).toFixed(9)),
      ),
    ).toEqual(row)
  })

  test('between two columns the cooler one holds, between two gauges the thinner one', () => {
    expect([alone('16 AWG', '100 °C'), alone('13 AWG', '105 °C')].map(Math.round)).toEqual([25, 35])
  })
})

describe('notes 1 and 2 of the table, as a cable maker prints them multiplied out', () => {
  test.each([
    ['14 AWG', 3, '50 °C', 20.8],
    ['10 AWG', 4, '50 °C', 30.6],
    ['10 AWG', 6, '50 °C', 30.6],
    ['4/0 AWG', 3, '50 °C', 264.8],
    ['16 AWG', 3, '30 °C', 17.5],
    ['12 AWG', 7, '30 °C', 22.5],
    ['12 AWG', 24, '30 °C', 22.5],
    ['6 AWG', 2, '50 °C', 102],
  ])('%s, %i cables at %s: %f A, within one in a hundred', (area, cables, zone, printed) => {
    expect(Math.abs(inLoom(area, cables, zone) / printed - 1)).toBeLessThan(0.01)
  })

  test('25 cables and more carry 0.4 of their rating', () => {
    expect(inLoom('12 AWG', 25, '30 °C')).toBeCloseTo(18, 9)
  })

  test.each([
    [60, 0.58],
    [75, 0.75],
    [80, 0.78],
    [90, 0.82],
    [105, 0.85],
    [125, 0.89],
  ])(
    'the root gives the factor for an engine space of 50 °C at %i °C (0.85 seen, the others from memory): %f',
    (insulation, factor) => {
      const given = {
        'circuit/cable.rating': '100 A',
        'circuit/cable.insulation': `${insulation} °C`,
        'circuit/zone': 'engine',
        'build/zones.engine': '50 °C',
      }
      expect(Math.abs(carried(given) / 100 - factor)).toBeLessThan(0.01)
    },
  )
})

describe("makers' data sheets of ISO 6722 class B cable, 105 °C, one at 30 °C", () => {
  test.each([
    ['0.5 mm²', 11],
    ['0.75 mm²', 14],
    ['1.0 mm²', 16.5],
    ['1.5 mm²', 21],
    ['2.0 mm²', 25],
    ['2.5 mm²', 29],
    ['3.0 mm²', 33],
    ['4.0 mm²', 39],
    ['4.5 mm²', 42],
    ['6.0 mm²', 50],
    ['8.5 mm²', 63],
    ['10 mm²', 70],
  ])('%s: %f A', (area, expected) => {
    expect(alone(area, '105 °C')).toBeCloseTo(expected, 9)
  })

  test.each([
    ['a section below the smallest', '0.35 mm²', '105 °C', 'circuit:example/cable.rating'],
    ['a gauge below the smallest', '20 AWG', '105 °C', 'circuit:example/cable.rating'],
    ['insulation below the coolest column', '12 AWG', '50 °C', 'circuit:example/cable.rating'],
  ])('%s is missing its maker’s rating', (_, area, insulation, missing) => {
    const given = {
      'circuit/fuse.rating': '5 A',
      'circuit/cable.area': area,
      'circuit/cable.insulation': insulation,
      'build/ambient': '30 °C',
    }
    expect(answerTo(fuseProtectsCable, { given })).toMatchObject({
      verdict: 'missing',
      result: null,
      missing: [missing],
      limit: { max: null },
    })
  })
})

describe('a circuit in its loom', () => {
  const base = {
    'circuit/fuse.rating': '10 A',
    'circuit/cable.area': '2.5 mm²',
    'circuit/cable.insulation': '105 °C',
    'circuit/loom': 'body-loom',
    'build/ambient': '30 °C',
  }
  const factorOf = (more: Given): number => Number((carried({ ...base, ...more }) / 29).toFixed(9))

  test('alone in it, it carries its whole rating', () => {
    expect(factorOf({})).toBe(1)
  })

  test('a return cable counts as a second, in the same loom unless it names another', () => {
    const others = { 'circuit:horn/loom': 'body-loom', 'circuit:horn/return.area': '2.5 mm²' }
    expect(factorOf(others)).toBe(0.7)
    expect(factorOf({ ...others, 'circuit:horn/return.loom': 'rear-loom' })).toBe(1)
  })

  test('what is planned or taken out carries nothing', () => {
    const others = { 'circuit:horn/loom': 'body-loom', 'circuit:fan/loom': 'body-loom' }
    expect(factorOf(others)).toBe(0.7)
    expect(factorOf({ ...others, 'circuit:fan/state': 'planned' })).toBe(1)
    expect(factorOf({ ...others, 'circuit:fan/state': 'removed' })).toBe(1)
  })

  test('a thinner return cable decides', () => {
    expect(carried({ ...base, 'circuit/return.area': '1 mm²' })).toBeCloseTo(16.5, 9)
  })
})

test('the starter’s own cable is asked only where its maker rates it', () => {
  const given = {
    'circuit/fuse.rating': '300 A',
    'circuit/duty': 'starting',
    'circuit/cable.area': '50 mm²',
    'circuit/cable.insulation': '105 °C',
    'build/ambient': '30 °C',
  }
  expect(() => answerTo(fuseProtectsCable, { given })).toThrow('Unexpected silence of fuse-protects-cable')
  expect(answerTo(fuseProtectsCable, { given: { ...given, 'circuit/cable.rating': '345 A' } }).verdict).toBe('pass')
})
