import { describe, expect, test } from 'vitest'
import { outwardResistance } from '../../src/checker/derived/loop-resistance.ts'
import startingDrop from '../../src/checks/starting-drop.ts'
import voltageDrop from '../../src/checks/voltage-drop.ts'
import type { Given } from '../checker/record-maker.ts'
import { mostOf, off, put, resultOf } from './put.ts'

const feet = 0.3048 // m, exactly (NIST SP 811)
const noMore = { R_back: 'absent', R_j: 'absent', DeltaU_feed: 'absent' } as const

/** The drop over the whole run, out and back, by the check's own lines. */
const dropOf = (ohmsPerFoot: number, feetOfRun: number, amperes: number): number =>
  put([...(outwardResistance().formula ?? []), ...(voltageDrop.formula ?? [])], 'V', {
    r_20: [ohmsPerFoot / feet, 'Ohm_m'],
    alpha: [0.00393, '1'],
    t: [20, 'degC'],
    L: [feetOfRun * feet, 'm'],
    I: [amperes, 'A'],
    ...noMore,
  })

describe('FAA AC 43.13-1B, tables 11-7 and 11-8, at 20 A', () => {
  test.each([
    ['11-7', 0.00044, 107, 0.942, 0.0006],
    ['11-7', 0.00028, 90, 0.504, 0.0006],
    ['11-7, rounded there from 3.555', 0.00202, 88, 3.6, 0.072],
    ['11-8', 0.00126, 39, 0.98, 0.006],
    ['11-8', 0.00126, 273, 6.88, 0.006],
  ])('table %s: %d Ω/ft over %d ft lose %d V', (_, ohms, run, printed, tolerance) => {
    expect(off(dropOf(ohms, run, 20), printed)).toBeLessThanOrEqual(tolerance)
  })

  test('table 11-7, row 3: 3.555 V by its own figures, not the printed 3.60 V', () => {
    expect(dropOf(0.00202, 88, 20)).toBeCloseTo(3.555, 3)
  })

  test('table 11-8, row 2: 0.491 V by its own figures, not the printed 0.366 V', () => {
    expect(off(dropOf(0.00126, 19.5, 20), 0.4914)).toBeLessThanOrEqual(0.0005)
  })
})

describe('OpenStax, 20.4 and 21.1: a current through a resistance', () => {
  test.each([
    ['a cord of 0.0600 Ω at 5.00 A', 5, 0.06, 0.3],
    ['a cord of 0.300 Ω at 5.00 A', 5, 0.3, 1.5],
    ['1.00 Ω in series at 0.600 A', 0.6, 1, 0.6],
    ['6.00 Ω in series at 0.600 A', 0.6, 6, 3.6],
  ])('%s', (_, amperes, ohms, volts) => {
    const found = put(voltageDrop.formula, 'V', { I: [amperes, 'A'], R_out: [ohms, 'Ohm'], ...noMore })
    expect(found).toBeCloseTo(volts, 9)
  })

  test.each([
    [3000, 1.5],
    [10000, 5],
    [5000, 2.5],
  ])('Lessons In Electric Circuits, DC 5: %d Ω of 18 kΩ across 9 V take %d V', (ohms, volts) => {
    const found = put(voltageDrop.formula, 'V', { I: [9 / 18000, 'A'], R_out: [ohms, 'Ohm'], ...noMore })
    expect(found).toBeCloseTo(volts, 9)
  })
})

const run = (given: Given): Given => ({
  'circuit/use': 'pump',
  'circuit/joints': '0 Ω ± 0',
  'build/nominal': '12 V',
  'build/ambient': '20 °C ± 0',
  ...given,
})
const metres = (length: number): string => `${length.toFixed(6)} m ± 0`

describe('how much may be lost', () => {
  const short = {
    'circuit/load': '1 A',
    'circuit/length': '1 m',
    'circuit/cable.area': '4 mm²',
    'circuit/return': 'chassis',
  }

  test.each([
    ['pump', 0.36],
    ['charging', 0.36],
    ['lighting', 0.36],
    ['heating', 1.2],
    ['signal', 1.2],
  ])('ABYC E-11, as a maker quotes it: 3 or 10 percent of 12 V, %s %d V', (use, volts) => {
    expect(mostOf(voltageDrop, run({ ...short, 'circuit/use': use }))).toBeCloseTo(volts, 12)
  })

  test.each([
    ['supply', 0.5],
    ['earth', 0.3],
    ['both', 0.8],
  ])("a battery tester's manual, while cranking: %s %d V", (aspect, volts) => {
    expect(mostOf(startingDrop, run({ ...short, 'circuit/duty': 'starting' }), aspect)).toBeCloseTo(volts, 12)
  })
})

describe('a mast lamp of 25 W at 12 V, 18 m off, may lose 5 %: a chandlery works out 2.5 mm²', () => {
  const lamp = (area: string) =>
    run({
      'circuit/load': '25 W ± 0',
      'circuit/use': 'lighting',
      'circuit/length': '18 m ± 0',
      'circuit/cable.area': area,
      'circuit/return.area': area,
      'circuit/return.length': '18 m ± 0',
      'limit/voltage-drop/lighting': 'max 5 %, as the chandlery has it',
    })

  test('5 % of 12 V are 0.60 V', () => {
    expect(mostOf(voltageDrop, lamp('2.5 mm²'))).toBeCloseTo(0.6, 9)
  })

  test('2.5 mm² is the first section that does, with the length counted both ways', () => {
    const drops = ['1.5 mm²', '2.5 mm²'].map(area => resultOf(voltageDrop, lamp(area)))
    expect(drops.map(drop => drop <= 0.6)).toEqual([false, true])
  })

  test('counted one way it would be half of that: the length of a circuit is that of one cable', () => {
    const { 'circuit/return.area': _, 'circuit/return.length': __, ...oneWay } = lamp('2.5 mm²')
    const found = resultOf(voltageDrop, { ...oneWay, 'circuit/return': 'chassis' })
    expect(2 * found).toBeCloseTo(resultOf(voltageDrop, lamp('2.5 mm²')), 12)
  })
})

describe('ABYC drop tables, 3 % at 12 V, whose K of 10.75 is for warm copper of the least area', () => {
  const gauges: readonly string[] = ['20', '18', '16', '14', '12', '10', '8', '6', '4', '2']
  /** The thinnest gauge that loses no more than 0.36 V at 20 °C over the loop. */
  const thinnest = (amperes: number, loopFeet: number): string | undefined =>
    gauges.find(gauge => {
      const given = {
        'circuit/load': `${amperes} A ± 0`,
        'circuit/length': metres(loopFeet * feet),
        'circuit/cable.area': `${gauge} AWG`,
        'circuit/return': 'chassis',
      }
      return resultOf(voltageDrop, run(given)) <= 0.36
    })

  test.each([
    ['bilge pump of the worked example', 10, 21, '10'],
    ['table A', 5, 15, '16'],
    ['table A', 10, 15, '12'],
    ['table A', 15, 15, '10'],
    ['table A', 20, 15, '10'],
    ['table A', 25, 15, '8'],
    ['table A', 30, 15, '8'],
    ['table A', 40, 15, '6'],
    ['table A', 50, 15, '6'],
    ['table A', 60, 15, '4'],
    ['table A', 70, 15, '4'],
    ['table A', 80, 15, '4'],
    ['table A', 90, 15, '2'],
    ['table A', 100, 15, '2'],
  ] as const)(
    '%s, %d A round %d ft: %s AWG, and by the areas of ASTM B258 at 20 °C no more than one size thinner',
    (_, amperes, loop, printed) => {
      const own = gauges.indexOf(thinnest(amperes, loop) ?? '')
      expect(own).toBeGreaterThanOrEqual(0)
      expect([0, 1]).toContain(gauges.indexOf(printed) - own)
    },
  )
})
