import { describe, expect, test } from 'vitest'
import axleLoads from '../../src/checks/axle-loads.ts'
import gearing from '../../src/checks/gearing.ts'
import lampPosition from '../../src/checks/lamp-position.ts'
import pipeClearance from '../../src/checks/pipe-clearance.ts'
import propShaftSpeed from '../../src/checks/prop-shaft-speed.ts'
import rampAngles from '../../src/checks/ramp-angles.ts'
import speedometer from '../../src/checks/speedometer.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from '../checks/answer-to.ts'
import { mostOf, off, put, resultOf } from './put.ts'

const inch = 25.4 // mm, exactly (NIST SP 811)
const pound = 0.45359237 // kg, exactly (NIST SP 811)

/** How far a tyre rolls in one turn, mm, told by the road speed of 1000 turns a minute. */
const circumference = (width: number, profile: number, rim: number): number =>
  (resultOf(
    gearing,
    {
      'gearbox/ratio-1': '1',
      'axle:front-axle/ratio': '1',
      'tyre:tyres/width': `${width} mm`,
      'tyre:tyres/profile': `${profile} %`,
      'tyre:tyres/rim': `${rim} in`,
    },
    '1',
  ) *
    1000) /
  60

describe('ISO 4000-1: the nominal diameter of a tyre', () => {
  test.each([
    [205, 55, 16, 631.9, 'two tyre pages'],
    [225, 65, 17, 724.3, 'a tyre page'],
    [275, 40, 20, 728, 'a vehicle page'],
    [215, 60, 16, 664.4, 'worked; a tyre page prints 663.4'],
  ])('%d/%d R%d is %d mm across (%s)', (width, profile, rim, across) => {
    expect(off(circumference(width, profile, rim) / Math.PI, across)).toBeLessThanOrEqual(0.06)
  })

  test('a tyre page: 225/65 R17 is 2275 mm round', () => {
    expect(off(circumference(225, 65, 17), 2275)).toBeLessThanOrEqual(0.6)
  })
})

describe('road speed', () => {
  const perThousand = (ratio: string, final: string, tyre: Given): number =>
    resultOf(gearing, { 'gearbox/ratio-4': ratio, 'axle:front-axle/ratio': final, ...tyre }, '4')
  const round = { 'tyre:tyres/rolling-circumference': '2288 mm' }

  test('a worked example: 2200 rpm, 0.76, 4.10 and 2.288 m give 96.9 km/h', () => {
    expect(off(2.2 * perThousand('0.76', '4.10', round), 96.9)).toBeLessThanOrEqual(0.05)
  })

  test('another: 55 mph on a radius of 10 in, 5.2 overall, turn the engine at 4807 rpm', () => {
    const speed = perThousand('5.2', '1', { 'tyre:tyres/radius': '10 in' })
    expect(off((1000 * 55 * 1.609344) / speed, 4807)).toBeLessThanOrEqual(8)
  })

  test('a ratio divides; a published page multiplies by it', () => {
    expect(perThousand('2', '4.10', round)).toBeCloseTo(perThousand('1', '4.10', round) / 2, 9)
  })

  test.each([
    [40, 48],
    [80, 92],
    [120, 136],
  ])('UN R39, 5.4: at a true %d km/h a speedometer may show %d km/h', (real, shown) => {
    const given = { 'speedometer/indicated-speed': `${real} km/h`, 'speedometer/true-speed': `${real} km/h` }
    expect(real + mostOf(speedometer, given)).toBeCloseTo(shown, 9)
  })
})

type Item = readonly [pounds: number, inches: number]
const items = (list: readonly Item[]): Given =>
  Object.fromEntries(
    list.flatMap(([mass, at], index) => [
      [`part:item-${index}/mass`, `${mass} lb`],
      [`part:item-${index}/at`, `${at} in`],
    ]),
  )
const centre = (list: readonly Item[]): number => resultOf(axleLoads, items(list), 'centre') / inch
const rearward: readonly Item[] = [
  [1169, 10.6],
  [17, -49],
  [170, 16],
  [340, 48],
  [240, 22],
  [100, 75.5],
]

describe('centre of gravity', () => {
  test('FAA AC 43.13-1B, figure 10-10, forward: 11.2 in', () => {
    expect(off(centre([...rearward.slice(0, 3), [83, 22]]), 11.2)).toBeLessThanOrEqual(0.05)
  })

  test('FAA AC 43.13-1B, figure 10-11, rearward: 43 428 lb·in on 2036 lb', () => {
    expect(off(centre(rearward) * 2036, 43428)).toBeLessThanOrEqual(1)
  })

  // Their 8000, 2450 and 2700 lb are one part that stays and one that moves.
  test.each([
    [
      'FAA-H-8083-25, 100 lb of 8000 lb from station 30 to 150, at first at 77 in',
      78.5,
      [7900, 613000 / 7900],
      [100, 150],
      1e-6,
    ],
    ['a flying page, 100 lb of 2450 lb by 50 in', 2.04, [2350, 0], [100, 50], 0.005],
    ['another, 180 lb of 2700 lb by 32 in', 2.13, [2520, 0], [180, 32], 0.005],
  ] as const)('%s: %d in', (_, expected, rest, load, tolerance) => {
    expect(off(centre([rest, load]), expected)).toBeLessThanOrEqual(tolerance)
  })

  test('OpenStax University Physics: 52 % on the front of a wheelbase of 2.5 m, 1.3 m before the rear axle', () => {
    const given = {
      'vehicle/wheelbase': '2500 mm',
      'axle:front-axle/load': '520 kg',
      'axle:rear-axle/load': '480 kg',
    }
    expect(2500 - resultOf(axleLoads, given, 'centre')).toBeCloseTo(1300, 6)
  })

  test('a hitch maker: 1025 lb on the hitch and 7200 lb on the wheels, 264 in apart: 12.46 % on the hitch, 6.499 in too far back for a tenth', () => {
    const given = {
      'vehicle/wheelbase': '264 in',
      'axle:front-axle/load': '1025 lb',
      'axle:rear-axle/load': '7200 lb',
    }
    const ahead = 264 - resultOf(axleLoads, given, 'centre') / inch
    expect(off((100 * ahead) / 264, 12.46)).toBeLessThanOrEqual(0.005)
    expect(off(ahead - 0.1 * 264, 6.499)).toBeLessThanOrEqual(0.001)
  })

  test('a trailer owner: 400 lb on the hitch become 316.7 lb by 100 lb put 10 ft behind an axle 12 ft behind it', () => {
    const given = {
      'vehicle/wheelbase': '144 in',
      ...items([
        [400, 0],
        [100, 264],
      ]),
    }
    expect(off(resultOf(axleLoads, given, 'front') / pound, 316.7)).toBeLessThanOrEqual(0.05)
  })
})

test('a published example: 15 in under a wheelbase of 120 in break over at 28.07°', () => {
  const given = { 'vehicle/belly-clearance': '15 in', 'vehicle/wheelbase': '120 in' }
  expect(off(resultOf(rampAngles, given, 'breakover'), 28.07)).toBeLessThanOrEqual(0.01)
})

test("Carvill, Mechanical Engineer's Data Handbook, 1.6.6: a uniform shaft in short bearings whirls at 1.57/L² √(EI/m)", () => {
  const hertz = put(propShaftSpeed.beside?.slice(0, 3), 'Hz', {
    D: [40, 'mm'],
    w: [20, 'mm'],
    L: [1, 'm'],
    E: [200, 'GPa'],
    rho: [8000, 'kg_m3'],
  })
  const stiffness = 200e9 * (Math.PI / 64) * 0.04 ** 4 // N·m², a solid bar
  const massPerMetre = 8000 * (Math.PI / 4) * 0.04 ** 2 // kg/m
  expect(off(hertz / Math.sqrt(stiffness / massPerMetre), 1.57)).toBeLessThanOrEqual(0.001)
})

describe('UN R48, 6.19.4, daytime running lamps', () => {
  const limitOf = (aspect: string, width = '1500 mm') =>
    answerTo(lampPosition, {
      given: {
        'lamp/function': 'daytime running lamp',
        'lamp/height-top': '700 mm',
        'lamp/height-bottom': '650 mm',
        'lamp/spacing': '700 mm',
        'vehicle/width': width,
      },
      aspect,
    }).limit

  test('between 250 mm and 1500 mm high', () => {
    expect([limitOf('height-bottom')?.min, limitOf('height-top')?.max]).toEqual([250, 1500])
  })

  test('600 mm apart, 400 mm on a vehicle narrower than 1300 mm', () => {
    expect([limitOf('spacing')?.min, limitOf('spacing', '1299 mm')?.min]).toEqual([600, 400])
  })
})

describe('rows of UN R48 that were not read: missing, with what another rule that was read has beside them', () => {
  const saidOf = (lamp: string, aspect: string): string =>
    answerTo(lampPosition, {
      given: {
        'lamp/function': lamp,
        'lamp/height-top': '900 mm',
        'lamp/height-bottom': '800 mm',
        'lamp/spacing': '900 mm',
        'lamp/edge-distance': '200 mm',
      },
      aspect,
    })
      .working.needs.map(({ why }) => why.replace(/^.*in build\.md/, ''))
      .join()
  const british = 'Road Vehicles Lighting Regulations 1989 (SI 1989/1796)'
  const federal = '49 CFR 571.108 (FMVSS 108), as a letter of the NHTSA quotes it'
  const since = 'first used from 1 April 1986'

  test.each([
    [
      'stop lamp',
      'height-top',
      `; another rule, the ${british}, schedule 12, has at most 1500 mm, 2100 mm where no less can be; another rule, the ${federal}, has at most 1828.8 mm`,
    ],
    [
      'stop lamp',
      'height-bottom',
      `; another rule, the ${british}, schedule 12, has at least 350 mm; another rule, the ${federal}, has at least 381 mm`,
    ],
    ['direction indicator', 'height-top', `; another rule, the ${federal}, has at most 2108.2 mm`],
    [
      'dipped beam',
      'height-bottom',
      `; another rule, the ${british}, schedule 4, by an owners’ club’s summary, has at least 500 mm`,
    ],
    [
      'rear position lamp',
      'spacing',
      `; another rule, the ${british}, schedule 10, by an owners’ club’s summary, has at least 500 mm`,
    ],
    [
      'rear position lamp',
      'edge-distance',
      `; another rule, the ${british}, schedule 10, by an owners’ club’s summary, has at most 400 mm`,
    ],
    [
      'rear position lamp',
      'height-bottom',
      `; another rule, the ${british}, schedule 10, by an owners’ club’s summary, has at least 350 mm`,
    ],
    [
      'rear position lamp',
      'height-top',
      `; another rule, the ${british}, schedule 10, by an owners’ club’s summary, has at most 1500 mm, 2100 mm where no less can be`,
    ],
    [
      'rear fog lamp',
      'height-top',
      `; another rule, the ${british}, schedule 11, by an owners’ club’s summary, has at most 1000 mm`,
    ],
    ['stop lamp', 'spacing', `; another rule, the ${british}, schedule 12, has at least 400 mm`],
    [
      'front position lamp',
      'height-top',
      `; another rule, the ${british}, schedule 2, ${since}, has at most 1500 mm, 2100 mm where no less can be`,
    ],
    [
      'front position lamp',
      'edge-distance',
      `; another rule, the ${british}, schedule 2, ${since}, has at most 400 mm`,
    ],
    ['rear reflector', 'edge-distance', `; another rule, the ${british}, schedule 18, has at most 400 mm`],
    ['reversing lamp', 'height-top', ''],
  ])('%s, %s', (lamp, aspect, beside) => {
    expect(saidOf(lamp, aspect)).toBe(beside)
  })
})

test('Maryland COMAR 11.22.03.10B(2): a fuel line is rejected below 1½ in, 38.1 mm; as a requirement it passes at 38.1 mm and not below', () => {
  const verdictAt = (clearance: string): string =>
    answerTo(pipeClearance, {
      given: { 'pipe/clearance': `${clearance} ± 0 mm`, 'require/example/clearance': 'at least 1 1/2 in' },
    }).verdict
  expect([verdictAt('38.1 mm'), verdictAt('38 mm')]).toEqual(['pass', 'fail'])
})

test('real tyres differ by some per cent from their size: a circumference that was measured goes before it, and nothing is said of 2.5 % less', () => {
  const sized = { 'gearbox/ratio-1': '1', 'axle:front-axle/ratio': '1', 'tyre:tyres/width': '205 mm' }
  const size = { ...sized, 'tyre:tyres/profile': '55 %', 'tyre:tyres/rim': '16 in' }
  const bySize = resultOf(gearing, size, '1')
  const round = `${0.975 * Math.PI * 631.9} mm`
  const measured = answerTo(gearing, { given: { ...size, 'tyre:tyres/rolling-circumference': round }, aspect: '1' })
  expect((measured.result?.value ?? 0) / bySize).toBeCloseTo(0.975, 6)
  expect([measured.verdict, measured.working.offenders]).toEqual(['pass', []])
})

test('UN R39: both bounds are within: at a true 80 km/h 80 and 92 km/h pass, 79.9 and 92.1 km/h fail', () => {
  const verdictAt = (shown: number): string =>
    answerTo(speedometer, {
      given: {
        'speedometer/indicated-speed': `${shown} km/h ± 0 km/h`,
        'speedometer/true-speed': '80 km/h ± 0 km/h',
      },
    }).verdict
  expect([80, 92, 79.9, 92.1].map(verdictAt)).toEqual(['pass', 'pass', 'fail', 'fail'])
})

test('49 CFR 523.2 takes the tangent to the tyre; here it is the contact patch, and the inputs say so', () => {
  const meanings = Object.values(rampAngles.inputs).map(({ meaning }) => meaning)
  expect(meanings.filter(meaning => meaning.includes('from the contact patch'))).toHaveLength(2)
})

test('each axle and the whole are held, all three: a light front does not pay for an overloaded rear', () => {
  const given = {
    'vehicle/wheelbase': '2400 mm',
    'axle:front-axle/load': '200 kg',
    'axle:rear-axle/load': '700 kg',
    'axle:front-axle/rating': '600 kg',
    'axle:rear-axle/rating': '600 kg',
    'vehicle/gross-rating': '1200 kg',
  }
  const verdicts = ['front', 'rear', 'total'].map(aspect => answerTo(axleLoads, { given, aspect }).verdict)
  expect(verdicts).toEqual(['pass', 'fail', 'pass'])
})
