import { describe, expect, test } from 'vitest'
import { outwardResistance } from '../../src/checker/derived/loop-resistance.ts'
import { workFormula } from '../../src/checker/formula.ts'
import { statedLeaf } from '../../src/checker/leaf.ts'
import { type Leaf, workOut } from '../../src/checker/term.ts'
import voltageDrop from '../../src/checks/voltage-drop.ts'
import { answerTo } from './answer-to.ts'

const leaf = (symbol: string, value: number, unit: string): Leaf =>
  statedLeaf('constant', { symbol, meaning: symbol, value, unit })
const feet = 0.3048 // m, exactly (NIST SP 811)

/** The check's own lines, from the resistance of each metre to the drop, with a book's figures put in. */
function dropOf(figures: { ohmPerFoot: number; feetOfRun: number; amperes: number }): number {
  const lines = [...(outwardResistance().formula ?? []), ...(voltageDrop.formula ?? [])]
  const terms = {
    r_20: leaf('r_20', figures.ohmPerFoot / feet, 'Ohm_m'),
    alpha: leaf('alpha', 0.00393, '1'),
    t: leaf('t', 20, 'degC'),
    L: leaf('L', figures.feetOfRun * feet, 'm'),
    I: leaf('I', figures.amperes, 'A'),
    R_back: 'absent',
    R_j: 'absent',
    DeltaU_feed: 'absent',
  } as const
  return workOut(workFormula(lines, terms))
}

describe('FAA AC 43.13-1B, tables 11-7 and 11-8, the whole run out and back', () => {
  test.each([
    ['table 11-7, No. 6', 0.00044, 107, 0.942, 0.0006],
    ['table 11-7, No. 4', 0.00028, 90, 0.504, 0.0006],
    ['table 11-7, No. 12, printed 3.60 for 3.555', 0.00202, 88, 3.6, 0.05],
    ['table 11-8, 39 ft', 0.00126, 39, 0.98, 0.006],
    ['table 11-8, 273 ft', 0.00126, 273, 6.88, 0.006],
  ])('%s', (_, ohmPerFoot, feetOfRun, printed, tolerance) => {
    expect(Math.abs(dropOf({ ohmPerFoot, feetOfRun, amperes: 20 }) - printed)).toBeLessThanOrEqual(tolerance)
  })

  test('table 11-8 prints 0.366 V for 19.5 ft where its own figures give 0.491 V', () => {
    const drop = dropOf({ ohmPerFoot: 0.00126, feetOfRun: 19.5, amperes: 20 })
    expect(drop).toBeCloseTo(0.4914, 4)
    expect(Math.abs(drop - 0.366)).toBeGreaterThan(0.1)
  })
})

/** The drop of one metre at one ampere and 20 °C, in mV: the resistance of each metre in mΩ. */
function milliohmsPerMetre(area: string): number {
  const given = {
    'circuit/load': '1 A',
    'circuit/length': '1 m',
    'circuit/cable.area': area,
    'circuit/return': 'chassis',
    'build/nominal': '12 V',
    'build/ambient': '20 °C',
  }
  return (answerTo(voltageDrop, { given }).result?.value ?? Number.NaN) * 1000
}

describe('resistance of each metre at 20 °C', () => {
  test.each([
    ['0.5 mm²', 39],
    ['0.75 mm²', 26],
    ['1 mm²', 19.5],
    ['1.5 mm²', 13.3],
    ['2.5 mm²', 7.98],
    ['4 mm²', 4.95],
    ['6 mm²', 3.3],
    ['10 mm²', 1.91],
    ['16 mm²', 1.21],
    ['25 mm²', 0.78],
    ['35 mm²', 0.554],
    ['50 mm²', 0.386],
    ['70 mm²', 0.272],
    ['95 mm²', 0.206],
    ['120 mm²', 0.161],
  ])('IEC 60228, class 5, plain copper: %s has %f mΩ/m at most', (area, expected) => {
    expect(milliohmsPerMetre(area)).toBeCloseTo(expected, 9)
  })

  test.each([
    ['10 AWG', 3.28],
    ['12 AWG', 5.21],
    ['16 AWG', 13.17],
    ['18 AWG', 20.94],
    ['20 AWG', 33.29],
  ])('copper wire tables: %s has %f Ω/km', (area, expected) => {
    expect(Math.abs(milliohmsPerMetre(area) / expected - 1)).toBeLessThan(0.002)
  })

  test('a section that IEC 60228 has not takes the largest ratio of its column up to 50 mm², and says so', () => {
    const given = {
      'circuit/load': '1 A',
      'circuit/length': '1 m',
      'circuit/cable.area': '3 mm²',
      'circuit/return': 'chassis',
      'circuit/joints': '0 Ω',
      'build/nominal': '12 V',
      'build/ambient': '20 °C',
    }
    const verdict = answerTo(voltageDrop, { given })
    expect((verdict.result?.value ?? 0) * 1000).toBeCloseTo((17.241 * 1.16) / 3, 9)
    expect(verdict.assumed).toContain(
      '3 mm² is not in IEC 60228: 17.241 nΩ·m × 1.16 over its section, the largest ratio of the table up to 50 mm²',
    )
    const ratios = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50].map(
      section => (milliohmsPerMetre(`${section} mm²`) * section) / 17.241,
    )
    expect([Math.max(...ratios) <= 1.16, Math.min(...ratios) >= 1]).toEqual([true, true])
  })
})

test('Lessons In Electric Circuits, DC 12: two wires of 15 Ω each at 20 °C leave 12.42 of 14 V for a load of 250 Ω at 35 °C', () => {
  const [line] = outwardResistance().formula ?? []
  if (line === undefined) throw new Error('expected the line that warms a cable')
  const wire = workOut(
    workFormula([line], {
      r_20: leaf('r_20', 15, 'Ohm_m'),
      alpha: leaf('alpha', 0.004041, '1'),
      t: leaf('t', 35, 'degC'),
    }),
  )
  expect((14 * 250) / (250 + 2 * wire)).toBeCloseTo(12.42, 2)
})
