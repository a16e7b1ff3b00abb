import { describe, expect, test } from 'vitest'
import { preferredValues } from '../../src/checker/tables/preferred-values.ts'
import batteryReserve from '../../src/checks/battery-reserve.ts'
import cableRating from '../../src/checks/cable-rating.ts'
import faultWithstand from '../../src/checks/fault-withstand.ts'
import trailerSocket from '../../src/checks/trailer-socket.ts'
import voltageDrop from '../../src/checks/voltage-drop.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from '../checks/answer-to.ts'
import { mostOf, put, resultOf } from './put.ts'

// Where published pages err or differ, and a tool that copied one of them would be wrong. Misprints of one table stand beside that table's own rows.

describe('loop or one-way length (AC 43.13-1B and ABYC take the whole run, European formulas one way; a chassis is neither)', () => {
  const lamp: Given = {
    'circuit/load': '10 A ± 0 A',
    'circuit/length': '5 m ± 0 m',
    'circuit/cable.area': '2.5 mm²',
    'circuit/joints': '0 Ω ± 0 Ω',
    'build/nominal': '12 V',
    'build/ambient': '20 °C ± 0 °C',
  }
  const oneWay = 10 * 5 * 0.00798 // V: IEC 60228, class 5, 2.5 mm²

  test('home by a cable of the same sort, the whole run counts', () => {
    const given = { ...lamp, 'circuit/return.area': '2.5 mm²', 'circuit/return.length': '5 m ± 0 m' }
    expect(resultOf(voltageDrop, given)).toBeCloseTo(2 * oneWay, 9)
  })

  test('home by the chassis, the cable counts once and the chassis as nothing, which is said', () => {
    const { result, assumed } = answerTo(voltageDrop, { given: { ...lamp, 'circuit/return': 'chassis' } })
    expect(result?.value).toBeCloseTo(oneWay, 9)
    expect(assumed.join(' ')).toMatch(/chassis/)
  })

  test('home by a chassis that was measured, the cable counts once and the chassis as measured', () => {
    const given = {
      ...lamp,
      'circuit/return': 'chassis',
      'circuit/earth': 'tail',
      'earth-point:tail/resistance': '3 mΩ ± 0 mΩ',
    }
    expect(resultOf(voltageDrop, given)).toBeCloseTo(oneWay + 0.03, 9)
  })

  test('a return of which nothing is written is missing, whatever the length', () => {
    expect(answerTo(voltageDrop, { given: lamp }).verdict).toBe('missing')
  })
})

describe('tables of current that differ by a factor of three are named and never mixed', () => {
  const rated = (area: string): Given => ({
    'circuit/load': '1 A',
    'circuit/cable.area': area,
    'circuit/cable.insulation': '105 °C',
    'build/nominal': '12 V',
    'build/ambient': '30 °C',
  })

  test.each([
    ['18 AWG', ['33 CFR 183.425, table 5, one conductor at 30 °C']],
    ['1.0 mm²', ["makers' data sheets of ISO 6722 class B thin-wall cable, 105 °C, one cable at 30 °C"]],
  ])('%s is rated by one table', (area, sources) => {
    expect(answerTo(cableRating, { given: rated(area) }).working.tables.map(({ source }) => source)).toEqual(sources)
  })

  test('a second merchant has 20 A for 1.13 mm² where the table that is used has 16.5 A for 1.0 mm²', () => {
    expect(mostOf(cableRating, rated('1.13 mm²'))).toBeCloseTo(16.5, 9)
  })
})

describe('pages that err', () => {
  test('one prints 4.2 in the series E24: it has 4.3', () => {
    expect(preferredValues.E24).toContain(43)
    expect(preferredValues.E24).not.toContain(42)
  })

  test('one discharges a battery’s reserve to 20.5 V: SAE J537 has 10.5 V', () => {
    const said = (batteryReserve.notes ?? []).join(' ')
    expect(said).toContain('25 A down to 10.5 V (SAE J537)')
    expect(said).not.toContain('20.5')
  })

  test('one labels the allocation of ISO 1724 as ISO 3732: under that name it has faults', () => {
    const ways = [
      'left indicator',
      'fog',
      'earth',
      'right indicator',
      'right side lamps',
      'stop lamps',
      'left side lamps',
    ]
    const pins = ways.flatMap((carries, at): [string, string][] => [
      [`connector/pins.${at + 1}.carries`, carries],
      [`connector/pins.${at + 1}.wire.area`, '2.5 mm²'],
    ])
    const given = (standard: string): Given => ({ 'trailer-socket/standard': standard, ...Object.fromEntries(pins) })
    expect(resultOf(trailerSocket, given('ISO 1724'))).toBe(0)
    expect(resultOf(trailerSocket, given('ISO 3732'))).toBeGreaterThan(0)
  })

  test('one tabulates Peukert’s law against its own exponent: here twice the current leaves 1/2^k of the time, whatever k', () => {
    const hours = (amperes: number, k: number): number =>
      put(batteryReserve.formula?.slice(0, 2), 'h', {
        H: [20, 'h'],
        C: [100, 'Ah'],
        k: [k, '1'],
        I_i: [[amperes, 'A']],
      })
    for (const k of [1, 1.1, 1.2, 1.3]) expect(hours(5, k) / hours(10, k)).toBeCloseTo(2 ** k, 9)
  })
})

test('k = 115 of IEC 60364 is for PVC that starts at 70 °C: cable of 105 °C, as vehicles have it, stands less', () => {
  const withstands = (insulation: string): number =>
    mostOf(faultWithstand, {
      'circuit/fuse.let-through': '1 A²s',
      'circuit/cable.area': '1 mm²',
      'circuit/cable.insulation': insulation,
    })
  expect(Math.sqrt(withstands('70 °C'))).toBeCloseTo(115, 0)
  expect(Math.sqrt(withstands('105 °C'))).toBeLessThan(90)
})

test('the returns of contacts 9 and 10 of ISO 11446 must not meet that of 1 to 8 on the trailer, which no record shows and the answer says', () => {
  expect((trailerSocket.notes ?? []).join(' ')).toMatch(
    /returns of contacts 9 and 10 of ISO 11446 must not be joined to contact 3/,
  )
})
