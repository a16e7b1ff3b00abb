import { describe, expect, test } from 'vitest'
import { loadChecks } from '../../src/checker/load-checks.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from './answer-to.ts'

const checks = new Map((await loadChecks('src/checks')).map(check => [check.id, check]))

interface Said {
  readonly verdict: string
  readonly why: string
}

/** The verdict, and every reason that is given for what is missing. */
function said(id: string, given: Given, aspect?: string): Said {
  const check = checks.get(id)
  if (check === undefined) throw new Error(`Unexpected check \`${id}\`, expected one of src/checks`)
  const { verdict, working } = answerTo(check, { given, ...(aspect === undefined ? {} : { aspect }) })
  return { verdict, why: working.needs.map(({ path, why }) => `${path}: ${why}`).join('; ') }
}

describe('a tank that cannot be', () => {
  const tank = (outside: string, more: Given = {}): Given => ({
    'volume/outside': outside,
    'tank/wall': '2 mm',
    ...more,
  })
  const box = 'box 500 x 400 x 300 mm'

  test.each([
    [
      'a prism that crosses itself',
      tank('prism of [0,0] [500,300] [500,0] [0,300] x 600 mm'),
      'volume:example/outside: the outline of prism of [0,0] [500,300] [500,0] [0,300] x 600 mm crosses itself, so it encloses no one area',
    ],
    [
      'a prism that folds back on itself',
      tank('prism of [0,0] [500,0] [200,0] [200,300] x 600 mm'),
      'volume:example/outside: the outline of prism of [0,0] [500,0] [200,0] [200,300] x 600 mm crosses itself, so it encloses no one area',
    ],
    [
      'a prism with one corner twice',
      tank('prism of [0,0] [500,0] [500,0] [0,300] x 600 mm'),
      'volume:example/outside: the outline of prism of [0,0] [500,0] [500,0] [0,300] x 600 mm has the same corner twice in a row',
    ],
    [
      'a wall thicker than half of the box',
      tank('box 860 x 380 x 6 mm', { 'tank/wall': '3 mm' }),
      'example/wall: the wall as written leaves no inside',
    ],
    [
      'a wall that is thicker than half of both sides, whose product would be positive again',
      tank('box 10 x 10 x 500 mm', { 'tank/wall': '20 mm' }),
      'example/wall: the wall as written leaves no inside',
    ],
    [
      'a wall thicker than a narrow prism',
      tank('prism of [0,0] [500,0] [500,20] [0,20] x 600 mm', { 'tank/wall': '15 mm' }),
      'example/wall: the wall as written leaves no inside',
    ],
    [
      'a wall thicker than a cylinder',
      tank('cylinder 40 x 600 mm', { 'tank/wall': '25 mm' }),
      'example/wall: the wall as written leaves no inside',
    ],
    [
      'a cut-out larger than the tank',
      tank(box, { 'volume/less': 'box 600 x 90 x 40 mm' }),
      'volume:example/less: box 600 x 90 x 40 mm is larger than the tank that it stands in',
    ],
    [
      'cut-outs that leave nothing together',
      tank(box, { 'volume/less': 'box 490 x 390 x 200 mm; box 490 x 390 x 200 mm' }),
      'volume:example/less: what stands inside is larger than the tank',
    ],
    [
      'a cut-out that crosses itself',
      tank(box, { 'volume/less': 'prism of [0,0] [50,30] [50,0] [0,30] x 60 mm' }),
      'volume:example/less: the outline of prism of [0,0] [50,30] [50,0] [0,30] x 60 mm crosses itself, so it encloses no one area',
    ],
    [
      'a side of nothing',
      tank('box 500 x 0 x 300 mm'),
      'volume:example/outside: the width of box 500 x 0 x 300 mm is zero, which it cannot be',
    ],
    [
      'a wall below zero',
      tank(box, { 'tank/wall': '-2 mm' }),
      'example/wall: thickness of the wall is below zero, which it cannot be',
    ],
  ])('%s is refused in words', (_, given, why) => {
    expect(said('tank-volume', given)).toEqual({ verdict: 'missing', why })
  })

  test.each([
    ['a step', 'prism of [0,0] [520,0] [520,140] [260,140] [260,300] [0,300] x 640 mm', 'pass'],
    [
      'the same written the other way round',
      'prism of [0,300] [260,300] [260,140] [520,140] [520,0] [0,0] x 640 mm',
      'pass',
    ],
    [
      'an L whose sides run back beside each other',
      'prism of [0,0] [500,0] [500,300] [400,300] [400,50] [0,50] x 640 mm',
      'pass',
    ],
  ])('%s is a tank', (_, outside, verdict) => {
    expect(said('tank-volume', tank(outside))).toEqual({ verdict, why: '' })
  })

  test('a fill line on a tank that cannot be is refused too', () => {
    const given = tank('prism of [0,0] [500,300] [500,0] [0,300] x 600 mm', { 'tank/fill-line': '200 mm' })
    expect(said('fill-limit', given).verdict).toBe('missing')
  })
})

describe('what cannot be of the rest of a vehicle', () => {
  const car: Given = {
    'vehicle/wheelbase': '2400 mm',
    'part:engine/mass': '200 kg',
    'part:engine/at': '0 mm',
    'axle:front-axle/rating': '600 kg',
    'axle:rear-axle/rating': '600 kg',
  }
  const shaft: Given = {
    'prop-shaft/length': '1000 mm',
    'prop-shaft/outside-diameter': '50 mm',
    'prop-shaft/wall': '2 mm',
    'prop-shaft/max-speed': '3000 rpm',
  }
  const bolt: Given = { 'bolt/load': '17 kN', 'bolt/thread': 'M8', 'bolt/proof-stress': '580 MPa' }

  test.each([
    [
      'a wheelbase of zero',
      'axle-loads',
      { ...car, 'vehicle/wheelbase': '0 mm' },
      'rear',
      'missing',
      'vehicle/wheelbase: wheelbase is zero, which it cannot be',
    ],
    [
      'a mass below zero',
      'axle-loads',
      { ...car, 'part:engine/mass': '-200 kg' },
      'front',
      'missing',
      'engine/mass: mass of one is below zero, which it cannot be',
    ],
    [
      'a stated load without a place',
      'axle-loads',
      { ...car, 'vehicle/load': '150 kg' },
      'front-laden',
      'missing',
      'vehicle/at: how far behind the front axle it is carried is not written',
    ],
    [
      'a shaft of no length',
      'prop-shaft-speed',
      { ...shaft, 'prop-shaft/length': '0 mm' },
      undefined,
      'missing',
      'example/length: length between joint centres is zero, which it cannot be',
    ],
    [
      'a shaft whose wall is thicker than half of it',
      'prop-shaft-speed',
      { ...shaft, 'prop-shaft/wall': '30 mm' },
      undefined,
      'fail',
      '',
    ],
    [
      'a plate without strength',
      'thread-engagement',
      {
        'bolt/thread': 'M8',
        'bolt/tensile-strength': '800 MPa',
        'bolt/engagement': '8 mm',
        'bolt/plate-yield-stress': '0 MPa',
      },
      undefined,
      'missing',
      'example/plate-yield-stress: yield stress of the plate is zero, which it cannot be',
    ],
    [
      'a proof stress that is only known to be below something',
      'bolt-load',
      { 'bolt/load': '2 kN', 'bolt/thread': 'M8', 'bolt/proof-stress': '<580 MPa' },
      undefined,
      'missing',
      'example/proof-stress: proof stress of its class is only known as <580 MPa, which cannot show it',
    ],
    [
      'a proof stress that is known to be above something',
      'bolt-load',
      { 'bolt/load': '2 kN', 'bolt/thread': 'M8', 'bolt/proof-stress': '>580 MPa' },
      undefined,
      'pass',
      '',
    ],
    [
      'a limit of another dimension',
      'bolt-load',
      { ...bolt, 'limit/bolt-load': 'max 20 kg/L, my own' },
      undefined,
      'fail',
      '',
    ],
    [
      'an own limit with its reason',
      'bolt-load',
      { ...bolt, 'limit/bolt-load': 'max 20 kN, tried on the bench' },
      undefined,
      'waived',
      '',
    ],
    ['an own limit without a reason', 'bolt-load', { ...bolt, 'limit/bolt-load': 'max 20 kN' }, undefined, 'fail', ''],
  ] as [string, string, Given, string | undefined, string, string][])('%s', (_, check, given, aspect, verdict, why) => {
    expect(said(check, given, aspect)).toEqual({ verdict, why })
  })

  test('a part with a mass and no place is named among what is left out, and puts nothing on an axle', () => {
    const check = checks.get('axle-loads')
    if (check === undefined) throw new Error('Unexpected absence of axle-loads')
    const without = answerTo(check, { given: car, aspect: 'front' })
    const placeless = answerTo(check, { given: { ...car, 'part:spare/mass': '40 kg' }, aspect: 'front' })
    expect(placeless.result).toEqual(without.result)
    expect(placeless.working.notes.join(' ')).toContain('spare')
  })
})
