import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/checker/check.ts'
import batteryReserve from '../../src/checks/battery-reserve.ts'
import cableRating from '../../src/checks/cable-rating.ts'
import chargingBalance from '../../src/checks/charging-balance.ts'
import faultClears from '../../src/checks/fault-clears.ts'
import fuseProtectsCable from '../../src/checks/fuse-protects-cable.ts'
import relayLoad from '../../src/checks/relay-load.ts'
import seriesResistor from '../../src/checks/series-resistor.ts'
import startingDrop from '../../src/checks/starting-drop.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from '../checks/answer-to.ts'

const notesOf = (check: Check, given: Given, aspect?: string): string =>
  answerTo(check, { given, ...(aspect === undefined ? {} : { aspect }) }).working.notes.join('\n')

const cable = (area: string, insulation = '105 °C'): Given => ({
  'circuit/fuse.rating': '10 A',
  'circuit/load': '1 A',
  'circuit/cable.area': area,
  'circuit/cable.insulation': insulation,
  'build/nominal': '12 V',
  'build/ambient': '30 °C',
})

describe('Lessons In Electric Circuits, DC 12: copper in free air, 60, 75 and 90 °C', () => {
  test.each([
    ['14', 25, 30, 35],
    ['12', 30, 35, 40],
    ['10', 40, 50, 55],
    ['8', 60, 70, 80],
    ['6', 80, 95, 105],
    ['4', 105, 125, 140],
    ['2', 140, 170, 190],
    ['1/0', 195, 230, 260],
    ['4/0', 300, 360, 405],
  ])('%s AWG: %d, %d, %d A', (gauge, ...amperes) => {
    const said = [60, 75, 90].map(degrees => notesOf(cableRating, cable(`${gauge} AWG`, `${degrees} °C`)))
    for (const [at, words] of said.entries())
      expect(words).toContain(
        `For comparison, Lessons In Electric Circuits, DC 12, gives ${gauge} AWG ${amperes[at]} A (building wire in free air at 30 °C, ${[60, 75, 90][at]} °C insulation).`,
      )
  })
})

describe('a second merchant’s sheet of PVC cable, which no table of ours is mixed with', () => {
  test.each([
    ['1.13', 20, 16.5],
    ['1.84', 28, 21],
    ['2.9', 37, 29],
    ['4.59', 48, 42],
  ])('%s mm²: %d A there, %d A by the table that is used', (section, there, here) => {
    const { limit, working } = answerTo(cableRating, { given: cable(`${section} mm²`) })
    expect(limit?.max).toBeCloseTo(here, 9)
    expect(working.notes.join('\n')).toContain(`another merchant's sheet of PVC cable gives ${section} mm² ${there} A`)
  })

  test('a section that it has not is compared with nothing', () => {
    expect(notesOf(cableRating, cable('1.5 mm²'))).not.toContain('another merchant')
  })
})

describe('which rule binds the fuse to its cable', () => {
  const fused = (amperes: number): Given => ({ ...cable('16 AWG'), 'circuit/fuse.rating': `${amperes} A` })

  test('a fuse above what the cable carries fails by IEC 60364-4-43, and what California (125 %) and 33 and 46 CFR (150 %) would take is told', () => {
    const said = notesOf(fuseProtectsCable, fused(30))
    expect(answerTo(fuseProtectsCable, { given: fused(30) }).verdict).toBe('fail')
    expect(said).toMatch(
      /California Department of Transportation.*125 %.*here 31\.3 A.*33 CFR 183\.455\(c\)\(1\) and 46 CFR 183\.380\(d\).*150 %.*here 37\.5 A/,
    )
  })

  test('nothing is told of other rules where the fuse is within', () => {
    expect(notesOf(fuseProtectsCable, fused(25))).not.toContain('Rules differ')
  })

  test('IEC 60364-4-43, 433.1, second condition: a fuse at the limit that melts at 1.35 times its rating melts within 1.45 times what the cable carries', () => {
    const most = answerTo(fuseProtectsCable, { given: fused(25) }).limit?.max ?? Number.NaN
    expect(1.35 * most).toBeLessThanOrEqual(1.45 * 25)
  })
})

describe('manuals beside the limit of a starter’s drop', () => {
  const starter: Given = {
    'circuit/duty': 'starting',
    'circuit/load': '200 A',
    'circuit/cable.area': '35 mm²',
    'circuit/length': '2.0 m',
    'circuit/return': 'chassis',
    'circuit/joints': '0.8 mΩ',
    'build/nominal': '12 V',
    'build/ambient': '20 °C',
  }

  test.each([
    [
      'US Army TM 10-3930-671-24, 0.20 V for each 100 A',
      /0\.40 V at this current \(0\.20 V for each 100 A, TM 10-3930-671-24\)/,
    ],
    ['the same, positive side', /0\.4 V on the positive side/],
    ['US Army TM 9-2320-211-20, 24 V', /24 V 0\.2 V to the solenoid and over its contact \(TM 9-2320-211-20\)/],
    ['a maker’s manual of 1983', /0\.1 V for each of post to frame, frame to starter, post to starter/],
  ])('%s', (_, said) => {
    expect(notesOf(startingDrop, starter, 'supply')).toMatch(said)
  })
})

describe('battery, generator, relay, resistor, glass fuse', () => {
  const running = { 'alternator/rating': '90 A', 'circuit:a/load': '10 A', 'build/nominal': '12 V' }

  test('FAA AC 43.13-1B, 11-35: low voltage is warned of at 13 V of 14 V and at 26 V of 28 V', () => {
    expect(notesOf(chargingBalance, running, 'speed')).toMatch(
      /at 13\.0 V where the system charges at 14 V, at 26\.0 V where it charges at 28 V/,
    )
  })

  test('80 % of an alternator ask for 125 % of the load, more than the 120 % of a battery page', () => {
    const most = answerTo(chargingBalance, { given: running, aspect: 'speed' }).limit?.max ?? Number.NaN
    expect(90 / most).toBeCloseTo(1.25, 9)
    expect(90 / most).toBeGreaterThan(1.2)
  })

  test('SAE J537 and service information of GM: 115 min at 25 A down to 10.5 V are about 69 Ah, 0.6 Ah a minute', () => {
    const given = {
      'battery/capacity': '69 Ah',
      'circuit:a/load': '1 A',
      'circuit:a/duty': 'standing',
      'build/nominal': '12 V',
    }
    expect(0.6 * 115).toBeCloseTo(69, 9)
    expect(notesOf(batteryReserve, given)).toMatch(
      /25 A down to 10\.5 V \(SAE J537\).*0\.6 Ah for each minute, 69 Ah for 115 min/,
    )
  })

  test('a guide to relays: a coil of 12 V takes 150 to 200 mA, which are 80 and 60 Ω', () => {
    const given = {
      'relay/rating': '30 A',
      'circuit:a/load': '1 A',
      'circuit:a/use': 'pump',
      'circuit:a/through': '[example]',
      'build/nominal': '12 V',
    }
    expect(notesOf(relayLoad, given)).toContain('150 to 200 mA (80 to 60 Ω)')
    expect([12 / 0.15, 12 / 0.2].map(Math.round)).toEqual([80, 60])
  })

  test('IEC 60063: the resistors on sale next to 1.0 Ω', () => {
    const given = {
      'resistor/resistance': '1.0 Ω',
      'resistor/power-rating': '100 W',
      'resistor/current': '6 A',
      'build/nominal': '12 V',
    }
    expect(notesOf(seriesResistor, given)).toContain(
      '0.82 and 1.2 Ω of the series E12, 0.91 and 1.1 Ω of E24; the greater makes the fan slower',
    )
  })

  test('UL 248-14, a maker’s sheet of glass fuses: 3600 s at 1.35 times, 120 s at twice, so none is taken to open quickly', () => {
    const given = {
      ...cable('2.5 mm²'),
      'circuit/fuse.type': 'glass',
      'circuit/length': '3 m',
      'circuit/return': 'chassis',
      'circuit/joints': '0 Ω',
    }
    const { verdict, working } = answerTo(faultClears, { given })
    expect(verdict).toBe('missing')
    expect(working.notes.join('\n')).toMatch(/up to 3600 s at 1\.35 times its rating and up to 120 s at twice it/)
    expect(notesOf(faultClears, { ...given, 'circuit/fuse.type': 'blade' })).not.toContain('3600 s')
  })
})
