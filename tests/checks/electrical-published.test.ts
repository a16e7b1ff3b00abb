import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/checker/check.ts'
import batteryReserve from '../../src/checks/battery-reserve.ts'
import cableRating from '../../src/checks/cable-rating.ts'
import chargingBalance from '../../src/checks/charging-balance.ts'
import faultClears from '../../src/checks/fault-clears.ts'
import faultWithstand from '../../src/checks/fault-withstand.ts'
import fuseCarriesLoad from '../../src/checks/fuse-carries-load.ts'
import relayLoad from '../../src/checks/relay-load.ts'
import seriesResistor from '../../src/checks/series-resistor.ts'
import unfused from '../../src/checks/unfused.ts'
import type { Given } from '../checker/record-maker.ts'
import { answersTo, answerTo } from './answer-to.ts'

const resultOf = (check: Check, given: Given, aspect?: string): number =>
  answerTo(check, { given, ...(aspect === undefined ? {} : { aspect }) }).result?.value ?? Number.NaN
const wordOf = (check: Check, given: Given): string => answerTo(check, { given }).verdict

describe('FAA AC 43.13-1B, table 11-4, nominal switch rating for a load of 1 A', () => {
  test.each([
    ['12 V', 'lighting', 5],
    ['12 V', 'ignition', 2],
    ['12 V', 'heating', 1],
    ['12 V', 'pump', 2],
    ['24 V', 'lighting', 8],
    ['24 V', 'ignition', 4],
    ['24 V', 'heating', 2],
    ['24 V', 'pump', 3],
    ['28 V', 'lighting', 8],
  ])('%s, %s: × %d', (nominal, use, factor) => {
    const given = {
      'relay/rating': '30 A',
      'circuit:load/load': '1 A',
      'circuit:load/use': use,
      'circuit:load/through': '[example]',
      'build/nominal': nominal,
    }
    expect(resultOf(relayLoad, given)).toBeCloseTo(factor, 9)
  })
})

describe('OpenStax College Physics 2e, an automobile headlight of 2.50 A and 0.35 Ω cold', () => {
  const given = { 'circuit:lamp/load': '30 W', 'circuit:lamp/use': 'lighting', 'build/nominal': '12 V' }

  test('its running current decides the fuse: 34.3 A of inrush blow no 5 A fuse', () => {
    const fused = {
      'circuit/load': '30 W',
      'circuit/use': 'lighting',
      'circuit/fuse.rating': '5 A',
      'build/nominal': '12 V',
    }
    expect([resultOf(fuseCarriesLoad, fused), wordOf(fuseCarriesLoad, fused)]).toEqual([2.5, 'pass'])
  })

  test('its inrush decides the relay', () => {
    expect(resultOf(relayLoad, { ...given, 'relay/rating': '10 A', 'circuit:lamp/through': '[example]' })).toBe(12.5)
    expect(wordOf(relayLoad, { ...given, 'relay/rating': '10 A', 'circuit:lamp/through': '[example]' })).toBe('fail')
  })
})

describe("Peukert's law has two forms, and this is the one of the rated capacity", () => {
  const given = {
    'battery/capacity': '100 Ah',
    'circuit:load/load': '5 A',
    'circuit:load/duty': 'standing',
    'build/nominal': '12 V',
  }

  test('100 Ah, k = 1.2 and 5 A: 20 h to empty by the 20 h capacity, of which half counts', () => {
    const { result, working } = answerTo(batteryReserve, { given })
    expect(result?.value).toBeCloseTo(10, 9)
    expect(working.steps.find(({ says }) => says.includes('empty'))?.value).toBeCloseTo(20, 9)
  })

  test('it is not the 14.5 h that an electrical engineering site prints for a one-ampere capacity', () => {
    expect(Math.round((100 / 5 ** 1.2) * 10) / 10).toBe(14.5)
    expect(resultOf(batteryReserve, given) * 2).not.toBeCloseTo(14.5, 0)
  })

  test('Lessons In Electric Circuits: 70 Ah at 3.5 A is 20 h, with k = 1 at 7 A 10 h', () => {
    const linear = (load: string) => ({
      ...given,
      'battery/capacity': '70 Ah',
      'circuit:load/load': load,
      'battery/peukert': '1.0',
    })
    expect([resultOf(batteryReserve, linear('3.5 A')) * 2, resultOf(batteryReserve, linear('7 A')) * 2]).toEqual([
      expect.closeTo(20, 9),
      expect.closeTo(10, 9),
    ])
  })
})

describe('tables of current are named, and never mixed', () => {
  const given = {
    'circuit/load': '5 A',
    'circuit/cable.insulation': '105 °C',
    'build/nominal': '12 V',
    'build/ambient': '30 °C',
  }
  const tablesOf = (more: Given): string[] =>
    answerTo(cableRating, { given: { ...given, ...more } }).working.tables.map(({ source }) => source)

  test('18 AWG at 105 °C carries the 20 A of 33 CFR 183.425 at 30 °C, not the 6 A of AC 43.13-1B table 11-9 at 70 °C', () => {
    expect(answerTo(cableRating, { given: { ...given, 'circuit/cable.area': '18 AWG' } }).limit?.max).toBeCloseTo(20, 9)
    expect(tablesOf({ 'circuit/cable.area': '18 AWG' })).toEqual(['33 CFR 183.425, table 5, one conductor at 30 °C'])
  })

  test("a section takes the makers' thin-wall table alone, a maker's own rating no table", () => {
    expect(tablesOf({ 'circuit/cable.area': '1 mm²' })).toEqual([
      "makers' data sheets of ISO 6722 class B thin-wall cable, 105 °C, one cable at 30 °C",
    ])
    expect(tablesOf({ 'circuit/cable.area': '1 mm²', 'circuit/cable.rating': '15 A' })).toEqual([])
  })
})

describe('the adiabatic equation of IEC 60364-4-43', () => {
  const withstand = (area: string, insulation: string): number =>
    answerTo(faultWithstand, {
      given: {
        'circuit/fuse.let-through': '1 A²s',
        'circuit/cable.area': area,
        'circuit/cable.insulation': insulation,
      },
    }).limit?.max ?? Number.NaN

  test('k of copper from 70 °C to 160 °C is 115', () => {
    expect(Math.round(Math.sqrt(withstand('1 mm²', '70 °C')))).toBe(115)
  })

  test.each([
    ['IET forum: 120 A for 0.4 s need 0.66 mm²', 120 ** 2 * 0.4, 0.66],
    ['a published calculator: 3000 A for 0.4 s need 16.5 mm²', 3000 ** 2 * 0.4, 16.5],
  ])('%s', (_, energy, section) => {
    expect(Math.sqrt(energy / withstand('1 mm²', '70 °C'))).toBeCloseTo(section, section > 1 ? 1 : 2)
  })

  test('a cable of 105 °C has less than k = 115, and gets hot from there', () => {
    expect(Math.sqrt(withstand('1 mm²', '105 °C'))).toBeCloseTo(226 * Math.sqrt(Math.log(394.5 / 339.5)), 9)
  })
})

describe('other published figures', () => {
  test.each([
    ['OpenStax, 6.00 Ω at 0.600 A: 2.16 W', '6 Ω', '0.6 A', 2.16],
    ['OpenStax, 13.0 Ω at 0.600 A: 4.68 W', '13 Ω', '0.6 A', 4.68],
    ['OpenStax, a cord of 0.06 Ω at 5.00 A: 1.50 W', '0.06 Ω', '5 A', 1.5],
  ])('%s', (_, resistance, current, watts) => {
    const given = {
      'resistor/resistance': resistance,
      'resistor/current': current,
      'resistor/power-rating': '50 W',
      'build/nominal': '12 V',
    }
    expect(resultOf(seriesResistor, given)).toBeCloseTo(watts, 9)
  })

  test('AC 43.13-1B, 11-35a: 80 % of 90 A are 72 A', () => {
    const given = {
      'alternator/rating': '90 A',
      'circuit:lamps/load': '10 A',
      'circuit:lamps/duty': 'continuous',
      'build/nominal': '12 V',
    }
    expect(answerTo(chargingBalance, { given, aspect: 'speed' }).limit?.max).toBeCloseTo(72, 9)
  })

  test('SAE J537, as service information prints it: a battery of 540 A at 7.2 V has 10 mΩ, two in series 20 mΩ', () => {
    const short = (nominal: string) => ({
      'circuit/fuse.rating': '15 A',
      'circuit/cable.area': '2.5 mm²',
      'circuit/cable.insulation': '20 °C',
      'circuit/length': '0 m',
      'circuit/return': 'chassis',
      'build/battery.cold-cranking': '540 A',
      'build/nominal': nominal,
    })
    expect(resultOf(faultClears, short('12 V'))).toBeCloseTo(12 / 0.015, 6)
    expect(resultOf(faultClears, short('24 V'))).toBeCloseTo(24 / 0.025, 6)
  })

  test.each([
    ['177.8 mm', null, 0],
    ['178 mm', null, 1],
    ['1016 mm', '16 mm', 0],
    ['1017 mm', '16 mm', 1],
  ])('33 CFR 183.455(b): a fuse after %s in a sleeve of %s is %d too far', (after, sleeve, count) => {
    const given = {
      'circuit/fuse.rating': '10 A',
      'circuit/fuse.after': after,
      'circuit/loom': 'body-loom',
      ...(sleeve === null ? {} : { 'loom:body-loom/sleeve': sleeve }),
    }
    expect(answersTo(unfused, given).map(({ result }) => result?.value)).toEqual([count])
  })

  test('each check that a rule limits says which rule, and that local codes decide', () => {
    for (const check of [cableRating, faultWithstand, unfused]) expect(check.limit?.source).toMatch(/local codes/)
  })
})
