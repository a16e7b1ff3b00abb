import { describe, expect, test } from 'vitest'
import batteryReserve from '../../src/checks/battery-reserve.ts'
import chargingBalance from '../../src/checks/charging-balance.ts'
import faultClears from '../../src/checks/fault-clears.ts'
import fuseCarriesLoad from '../../src/checks/fuse-carries-load.ts'
import relayLoad from '../../src/checks/relay-load.ts'
import seriesResistor from '../../src/checks/series-resistor.ts'
import startingDrop from '../../src/checks/starting-drop.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from '../checks/answer-to.ts'
import { mostOf, off, put, resultOf, shareOff } from './put.ts'

/** What flows from a voltage through resistances in series, by the lines of a fault. */
const currentOf = (volts: number, out: number, battery: number, more = 0): number =>
  put(faultClears.formula, 'A', {
    U_n: [volts, 'V'],
    R_out: [out, 'Ohm'],
    R_b: [battery, 'Ohm'],
    R_j: [more, 'Ohm'],
    R_back: 'absent',
    R_feed: 'absent',
  })
const wattsOf = (amperes: number, ohms: number): number =>
  put(seriesResistor.formula, 'W', { I: [amperes, 'A'], R: [ohms, 'Ohm'] })
const loadOf = (watts: number, nominal: number): number =>
  resultOf(fuseCarriesLoad, {
    'circuit/load': `${watts} W`,
    'circuit/fuse.rating': '15 A',
    'build/nominal': `${nominal} V`,
  })

describe('OpenStax, 21.2: a battery and what it feeds', () => {
  test.each([
    ['12.0 V, 0.100 Ω inside, 10.0 Ω: 1.188 A', 12, 10, 0.1, 0, 1.188, 0.0006],
    ['starter of 0.0500 Ω, 0.0100 Ω inside: 200 A', 12, 0.05, 0.01, 0, 200, 0.2],
    ['the same with 0.0900 Ω of corrosion: 80.0 A', 12, 0.05, 0.01, 0.09, 80, 0.08],
    ['21.1, 1.00, 6.00 and 13.0 Ω in series at 12.0 V: 0.600 A', 12, 1, 6, 13, 0.6, 0.0005],
    ['20.4, a cold filament of 0.350 Ω at 12.0 V: 34.3 A', 12, 0.35, 0, 0, 34.3, 0.05],
    ['Lessons In Electric Circuits, DC 11: 10 V shorted through 0.2 Ω: 50 A', 10, 0, 0.2, 0, 50, 0.01],
  ])('%s', (_, volts, out, battery, more, amperes, tolerance) => {
    expect(off(currentOf(volts, out, battery, more), amperes)).toBeLessThanOrEqual(tolerance)
  })

  test.each([
    ['light load: 11.9 V', 1.188, 0.1, 11.9, 0.05],
    ['heavy load of 0.500 Ω: 10.0 V', 20, 0.1, 10, 0.01],
    ['starter: 10.0 V', 200, 0.01, 10, 0.01],
  ])('%s are left of 12.0 V', (_, amperes, ohms, left, tolerance) => {
    const gone = { R_back: 'absent', R_j: 'absent', R_feed_s: 'absent', R_feed_e: 'absent' } as const
    const figures = { I: [amperes, 'A'], R_out: [ohms, 'Ohm'], ...gone } as const
    expect(off(12 - put(startingDrop.aspects?.both?.formula, 'V', figures), left)).toBeLessThanOrEqual(tolerance)
  })

  test.each([
    ['21.1, 1.00, 6.00 and 13.0 Ω in series: 20.0 Ω', [1, 6, 13], 20, 0.01],
    ['21.1, the largest of 36.0, 50.0 and 700 Ω: 786 Ω', [36, 50, 700], 786, 0.5],
  ])('%s', (_, [out = 0, back = 0, joints = 0], ohms, tolerance) => {
    const found = put(faultClears.formula?.slice(0, 1), 'Ohm', {
      R_out: [out, 'Ohm'],
      R_back: [back, 'Ohm'],
      R_j: [joints, 'Ohm'],
      R_feed: 'absent',
      R_b: 'absent',
    })
    expect(off(found, ohms)).toBeLessThanOrEqual(tolerance)
  })
})

describe('heat, P = I²R', () => {
  test.each([
    ['OpenStax, 21.2, a starter of 0.0500 Ω at 200 A: 2000 W', 200, 0.05, 2000, 2],
    ['OpenStax, 21.2, a load of 0.500 Ω at 20.0 A: 200 W', 20, 0.5, 200, 0.5],
    ['OpenStax, 20.4, a cord of 0.0600 Ω at 5.00 A: 1.50 W', 5, 0.06, 1.5, 0.005],
    ['OpenStax, 21.1, 1.00 Ω at 0.600 A: 0.360 W', 0.6, 1, 0.36, 0.005],
    ['OpenStax, 21.1, 13.0 Ω at 0.600 A: 4.68 W', 0.6, 13, 4.68, 0.005],
    ['OpenStax, 21.1, 20.0 Ω at 0.600 A: 7.20 W', 0.6, 20, 7.2, 0.005],
    ['Lessons In Electric Circuits, DC 2, 5 Ω at 2 A: 20 W', 2, 5, 20, 1e-9],
  ])('%s', (_, amperes, ohms, watts, tolerance) => {
    expect(off(wattsOf(amperes, ohms), watts)).toBeLessThanOrEqual(tolerance)
  })

  const resistor = (ohms: string): Given => ({
    'resistor/resistance': ohms,
    'resistor/power-rating': '1000 W',
    'resistor/feeds': 'lamp',
    'circuit:lamps/feeds': 'lamp',
    'circuit:lamps/load': '2.5 A',
    'build/nominal': '12 V',
  })
  const beside = (ohms: string, unit: string): number =>
    answerTo(seriesResistor, { given: resistor(ohms) }).working.beside.find(line => line.unit === unit)?.value ??
    Number.NaN

  test('OpenStax, 20.2: what draws 2.50 A of 12.0 V has 4.80 Ω, so 4.80 Ω before it leave it half of the voltage', () => {
    expect(beside('4.8 Ω', 'V')).toBeCloseTo(6, 9)
  })

  test('OpenStax, 20.4: 12.0 V on the 0.350 Ω of a cold filament are 411 W', () => {
    expect(off(beside('0.35 Ω', 'W'), 411)).toBeLessThanOrEqual(0.6)
  })
})

describe('watts over volts', () => {
  test.each([
    ['OpenStax, 20.4, a headlight: 30.0 W at 12.0 V', 30, 12, 2.5, 0.005],
    ['OpenStax, 20.4, an outlet: 240 W at 12 V', 240, 12, 20, 0.05],
    ['OpenStax, 21.1: 1800 W at 120 V', 1800, 120, 15, 0.045],
    ['OpenStax, 21.1: 1400 W at 120 V', 1400, 120, 11.7, 0.035],
    ['OpenStax, 21.1: 75 W at 120 V', 75, 120, 0.625, 0.002],
    ['OpenStax, 21.1: all three at 120 V', 3275, 120, 27.3, 0.082],
    ['a chandlery: 25 W at 12 V', 25, 12, 2.1, 0.05],
  ])('%s', (_, watts, nominal, amperes, tolerance) => {
    expect(off(loadOf(watts, nominal), amperes)).toBeLessThanOrEqual(tolerance)
  })

  test('OpenStax, 21.1: the three together blow the fuse of 15 A', () => {
    const given = { 'circuit/load': '3275 W', 'circuit/fuse.rating': '15 A', 'build/nominal': '120 V' }
    expect(answerTo(fuseCarriesLoad, { given }).verdict).toBe('fail')
  })
})

const switched = (nominal: string, use: string, load = '1 A'): Given => ({
  'relay/rating': '30 A',
  'circuit:a/load': load,
  'circuit:a/use': use,
  'circuit:a/through': '[example]',
  'build/nominal': nominal,
})

describe('FAA AC 43.13-1B, table 11-4: what a contact must be rated for', () => {
  test.each([
    ['28 V', 'lighting', 8],
    ['28 V', 'ignition', 4],
    ['28 V', 'heating', 2],
    ['28 V', 'pump', 3],
    ['12 V', 'lighting', 5],
    ['12 V', 'ignition', 2],
    ['12 V', 'heating', 1],
    ['12 V', 'pump', 2],
  ])('%s, %s: %d times the running current', (nominal, use, factor) => {
    expect(resultOf(relayLoad, switched(nominal, use))).toBeCloseTo(factor, 9)
  })

  test('a lamp of 2.50 A that takes 34.3 A cold (OpenStax, 20.4): its fuse is asked for 2.50 A, its relay for five times that', () => {
    expect([loadOf(30, 12), resultOf(relayLoad, switched('12 V', 'lighting', '30 W'))]).toEqual([2.5, 12.5])
  })
})

describe('hours of a battery', () => {
  const linear = (capacity: string, load: string, nominal = '12 V'): number =>
    2 *
    resultOf(batteryReserve, {
      'battery/capacity': capacity,
      'battery/peukert': '1.0',
      'circuit:a/load': load,
      'circuit:a/duty': 'standing',
      'build/nominal': nominal,
    })

  test.each([
    ['Lessons In Electric Circuits, DC 11: 70 Ah at 3.5 A, 20 h', '70 Ah', '3.5 A', '12 V', 20, 0.01],
    ['Lessons In Electric Circuits, DC 11: 70 Ah at 7 A, 10 h', '70 Ah', '7 A', '12 V', 10, 0.01],
    ['OpenStax, 21: 1.00 Ah at 1.58 V and 1.00 W, 1.58 h', '1 Ah', '1 W', '1.58 V', 1.58, 0.005],
  ])('%s', (_, capacity, load, nominal, hours, tolerance) => {
    expect(off(linear(capacity, load, nominal), hours)).toBeLessThanOrEqual(tolerance)
  })

  /** Until empty, by the form of a rated capacity. */
  const empty = (hours: number, capacity: number, exponent: number, amperes: number): number =>
    put(batteryReserve.formula?.slice(0, 2), 'h', {
      H: [hours, 'h'],
      C: [capacity, 'Ah'],
      k: [exponent, '1'],
      I_i: [[amperes, 'A']],
    })

  test.each([
    ['an electrical engineering site', 100, 1.2, 5, 14.5, 0.004],
    ['a tutorial', 250, 1.3, 20, 5.088631644, 1e-6],
  ])(
    'Peukert by a capacity at one ampere, %s: that of so many hours in the form used here',
    (_, capacity, exponent, amperes, hours, share) => {
      expect(shareOff(empty(capacity, capacity, exponent, amperes), hours)).toBeLessThanOrEqual(share)
    },
  )

  test('Peukert: 100 Ah are taken as the capacity of 20 h, so 5 A empty it in 20 h, not in the 14.5 h of the other form', () => {
    expect(empty(20, 100, 1.2, 5)).toBeCloseTo(20, 9)
    const given = { 'battery/capacity': '100 Ah', 'circuit:a/load': '5 A', 'circuit:a/duty': 'standing' }
    expect(resultOf(batteryReserve, { ...given, 'build/nominal': '12 V' })).toBeCloseTo(10, 9)
  })
})

describe('other limits', () => {
  test('FAA AC 43.13-1B, 11-35: continuous loads take 80 % of an alternator, 72 A of 90 A', () => {
    const given = { 'alternator/rating': '90 A', 'circuit:a/load': '10 A', 'build/nominal': '12 V' }
    expect(mostOf(chargingBalance, given, 'speed')).toBeCloseTo(72, 9)
  })

  const short = (more: Given): number =>
    resultOf(faultClears, {
      'circuit/fuse.rating': '15 A',
      'circuit/cable.area': '2.5 mm²',
      'circuit/cable.insulation': '20 °C',
      'circuit/length': '0 m',
      'circuit/return': 'chassis',
      'circuit/joints': '0 Ω',
      'build/nominal': '12 V',
      ...more,
    })

  test('FAA-H-8083-31: a return through the chassis of at most 5 mΩ', () => {
    expect(short({})).toBeCloseTo(12 / 0.005, 6)
  })

  test('SAE J537: a battery is at 7.2 V at its cold cranking current, from 12.6 V at rest', () => {
    expect(short({ 'build/battery.cold-cranking': '540 A' })).toBeCloseTo(12 / (0.005 + (12.6 - 7.2) / 540), 6)
  })
})
