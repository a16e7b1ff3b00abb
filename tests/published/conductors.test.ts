import { describe, expect, test } from 'vitest'
import { outwardResistance } from '../../src/checker/derived/loop-resistance.ts'
import { copperCoefficient } from '../../src/checker/tables/conductor-resistance.ts'
import seriesResistor from '../../src/checks/series-resistor.ts'
import voltageDrop from '../../src/checks/voltage-drop.ts'
import { awgArea, awgDiameter, gaugeNumber } from '../../src/quantities/awg.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from '../checks/answer-to.ts'
import { off, put, resultOf, shareOff } from './put.ts'

const gauge = (written: string): number => gaugeNumber(written) ?? Number.NaN
const inch = 0.0254 // m, exactly (NIST SP 811)
const drawnAs = 0.0006 // share; the tables round to four figures

describe('ASTM B258: the diameter of a gauge', () => {
  test.each([
    ['4/0', 0.46],
    ['1/0', 0.3249],
    ['6', 0.162],
    ['8', 0.1285],
    ['10', 0.1019],
    ['14', 0.06408],
    ['16', 0.05082],
    ['18', 0.0403],
    ['22', 0.02535],
  ])('Lessons In Electric Circuits, DC 12: %s AWG is %d in across', (written, inches) => {
    expect(shareOff(awgDiameter(gauge(written)) / inch, inches)).toBeLessThanOrEqual(drawnAs)
  })

  test.each([
    ['12', 2.053],
    ['1/0', 8.252],
    ['14', 1.628],
  ])('OpenStax College Physics, 20: %s AWG is %d mm across', (written, millimetres) => {
    expect(shareOff(awgDiameter(gauge(written)) * 1000, millimetres)).toBeLessThanOrEqual(drawnAs)
  })

  test.each([
    ['4/0', 211600],
    ['2/0', 133100],
    ['1/0', 105500],
    ['12', 6530],
    ['16', 2583],
  ])('Lessons In Electric Circuits, DC 12: %s AWG has %d circular mils', (written, mils) => {
    const circularMil = (Math.PI / 4) * (inch / 1000) ** 2
    expect(shareOff(awgArea(gauge(written)) / circularMil, mils)).toBeLessThanOrEqual(drawnAs)
  })
})

/** Ω of one metre at 20 °C, by the drop of 1 A over it. */
const metreOf = (area: string): Given => ({
  'circuit/load': '1 A',
  'circuit/length': '1 m',
  'circuit/cable.area': area,
  'circuit/return': 'chassis',
  'circuit/joints': '0 Ω',
  'build/nominal': '12 V',
  'build/ambient': '20 °C',
})
const ohmsPerMetre = (area: string): number => resultOf(voltageDrop, metreOf(area))
const circularMil = (Math.PI / 4) * 0.0254 ** 2 // mm², exactly (NIST SP 811)

describe('resistance of copper', () => {
  test.each([
    ['10 AWG', 3.28],
    ['12 AWG', 5.21],
    ['16 AWG', 13.17],
    ['18 AWG', 20.94],
    ['20 AWG', 33.29],
  ])('copper wire tables, 20 °C: %s has %d Ω/km', (area, printed) => {
    expect(shareOff(ohmsPerMetre(area) * 1000, printed)).toBeLessThanOrEqual(0.002)
  })

  test.each([
    ['0.5', 39],
    ['0.75', 26],
    ['1', 19.5],
    ['1.5', 13.3],
    ['2.5', 7.98],
    ['4', 4.95],
    ['6', 3.3],
    ['10', 1.91],
    ['16', 1.21],
    ['25', 0.78],
    ['35', 0.554],
    ['50', 0.386],
    ['70', 0.272],
    ['95', 0.206],
    ['120', 0.161],
  ])('IEC 60228, class 5, plain: %s mm² has %d mΩ/m at most, and no less than pure copper', (section, most) => {
    const found = ohmsPerMetre(`${section} mm²`) * 1000
    expect(found).toBeCloseTo(most, 9)
    expect(found).toBeGreaterThan(17.241 / Number(section)) // a public page heads these maxima as minima
  })

  test.each([
    ['0.5', 36, 40.1],
    ['0.75', 24.5, 26.7],
    ['1', 18.1, 20],
    ['1.5', 12.1, 13.7],
    ['2.5', 7.41, 8.21],
    ['4', 4.61, 5.09],
    ['6', 3.08, 3.39],
    ['10', 1.83, 1.95],
    ['16', 1.15, 1.24],
    ['25', 0.727, 0.795],
    ['35', 0.524, 0.565],
    ['50', 0.387, 0.393],
    ['70', 0.268, 0.277],
    ['95', 0.193, 0.21],
    ['120', 0.153, 0.164],
  ])(
    'IEC 60228, %s mm²: %d mΩ/m in classes 1 and 2 are no more than what is counted (but for 0.3 % at 50 mm²), %d mΩ/m tinned about 3 % above it at most',
    (section, coarse, tinned) => {
      const found = ohmsPerMetre(`${section} mm²`) * 1000
      expect(coarse / found).toBeLessThanOrEqual(1.003)
      expect(tinned / found).toBeGreaterThan(1)
      expect(tinned / found).toBeLessThanOrEqual(1.031)
    },
  )

  test.each([
    ['24', 28.4, 475],
    ['22', 16.2, 755],
    ['20', 9.88, 1216],
    ['18', 6.23, 1900],
    ['16', 4.81, 2426],
    ['14', 3.06, 3831],
    ['12', 2.02, 5874],
    ['10', 1.26, 9354],
    ['8', 0.7, 16983],
    ['6', 0.44, 26818],
    ['4', 0.28, 42615],
    ['2', 0.18, 66500],
    ['1', 0.15, 81700],
    ['1/0', 0.12, 104500],
    ['2/0', 0.09, 133000],
    ['3/0', 0.07, 166500],
    ['4/0', 0.06, 210900],
  ])(
    'FAA AC 43.13-1B, table 11-9: tin-plated %s AWG has %d Ω in 1000 ft (of %d circular mils), and the answer says how far that is from what it counts, 3 % under to 28 % over',
    (gauge, ohms, mils) => {
      const { result, working } = answerTo(voltageDrop, { given: metreOf(`${gauge} AWG`) })
      const printed = ohms / 304.8
      const over = (printed / (result?.value ?? Number.NaN) - 1) * 100
      expect(over).toBeGreaterThan(-3)
      expect(over).toBeLessThan(28)
      expect(printed * 1000 * mils * circularMil).toBeGreaterThan(0.016) // no better than copper: Ω·mm²/m
      expect(working.notes.join(' ')).toContain(
        `has ${(printed * 1000).toPrecision(3)} mΩ/m for tin-plated ${gauge} AWG at 20 °C, ${Math.abs(over).toFixed(0)} % ${over < 0 ? 'less' : 'more'} than`,
      )
    },
  )

  test('AC 43.13-1B, 11-66: copper would have no resistance at −234.5 °C, so 0.003 93 for each kelvin', () => {
    expect(off(copperCoefficient, 1 / (234.5 + 20))).toBeLessThan(5e-6)
    expect(off(copperCoefficient, 0.00393)).toBeLessThanOrEqual(5e-6)
  })

  test('OpenStax, 20.3: 20.0 m of a wire 2.053 mm across, which is 12 AWG, has 0.104 Ω', () => {
    expect(off(20 * ohmsPerMetre('12 AWG'), 0.104)).toBeLessThanOrEqual(0.0005)
  })
})

/** The resistance at a temperature, by the line that warms a cable. */
const warmed = (ohms: number, alpha: number, celsius: number): number =>
  put(outwardResistance().formula?.slice(0, 1), 'Ohm', {
    r_20: [ohms, 'Ohm'],
    alpha: [alpha, '1'],
    t: [celsius, 'degC'],
  })

describe('temperature', () => {
  test('Lessons In Electric Circuits, DC 12: two wires of 15 Ω at 20 °C leave 250 Ω 12.42 of 14 V at 35 °C', () => {
    expect(off((14 * 250) / (250 + 2 * warmed(15, 0.004041, 35)), 12.42)).toBeLessThanOrEqual(0.006)
  })

  test('OpenStax, 20.3: a filament of 0.350 Ω at 20 °C has 4.8 Ω at 2850 °C', () => {
    expect(off(warmed(0.35, 0.0045, 2850), 4.8)).toBeLessThanOrEqual(0.05)
  })
})

test('OpenStax, 20: 1.00 km of 00 gauge at 100 A turns 2.55 kW into heat, where the book prints 25.5 W', () => {
  expect(awgDiameter(gauge('2/0')) * 1000).toBeCloseTo(9.266, 3)
  const ohms = (1.72e-8 * 1000) / awgArea(gauge('2/0'))
  const watts = put(seriesResistor.formula, 'W', { I: [100, 'A'], R: [ohms, 'Ohm'] })
  expect(shareOff(watts, 2550)).toBeLessThanOrEqual(0.003)
  expect(watts / 25.5).toBeGreaterThan(99)
})
