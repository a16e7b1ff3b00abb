import { describe, expect, test } from 'vitest'
import { dipTable } from '../../src/checker/derived/dip-table.ts'
import { lineLoss } from '../../src/checker/derived/line-loss.ts'
import cooling from '../../src/checks/cooling.ts'
import ductArea from '../../src/checks/duct-area.ts'
import fillLimit from '../../src/checks/fill-limit.ts'
import fuelLine from '../../src/checks/fuel-line.ts'
import range from '../../src/checks/range.ts'
import returnRestrictor from '../../src/checks/return-restrictor.ts'
import { exampleId, makeRecord } from '../checker/record-maker.ts'
import { answerTo } from '../checks/answer-to.ts'
import { type Figure, off, put, resultOf, shareOff } from './put.ts'

const litresAt = (cylinder: string, heightMm: number): number => {
  const record = makeRecord({ 'volume/outside': `cylinder ${cylinder}`, 'tank/wall': '0 mm' })
  const mark = dipTable(record, exampleId, heightMm).find(one => Math.abs(one.heightMm - heightMm) < 1e-9)
  return mark?.litres ?? Number.NaN
}

describe('a cylinder on its side', () => {
  test('hackmath.net, 3613: 10 m long, the level 1 m wide and 0.2 m below the top: 15.138 m³', () => {
    const radius = (0.5 ** 2 + 0.2 ** 2) / (2 * 0.2) // m, of the chord
    const found = litresAt(`${2000 * radius} x 10000 mm`, 2000 * radius - 200)
    expect(off(found, 15138)).toBeLessThanOrEqual(0.6)
  })

  test.each([
    ['half full', 750, 4417.864669110647],
    ['full', 1500, 8835.72933822129],
  ])('fluids, after D. Jones, Calculating Tank Volume: 1.5 m across, 5 m long, %s', (_, height, litres) => {
    expect(shareOff(litresAt('1500 x 5000 mm', height), litres)).toBeLessThanOrEqual(1e-12)
  })
})

test('49 CFR 393.67, as it is quoted: 100 L are filled with 95 L', () => {
  expect(resultOf(fillLimit, { 'tank/filled-volume': '100 L' })).toBeCloseTo(95, 9)
})

const speed = (q: Figure, d: Figure, unit = 'm_s'): number => put(fuelLine.aspects?.speed?.formula, unit, { q, d })
const [speedLine, reynolds, laminar, turbulent, last] = lineLoss().formula ?? []
if (!speedLine || !reynolds || !laminar || !turbulent || !last) throw new Error('Unexpected loss, expected five lines')
/** Kinematic viscosity from the dynamic one; mm² for each second, as the line has it. */
const nu = (pascalSeconds: number, density: number): Figure => [(pascalSeconds / density) * 1e6, 'mm2']

describe('OpenStax, 12.1: speed is flow over area', () => {
  test.each([
    ['0.500 L/s in a hose of 0.900 cm radius: 1.96 m/s', [0.5, 'L_s'], [1.8, 'cm'], 1.96, 0.005],
    ['the same in a nozzle of 0.250 cm radius: 25.5 m/s', [0.5, 'L_s'], [0.5, 'cm'], 25.5, 0.1],
  ] as const)('%s', (_, q, d, expected, tolerance) => {
    expect(off(speed(q, d), expected)).toBeLessThanOrEqual(tolerance)
  })

  test('twice the bore, a quarter of the speed: 12.0 m/s become 3.0 m/s', () => {
    const q: Figure = [12 * (Math.PI / 4) * 0.02 ** 2, 'm3_s']
    expect([speed(q, [20, 'mm']), speed(q, [40, 'mm'])]).toEqual([expect.closeTo(12, 9), expect.closeTo(3, 9)])
  })

  test('Crane TP 410, 7-9, as fluids restates it: 400 US gal/min in 5.047 in run at 6.414 ft/s', () => {
    expect(shareOff(speed([400, 'gal_us_min'], [5.047, 'in'], 'ft_s'), 6.414)).toBeLessThanOrEqual(0.002)
  })

  test('100 km/h at 10.0 km/L are 2.78 cm³/s: 10 L/h, with which a litre goes 10 km', () => {
    const found = resultOf(range, {
      'tank/usable-volume': '10008 cm³', // an hour of 2.78 cm³/s
      'tank/contents': 'petrol',
      'engine:engine/consumption': '10 L/h',
      'vehicle/cruise-speed': '100 km/h',
    })
    expect(shareOff(found, 100)).toBeLessThanOrEqual(0.005 / 2.78)
  })
})

describe('Reynolds number', () => {
  const reynoldsOf = (v: number, d: number, viscosity: Figure): number =>
    put([reynolds], '1', { v: [v, 'm_s'], d: [d, 'm'], nu: viscosity })

  test.each([
    ['a needle of 0.150 mm radius, 1.7 m/s: 523', 1.7, 0.0003, nu(0.001, 1025), 523, 0.6],
    ['oil that gushes 25.0 m high from 0.100 m: 1990', Math.sqrt(2 * 9.8 * 25), 0.1, nu(1, 900), 1990, 6],
    [
      '0.500 L/s in a nozzle of 0.250 cm radius: 127 000',
      speed([0.5, 'L_s'], [5, 'mm']),
      0.005,
      nu(0.001002, 1000),
      127000,
      635,
    ],
    ['0.0300 m³/s of petrol in 13.0 m: 2000', speed([0.03, 'm3_s'], [13, 'm']), 13, nu(0.001, 680), 2000, 8],
  ])('OpenStax, 12.4 and 12.5, %s', (_, v, d, viscosity, expected, tolerance) => {
    expect(off(reynoldsOf(v, d, viscosity), expected)).toBeLessThanOrEqual(tolerance)
  })
})

describe('friction', () => {
  /** By Swamee and Jain; the roughness of the project is 0.0015 mm, so the bore sets their ratio. */
  const factor = (re: number, share: number): number =>
    put([turbulent], '1', { d: [0.0015 / share, 'mm'], Re: [re, '1'] })

  test('fluids: Swamee and Jain at Re 100 000 and a roughness of 1/10 000: 0.018 452', () => {
    expect(shareOff(factor(1e5, 1e-4), 0.018452424431901808)).toBeLessThanOrEqual(2e-4)
  })

  test('Colebrook has 0.018 514 there, within the one in a hundred that Swamee and Jain promise', () => {
    expect(shareOff(factor(1e5, 1e-4), 0.018513866077471)).toBeLessThan(0.01)
  })

  test('Crane TP 410, 7-1, smooth pipe at Re 100 600: 0.0179', () => {
    expect(shareOff(factor(100600, 1e-12), 0.0179)).toBeLessThanOrEqual(0.01)
  })

  test('Colebrook at Re 290 000 and 1/100 000 is 0.014 659, not the 0.014 620 that fluids prints for another formula', () => {
    expect(shareOff(factor(2.9e5, 1e-5), 0.014659)).toBeLessThan(0.01)
  })

  test('fluids, Crane TP 410, 7-9: laminar at Re 1675.617, 0.038 194 9', () => {
    expect(shareOff(put([laminar], '1', { Re: [1675.617, '1'] }), 0.0381949)).toBeLessThanOrEqual(1e-5)
  })

  test('Crane TP 410, 7-13: 100 ft of 2.067 in, 2 US gal/s of oil, f 0.0230, lose 66 500 Pa', () => {
    const found = put([speedLine, last], 'Pa', {
      q: [120, 'gal_us_min'],
      d: [2.067, 'in'],
      f: [0.023, '1'],
      L: [100, 'ft'],
      rho: [814.2665, 'kg_m3'],
      h: 'absent',
    })
    expect(shareOff(found, 66500)).toBeLessThanOrEqual(0.005)
  })

  const laminarLoss = (q: number, d: number, length: number, [density, viscosity]: readonly [number, number]): number =>
    put([speedLine, reynolds, laminar, last], 'Pa', {
      q: [q, 'm3_s'],
      d: [d, 'm'],
      L: [length, 'm'],
      rho: [density, 'kg_m3'],
      nu: nu(viscosity, density),
      h: 'absent',
    })

  test('OpenStax, 12.4: 0.120 cm³/s through 2.50 cm of 0.150 mm radius against 1066 Pa need 16 200 Pa', () => {
    expect(shareOff(laminarLoss(1.2e-7, 0.0003, 0.025, [1000, 0.001]) + 1066, 16200)).toBeLessThanOrEqual(0.005)
  })

  /** By the rise alone: nothing flows. */
  const riseLoss = (metres: number): number =>
    put([last], 'Pa', {
      f: [0, '1'],
      L: [1, 'm'],
      d: [10, 'mm'],
      v: [0, 'm_s'],
      rho: [1000, 'kg_m3'],
      h: [metres, 'm'],
    })

  test('OpenStax, 11.4: 40 m of water weigh 3.92e5 Pa', () => {
    expect(shareOff(riseLoss(40), 3.92e5)).toBeLessThanOrEqual(0.001)
  })

  test('OpenStax, 12: a fire hose that lifts 150 m and ends at 5 m/s needs 1.58e6 Pa, the air at its mouth counted', () => {
    const dynamic = (1000 * 5 ** 2) / 2 // Pa
    expect(shareOff(riseLoss(150) + dynamic + 1.013e5, 1.58e6)).toBeLessThanOrEqual(0.005)
    expect(
      shareOff(
        put(returnRestrictor.formula, 'm3_s', {
          C_d: [1, '1'],
          d: [20, 'mm'],
          p: [dynamic, 'Pa'],
          rho: [1000, 'kg_m3'],
        }),
        5 * (Math.PI / 4) * 0.02 ** 2,
      ),
    ).toBeLessThanOrEqual(1e-12)
  })

  test('equal area is not equal resistance (r⁴, OpenStax, 12.4): two tubes of half the area each lose twice what the one lost', () => {
    const water = [1000, 0.001] as const
    const one = laminarLoss(1e-6, 0.004, 1, water)
    expect(shareOff(laminarLoss(0.5e-6, 0.004 / Math.SQRT2, 1, water), 2 * one)).toBeLessThanOrEqual(1e-9)
    expect(
      [ductArea, fuelLine].map(({ notes }) => notes?.join(' ').includes('Equal area is not equal resistance')),
    ).toEqual([true, true])
  })

  test('OpenStax, 12.5: 1.00 km of petrol pipeline of 13.0 m loses 4.3e-5 Pa; the 2.68e-6 of the book takes the bore for the radius', () => {
    expect(shareOff(laminarLoss(0.03, 13, 1000, [680, 0.001]), 4.28e-5)).toBeLessThan(0.005)
    expect(shareOff(laminarLoss(0.03, 26, 1000, [680, 0.001]), 2.68e-6)).toBeLessThan(0.005)
  })
})

test('Crane TP 410, 7-23: an orifice of 2 in, C 0.625, under 4.4 inHg less 4.4 in of water passes 106 US gal/min', () => {
  const found = put(returnRestrictor.formula, 'gal_us_min', {
    C_d: [0.625, '1'],
    d: [2, 'in'],
    p: [13.81, 'kPa'], // 4.4 × (3386.4 − 248.8) Pa
    rho: [998.98, 'kg_m3'], // 62.364 lb/ft³
  })
  expect(shareOff(found, 106)).toBeLessThanOrEqual(0.01)
})

test('OpenStax, 14.2: 0.250 kg of water through 60 K is 62.8 kJ; so much each second', () => {
  const given = { 'radiator/flow': '0.25 L/s', 'radiator/temperature-in': '80 °C', 'radiator/temperature-out': '20 °C' }
  expect(shareOff(resultOf(cooling, given), 62.8)).toBeLessThanOrEqual(0.001)
})

describe('OpenStax, 13.2: petrol in a steel tank grows', () => {
  const warmer = (fill: string, capacity: string): number | undefined =>
    answerTo(fillLimit, {
      given: {
        'volume/outside': `box 1000 x 1000 x ${capacity}`,
        'tank/wall': '0 mm ± 0 mm',
        'tank/fill-line': fill,
        'tank/contents': 'petrol',
      },
    }).working.beside.find(({ unit }) => unit === 'K')?.value

  test('60.0 L that warm by 20 K spill 1.10 L, so 61.1 L hold them just', () => {
    expect(off(warmer('60.00 mm', '61.10 mm') ?? Number.NaN, 20)).toBeLessThanOrEqual(0.1)
  })

  test('5 L that warm by 10 K become 5.0475 L: a tank that does not grow is full, one of steel has 0.4 K left', () => {
    const found = warmer('50.00 mm', '50.475 mm') ?? Number.NaN
    expect(off(found, 10 * (0.00095 / (0.00095 - 0.000035)))).toBeLessThanOrEqual(0.01)
  })
})

test('OpenStax, 12.1, n₁A₁v₁ = n₂A₂v₂: 5.0e9 vessels of 4.0 µm radius at 0.33 mm/s carry what one of 10 mm carries at 27 cm/s', () => {
  const share = resultOf(ductArea, {
    'duct/bore': '20 mm',
    'duct/replaced-bore': '0.008 mm',
    'duct/replaced-count': '5000000000',
  })
  expect(shareOff((share / 100) * 0.27, 0.00033)).toBeLessThanOrEqual(0.03)
})

test('Australian National Guidelines for street rods, 2.2: a fuel line is held every 300 mm', () => {
  expect(fuelLine.notes?.join(' ')).toContain('A line is held at least every 300 mm')
})

describe('33 CFR 183.542(a): a boat’s fuel system holds 3 psi, or 1.5 times what stands in it full to overflow', () => {
  const proved = (metres: number): number =>
    put(fillLimit.beside?.slice(1), 'Pa', { rho: [750, 'kg_m3'], h: [metres, 'm'] })

  test('1 m of 750 kg/m³: 3 psi, 20 684 Pa, are more', () => {
    expect(off(proved(1), 20684.27)).toBeLessThanOrEqual(0.1)
  })

  test('3 m: 1.5 times 22 065 Pa are more', () => {
    expect(off(proved(3), 1.5 * 750 * 9.80665 * 3)).toBeLessThanOrEqual(0.1)
  })
})
