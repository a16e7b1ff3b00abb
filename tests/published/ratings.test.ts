import { describe, expect, test } from 'vitest'
import { cableSizes } from '../../src/checker/tables/conductor-resistance.ts'
import cableRating from '../../src/checks/cable-rating.ts'
import faultWithstand from '../../src/checks/fault-withstand.ts'
import fuseProtectsCable from '../../src/checks/fuse-protects-cable.ts'
import unfused from '../../src/checks/unfused.ts'
import type { Given } from '../checker/record-maker.ts'
import { answersTo, answerTo } from '../checks/answer-to.ts'
import { mostOf, off, shareOff } from './put.ts'

const alone = (area: string, insulation: string): Given => ({
  'circuit/fuse.rating': '1 A',
  'circuit/load': '1 A',
  'circuit/cable.area': area,
  'circuit/cable.insulation': insulation,
  'build/nominal': '12 V',
  'build/ambient': '30 °C',
})
const carries = (given: Given): number => Number(mostOf(cableRating, given).toFixed(9))

/** Among so many loaded cables of one loom, at a temperature, 105 °C insulation. */
function beside(area: string, cables: number, zone: string): number {
  const others = Array.from({ length: cables - 1 }, (_, at) => [`circuit:other-${at}/loom`, 'main-loom'] as const)
  const place = { 'circuit/zone': 'here', 'build/zones.here': zone, 'circuit/loom': 'main-loom' }
  return carries({ ...alone(area, '105 °C'), ...place, ...Object.fromEntries(others) })
}

describe('33 CFR 183.425, table 5, at 60, 75, 80, 90, 105, 125 and 200 °C', () => {
  const columns = [60, 75, 80, 90, 105, 125, 200]
  test.each([
    ['18', [10, 10, 15, 20, 20, 25, 25]],
    ['16', [15, 15, 20, 25, 25, 30, 35]],
    ['14', [20, 20, 25, 30, 35, 40, 45]],
    ['12', [25, 25, 35, 40, 45, 50, 55]],
    ['10', [40, 40, 50, 55, 60, 70, 70]],
    ['8', [55, 65, 70, 70, 80, 90, 100]],
    ['6', [80, 95, 100, 100, 120, 125, 135]],
    ['4', [105, 125, 130, 135, 160, 170, 180]],
    ['3', [120, 145, 150, 155, 180, 195, 210]],
    ['2', [140, 170, 175, 180, 210, 225, 240]],
    ['1', [165, 195, 210, 210, 245, 265, 280]],
    ['1/0', [195, 230, 245, 245, 285, 305, 325]],
    ['2/0', [225, 265, 285, 285, 330, 355, 370]],
    ['3/0', [260, 310, 330, 330, 385, 410, 430]],
    ['4/0', [300, 360, 385, 385, 445, 475, 510]],
  ])('%s AWG', (gauge, row) => {
    expect(columns.map(degrees => carries(alone(`${gauge} AWG`, `${degrees} °C`)))).toEqual(row)
  })
})

describe('33 CFR 183.425, notes 1 and 2', () => {
  test.each([
    [3, 0.7],
    [4, 0.6],
    [6, 0.6],
    [7, 0.5],
    [24, 0.5],
    [25, 0.4],
    [40, 0.4],
  ])('%d loaded conductors together carry %d of their rating', (cables, factor) => {
    expect(beside('12 AWG', cables, '30 °C') / 45).toBeCloseTo(factor, 9)
  })

  test.each([
    ['16 AWG', 3, 17.5],
    ['12 AWG', 7, 22.5],
    ['12 AWG', 24, 22.5],
  ])('a cable maker multiplies them out: %s, %d of them outside the engine space, %d A', (area, cables, printed) => {
    expect(off(beside(area, cables, '30 °C'), printed)).toBeLessThanOrEqual(0.06)
  })

  // The law has 0.85 for 105 °C in an engine space of 50 °C; the root that we take, √(55/75), is 0.856.
  test.each([
    ['the factor itself', '10 AWG', 1, 51],
    ['of a maker', '14 AWG', 3, 20.8],
    ['of a maker', '10 AWG', 4, 30.6],
    ['of a maker', '10 AWG', 6, 30.6],
    ['of a maker', '4/0 AWG', 3, 264.8],
    ['of a maker', '6 AWG', 2, 102],
    ['rounded to whole amperes', '18 AWG', 1, 17],
    ['rounded to whole amperes', '14 AWG', 1, 29.75],
    ['rounded to whole amperes', '3 AWG', 1, 153],
  ])('an engine space of 50 °C, %s: %s, %d together, %d A within nine in a thousand', (_, area, cables, printed) => {
    expect(shareOff(beside(area, cables, '50 °C'), printed)).toBeLessThan(0.009)
  })

  test('below 50 V the factor for a bundle is told as prudent practice, not as law (33 CFR 183.435(b))', () => {
    const given = { ...alone('12 AWG', '105 °C'), 'circuit/loom': 'main-loom', 'circuit:b/loom': 'main-loom' }
    const said = answerTo(cableRating, { given }).working.tables.map(({ source }) => source)
    expect(said).toContain('33 CFR 183.425, table 5, note 2; below 50 V prudent practice, not law')
  })
})

test.each([
  ['0.5', 11],
  ['0.75', 14],
  ['1.0', 16.5],
  ['1.5', 21],
  ['2.0', 25],
  ['2.5', 29],
  ['3.0', 33],
  ['4.0', 39],
  ['4.5', 42],
  ['6.0', 50],
  ['8.5', 63],
  ['10.0', 70],
])(
  "a merchant's data sheet of ISO 6722 class B cable, 105 °C, one in free air: %s mm² carries %d A",
  (area, amperes) => {
    expect(carries(alone(`${area} mm²`, '105 °C'))).toBeCloseTo(amperes, 9)
  },
)

test('18 AWG of 105 °C carries 20 A by 33 CFR 183.425, and the table is named: AC 43.13-1B, table 11-9, has 6 A for 33 wires in a bundle at 70 °C', () => {
  const { limit, working } = answerTo(cableRating, { given: alone('18 AWG', '105 °C') })
  expect(limit?.max).toBeCloseTo(20, 9)
  expect(working.tables.map(({ source }) => source)).toEqual(['33 CFR 183.425, table 5, one conductor at 30 °C'])
})

describe('the fuse and its cable', () => {
  const fused = (gauge: string, amperes: number): Given => ({
    ...alone(`${gauge} AWG`, '105 °C'),
    'circuit/fuse.rating': `${amperes} A`,
  })

  test.each([
    ['18', 10],
    ['16', 10],
    ['14', 15],
    ['12', 20],
    ['10', 30],
    ['8', 50],
    ['6', 70],
    ['4', 70],
    ['2', 100],
    ['1', 150],
    ['1/0', 150],
  ])(
    'FAA AC 43.13-1B, table 11-3: %s AWG behind its fuse of %d A passes, and three times that fails',
    (gauge, amperes) => {
      const verdicts = [amperes, 3 * amperes].map(rating =>
        answerTo(fuseProtectsCable, { given: fused(gauge, rating) }),
      )
      expect(verdicts.map(({ verdict }) => verdict)).toEqual(['pass', 'fail'])
    },
  )

  test.each(['20', '22'])(
    'FAA AC 43.13-1B, table 11-3, begins thinner: %s AWG has no row here and is missing',
    gauge => {
      expect(answerTo(fuseProtectsCable, { given: fused(gauge, 5) }).verdict).toBe('missing')
    },
  )

  test.each([
    ['16', 25, 37.5],
    ['14', 35, 52.5],
  ])(
    'IEC 60364-4-43, 433.1, is the rule taken for %s AWG: %d A, not the %d A of 33 CFR 183.455(c)(1), and the answer says so',
    (gauge, amperes, boats) => {
      const { limit } = answerTo(fuseProtectsCable, { given: fused(gauge, boats) })
      expect(limit?.max).toBeCloseTo(amperes, 9)
      expect(limit?.source).toMatch(/IEC 60364-4-43.*stricter than the 150 % of 33 CFR 183\.455\(c\)\(1\)/)
      expect(answerTo(fuseProtectsCable, { given: fused(gauge, boats) }).verdict).toBe('fail')
    },
  )

  test.each([
    ['7 in', null, 0],
    ['7.01 in', null, 1],
    ['40 in', '16 mm', 0],
    ['40.1 in', '16 mm', 1],
  ])('33 CFR 183.455(b): a fuse %s along the cable, sleeve %s, is %d too far', (after, sleeve, count) => {
    const sheath = sleeve === null ? {} : { 'loom:main-loom/sleeve': sleeve }
    const given = { 'circuit/fuse.rating': '10 A', 'circuit/fuse.after': after, 'circuit/loom': 'main-loom', ...sheath }
    expect(answersTo(unfused, given).map(({ result }) => result?.value)).toEqual([count])
  })
})

describe('the adiabatic equation, k = 115 from 70 °C, for 0.4 s', () => {
  const withstands = mostOf(faultWithstand, {
    'circuit/fuse.let-through': '1 A²s',
    'circuit/cable.area': '1 mm²',
    'circuit/cable.insulation': '70 °C',
  })
  const needed = (amperes: number): number => Math.sqrt((amperes ** 2 * 0.4) / withstands)

  test.each([
    ['the IET', 120, 0.66, 0.005],
    ['BS 7671, as a calculator publishes it', 3000, 16.5, 0.05],
  ])('%s: %d A need %d mm²', (_, amperes, section, tolerance) => {
    expect(off(needed(amperes), section)).toBeLessThanOrEqual(tolerance)
  })

  test('the next section that a merchant has above 16.5 mm² is 25 mm² (IEC 60228)', () => {
    expect(cableSizes.mm2?.find(size => Number.parseFloat(size) >= needed(3000))).toBe('25 mm²')
  })
})
