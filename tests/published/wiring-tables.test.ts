import { describe, expect, test } from 'vitest'
import { cableSizes } from '../../src/checker/tables/conductor-resistance.ts'
import { nearestPreferred, preferredValues } from '../../src/checker/tables/preferred-values.ts'
import { meterRules } from '../../src/pages/meter-rules.ts'
import { awgArea, gaugeNumber } from '../../src/quantities/awg.ts'
import { plainReading } from '../../src/quantities/quantity.ts'
import { readOneQuantity } from '../../src/quantities/read-one-quantity.ts'
import { fuseOhms, throughFuse } from '../../src/wiring/fuse-millivolts.ts'
import { categoriesIn, sayCategory } from '../../src/wiring/lamp-categories.ts'
import { layingNotes, layingRules } from '../../src/wiring/laying-rules.ts'
import { readWiring } from '../../src/wiring/wiring.ts'
import { type Given, makeRecord } from '../checker/record-maker.ts'
import { off, shareOff } from './put.ts'

const circularMil = (Math.PI / 4) * 0.0000254 ** 2 // m², exactly (NIST SP 811)
const milsOf = (gauge: string): number => awgArea(gaugeNumber(gauge) ?? Number.NaN) / circularMil

describe('Lessons In Electric Circuits, DC 12, at 10.09 Ω·cmil/ft', () => {
  test('2300 ft of 14 AWG have 5.651 Ω', () => {
    expect(off((10.09 * 2300) / milsOf('14'), 5.651)).toBeLessThanOrEqual(0.0006)
  })

  test('0.2 Ω over 2300 ft ask for 116 035 circular mils: 2/0 is the first gauge on sale that has them', () => {
    const least = (10.09 * 2300) / 0.2
    expect(shareOff(least, 116035)).toBeLessThanOrEqual(0.0001)
    expect(cableSizes.AWG?.find(size => milsOf(size.replace(' AWG', '')) >= least)).toBe('2/0 AWG')
  })
})

describe('IEC 60063: values in which resistors are sold', () => {
  test('E12 and E24 are as a public page prints them; 43 is of E24 and 42, which another page prints, is not', () => {
    expect(preferredValues.E12).toEqual([10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82])
    expect(preferredValues.E24).toEqual([
      10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91,
    ])
  })

  test.each([
    ['E12', 1, 0.82, 1.2],
    ['E12', 0.85, 0.82, 1],
    ['E12', 8.2, 6.8, 10],
    ['E12', 9, 8.2, 10],
    ['E12', 47, 39, 56],
    ['E24', 1, 0.91, 1.1],
    ['E24', 4.2, 3.9, 4.3],
    ['E24', 910, 820, 1000],
  ] as const)('of %s, next to %d Ω: %d and %d Ω', (series, ohms, below, above) => {
    expect(nearestPreferred(series, ohms)).toEqual({ below, above })
  })
})

const amperes = (text: string) => readOneQuantity(text, plainReading)

describe('the current through a fuse by the voltage across it', () => {
  test.each([
    [0.1, 22],
    [1, 218],
  ])('MACS Service Reports, June 2017, a mini blade fuse of 15 A: %d mV are %d mA', (millivolts, milliamperes) => {
    const ohms = fuseOhms(amperes('15 A'), 'mini blade') ?? Number.NaN
    expect(off(throughFuse(millivolts / 1000, ohms) * 1000, milliamperes)).toBeLessThanOrEqual(0.5)
  })

  test('a maker, as a maker of test equipment quotes it: a blade fuse of 15 A has 4.8 mΩ; measured there 4.5 mΩ', () => {
    const ohms = (fuseOhms(amperes('15 A'), null) ?? Number.NaN) * 1000
    expect(ohms).toBeCloseTo(4.8, 9)
    expect(off(ohms, 4.5)).toBeLessThanOrEqual(0.3 + 1e-9)
  })

  test.each([
    ['10 A', null],
    ['15 A', 'glass'],
    ['15 A', 'maxi'],
    ['15 W', null],
  ])('of %s, type %s, no figure was found in print', (rating, type) => {
    expect(fuseOhms(amperes(rating), type)).toBeNull()
  })
})

describe('UN R37: what a category of lamp takes', () => {
  test.each([
    [
      'two PY21/5W in front',
      12,
      'UN R37 rates PY21/5W at 21 W and 5 W, 1.75 A and 0.42 A at 12 V, at most 26.5 W and 6.6 W at 13.5 V.',
    ],
    ['fog lamp, H3', 12, 'UN R37 rates H3 at 55 W, 4.58 A at 12 V.'],
    ['fog lamp, H3', 24, 'UN R37 rates H3 at 70 W, 2.92 A at 24 V.'],
    ['H1 spot', 12, 'UN R37 rates H1 at 55 W, 4.58 A at 12 V.'],
    ['H1 spot', 24, 'UN R37 rates H1 at 70 W, 2.92 A at 24 V.'],
    ['a p21w', 12, 'UN R37 rates P21W at 21 W, 1.75 A at 12 V (from memory).'],
    ['a p21w', 24, 'UN R37 has P21W; what it takes at 24 V is not held here.'],
  ])('`%s` at %d V: %s', (words, nominal, said) => {
    expect(categoriesIn(words).map(one => sayCategory(one, nominal))).toEqual([said])
  })

  test.each(['H11 lamp', 'an H45 bolt', 'P21W5', 'the PR21W', 'plug H1/4'])('`%s` names none of them', words => {
    expect(categoriesIn(words)).toEqual([])
  })
})

const cable = (area: string, length = '4.4 m'): Given => ({
  'circuit/cable.area': area,
  'circuit/length': length,
  'circuit/loom': 'main-loom',
  'loom:main-loom/sleeve': '12 mm',
})
const cutsOf = (given: Given) => readWiring(makeRecord(given)).looms.flatMap(({ cuts }) => cuts)

describe('how a loom is laid', () => {
  const rules = (given: Given, diameterMm: number | null, isSheathed: boolean) =>
    layingRules({ cuts: cutsOf(given), diameterMm, isSheathed })

  test('each rule with its publisher and what it asks here', () => {
    expect(rules(cable('0.5 mm²'), 10, true).map(({ asks, here, source }) => `${source}: ${asks} | ${here}`)).toEqual([
      'ISO 10133:2012, 7.3 and 7.4; 46 CFR 183.340(b)(4): Clip it every 450 mm at most, battery leads every 300 mm up to the isolator; 610 mm (24 in) by another | 9 clips and its two ends along the longest run of 4.40 m',
      'US Army TM 1-1500-204-23-4: Bend it no tighter than ten times its diameter, but at terminal strips | 100 mm inside radius',
      'FAA AC 43.13-1B, 11-118: Between two clips it gives no more than 12.7 mm (½ in) by hand | ',
      'FAA AC 43.13-1B, 11-115; 33 CFR 183.445(a): A grommet wherever it goes through metal, and a clip there unless it stays 9.5 mm (⅜ in) clear | ',
      'ISO 10133:2012, 7.7; 33 CFR 183.425(d) and (e): A wire on its own has 1 mm² or 16 AWG at least, one in a sheath 0.75 mm² or 18 AWG | thinner: W1',
      'FAA handbooks on wire groups and bundles: No more than 75 wires or 50.8 mm (2 in) in one bundle | 1 wire, 10.0 mm',
    ])
  })

  test.each([
    ['0.75 mm²', true, 'none is thinner'],
    ['0.75 mm²', false, 'thinner: W1'],
    ['1 mm²', false, 'none is thinner'],
    ['16 AWG', false, 'none is thinner'],
    ['18 AWG', true, 'none is thinner'],
  ])('ISO 10133 and 33 CFR 183.425: of %s, sheathed %s, %s', (area, isSheathed, said) => {
    expect(rules(cable(area), null, isSheathed)[4]?.here).toBe(said)
  })

  test.each([
    ['0.45 m', 0],
    ['0.46 m', 1],
    ['0.9 m', 1],
    ['0.91 m', 2],
  ])('a clip at least every 450 mm: between the ends of %s stand %d', (length, clips) => {
    expect(rules(cable('1 mm²', length), null, true)[0]?.here).toMatch(new RegExp(`^${clips} clips? and its two ends`))
  })

  test.each([
    [50.8, '1 wire, 50.8 mm'],
    [51, '1 wire, 51.0 mm: split it'],
  ])('2 in over all, %d mm: %s', (diameter, said) => {
    expect(rules(cable('1 mm²'), diameter, true)[5]?.here).toBe(said)
  })

  test.each([
    ['FAA handbooks', '5 mΩ'],
    ['ISO 10133, 5.2', '10 mm at most'],
    ['33 CFR 183.420(a)', '25 mm (1 in) with 400 N (90 lb)'],
    ['IEC 60335-1, 3.4.2', '60 V'],
    ['IEC 61558-1', '120 V free of ripple'],
  ])('%s: %s stands among what holds for the whole vehicle', (source, said) => {
    expect(layingNotes.filter(note => note.includes(source) && note.includes(said))).toHaveLength(1)
  })
})

describe('what published rules add to a meter’s readings', () => {
  const said = (given: Given, isFeed = false, coldCranking: number | null = null): string[] => {
    const [circuit] = readWiring(makeRecord(given)).circuits
    return circuit === undefined ? [] : meterRules(circuit, { nominal: 12, current: 10, isFeed, coldCranking })
  }

  test('13 CCR 1249(c): 85 % at a lamp’s socket, 10.2 V of 12 V, and of lamps only', () => {
    expect(said({ 'circuit/use': 'lighting' })).toEqual([expect.stringContaining(': 10.2 V of 12 V.')])
    expect(said({ 'circuit/use': 'pump' })).toEqual([])
  })

  test('FAA-H-8083-31: 2 % from the battery to the bus, 0.24 V of 12 V', () => {
    expect(said({ 'circuit/use': 'pump' }, true)).toEqual([expect.stringContaining(': 0.24 V of 12 V.')])
  })

  test.each([
    [600, 300],
    [625, 310],
    [770, 380],
  ])('a maker’s table of 2000: a battery of %d A when cold is tested at %d A', (cold, test) => {
    expect(said({ 'circuit/use': 'pump' }, true, cold)[1]).toContain(`${test} A of ${cold} A`)
    expect(said({ 'circuit/use': 'pump' }, false, cold)).toEqual([])
  })

  test('across a fuse of 15 A: 48 mV at 10 A', () => {
    expect(said({ 'circuit/fuse.rating': '15 A' })).toEqual([
      expect.stringContaining('about 48 mV with the load on, and 0.1 mV is 21 mA'),
    ])
  })
})

// The text of a directive of the 76/756/EEC family, as a parallel corpus prints it.
describe('a reversing lamp lights only in reverse gear and with the start device on', () => {
  const doubtsOf = (feeds: string, supply: string): string => {
    const given = { 'circuit/feeds': feeds, 'circuit/supply': supply }
    return readWiring(makeRecord(given))
      .circuits.flatMap(({ doubts }) => doubts)
      .join(' ')
  }

  test.each([
    ['reversing lamp', 'battery', true],
    ['reversing lamp', 'ignition', false],
    ['rear lamps', 'battery', false],
  ])('%s on %s, doubted: %s', (feeds, supply, isDoubted) => {
    expect(doubtsOf(feeds, supply).includes('live with the ignition off')).toBe(isDoubted)
  })
})
