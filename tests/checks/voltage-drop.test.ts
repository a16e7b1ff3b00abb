import { describe, expect, test } from 'vitest'
import type { Verdict } from '../../src/checker/verdict.ts'
import voltageDrop from '../../src/checks/voltage-drop.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from './answer-to.ts'

const base: Given = {
  'circuit/load': '10.0 A ± 0',
  'circuit/use': 'heating',
  'circuit/length': '2 m ± 0',
  'circuit/cable.area': '4 mm²',
  'circuit/return': 'chassis',
  'circuit/joints': '0 Ω ± 0',
  'build/nominal': '12 V',
  'build/ambient': '20 °C ± 0',
}

const ask = (more: Given): Verdict => answerTo(voltageDrop, { given: { ...base, ...more } })
const volts = (more: Given): number => Number((ask(more).result?.value ?? Number.NaN).toFixed(9))

describe('the way back', () => {
  test('a chassis counts 0 Ω, and the working says that this was assumed', () => {
    expect(volts({})).toBe(0.099)
    expect(ask({}).assumed).toEqual(['chassis return 0 Ω'])
  })

  test('a chassis that was measured at its earth point counts what was measured', () => {
    const measured = { 'circuit/earth': 'left-rear', 'earth-point:left-rear/resistance': '2 mΩ ± 0' }
    expect(volts(measured)).toBe(0.119)
    expect(ask(measured).assumed).toEqual([])
  })

  test('a cable back adds its own length and section', () => {
    const back = { 'circuit/return.area': '2.5 mm²', 'circuit/return.length': '1 m ± 0' }
    const { 'circuit/return': _, ...without } = base
    const verdict = answerTo(voltageDrop, { given: { ...without, ...back } })
    expect(verdict.result?.value).toBeCloseTo(0.099 + 0.0798, 12)
    expect(verdict.assumed).toEqual([])
  })

  test('a cable back without a length is as long as the cable there, and the working says so', () => {
    const { 'circuit/return': _, ...without } = base
    const verdict = answerTo(voltageDrop, { given: { ...without, 'circuit/return.area': '4 mm²' } })
    expect(verdict.result?.value).toBeCloseTo(0.198, 12)
    expect(verdict.assumed).toEqual(['return cable as long as the supply'])
  })

  test('a return of which nothing is written is missing', () => {
    const { 'circuit/return': _, ...without } = base
    expect(answerTo(voltageDrop, { given: without })).toMatchObject({
      verdict: 'missing',
      missing: ['circuit:example/return'],
    })
  })
})

describe('joints, temperature, watts', () => {
  test('joints are added once', () => {
    expect(volts({ 'circuit/joints': '6 mΩ ± 0' })).toBe(0.159)
  })

  test('joints of which nothing is written count 0 Ω, and the working says so', () => {
    const { 'circuit/joints': _, ...without } = base
    expect(answerTo(voltageDrop, { given: without }).assumed).toEqual(['chassis return 0 Ω', 'joints 0 Ω'])
  })

  test('the zone’s temperature warms the cable, the ambient where no zone is named', () => {
    expect(volts({ 'build/ambient': '70 °C ± 0' })).toBeCloseTo(0.099 * 1.1965, 9)
    expect(volts({ 'circuit/zone': 'engine-bay', 'build/zones.engine-bay': '70 °C ± 0' })).toBeCloseTo(
      0.099 * 1.1965,
      9,
    )
  })

  test('a zone without a temperature is missing, whatever the ambient', () => {
    expect(ask({ 'circuit/zone': 'engine-bay' })).toMatchObject({
      verdict: 'missing',
      missing: ['build:electrical/zones.engine-bay'],
    })
  })

  test('watts are divided by the nominal voltage', () => {
    expect(volts({ 'circuit/load': '120 W ± 0' })).toBe(0.099)
    expect(volts({ 'circuit/load': '240 W ± 0', 'build/nominal': '24 V' })).toBe(0.099)
  })
})

describe('the feed of the fuse box', () => {
  const feed = {
    'circuit/fuse.box': 'front-box',
    'fuse-box:front-box/feed': 'main-feed',
    'circuit:main-feed/cable.area': '16 mm²',
    'circuit:main-feed/length': '1 m ± 0',
    'circuit:main-feed/return': 'chassis',
    'circuit:main-feed/joints': '1 mΩ ± 0',
    'circuit:horn/load': '5 A ± 0',
    'circuit:horn/fuse.box': 'front-box',
  }
  const ofFeed = (amperes: number): number => amperes * (1.21e-3 + 1e-3)

  test('adds its own drop at the sum of its box’s loads, on a line of its own', () => {
    expect(volts(feed)).toBeCloseTo(0.099 + ofFeed(15), 9)
    const line = ask(feed).working.steps.find(({ symbol }) => symbol.text === 'ΔU_feed')
    expect(line?.says).toBe('the feed of the fuse box, at the sum of its loads')
    expect(line?.value).toBeCloseTo(ofFeed(15), 12)
  })

  test('counts neither what is planned, nor what starts the engine, nor what stands', () => {
    for (const more of [
      { 'circuit:horn/state': 'planned' },
      { 'circuit:horn/duty': 'starting' },
      { 'circuit:horn/duty': 'standing' },
    ]) {
      expect(volts({ ...feed, ...more })).toBeCloseTo(0.099 + ofFeed(10), 9)
    }
  })

  test('itself carries its box’s loads, not one of its own', () => {
    const given = { ...base, ...feed, 'circuit:main-feed/load': '1 A' }
    const verdict = answerTo(voltageDrop, {
      given: Object.fromEntries(
        Object.entries(given).map(([path, text]) => [
          path.replace('circuit/', 'circuit:pump/').replace('circuit:main-feed/', 'circuit/'),
          text.replace('main-feed', 'example'),
        ]),
      ),
    })
    expect(verdict.result?.value).toBeCloseTo(ofFeed(15), 12)
  })

  test('a box that names no feed adds nothing, and the working says so', () => {
    const verdict = ask({ 'circuit/fuse.box': 'front-box' })
    expect(verdict.result?.value).toBeCloseTo(0.099, 12)
    expect(verdict.working.notes).toContain('The feed of the box front-box is not named, so nothing is added for it.')
  })

  test('a load of its box that is not written is missing', () => {
    const { 'circuit:horn/load': _, ...without } = feed
    expect(ask({ ...without, 'circuit:horn/use': 'signal' })).toMatchObject({
      verdict: 'missing',
      missing: ['circuit:horn/load'],
    })
  })

  test('boxes that feed each other in a ring are missing a feed, and end', () => {
    const ring = { ...feed, 'circuit:main-feed/fuse.box': 'front-box' }
    expect(ask(ring).verdict).toBe('missing')
    const wider = {
      ...feed,
      'circuit:main-feed/fuse.box': 'rear-box',
      'fuse-box:rear-box/feed': 'rear-feed',
      'circuit:rear-feed/fuse.box': 'front-box',
      'circuit:rear-feed/cable.area': '16 mm²',
    }
    expect(ask(wider).verdict).toBe('missing')
  })
})

describe('the limit by use', () => {
  test.each([
    ['lighting', 0.36],
    ['pump', 0.36],
    ['ignition', 0.36],
    ['charging', 0.36],
    ['heating', 1.2],
    ['starting', 1.2],
    ['signal', 1.2],
    ['other', 1.2],
  ])('%s may lose %f V of 12 V', (use, max) => {
    expect(ask({ 'circuit/use': use }).limit?.max).toBeCloseTo(max, 12)
  })

  test('a circuit of no named use is one of the rest, and the working says so', () => {
    const { 'circuit/use': _, ...without } = base
    const verdict = answerTo(voltageDrop, { given: without })
    expect([verdict.limit?.max, verdict.assumed]).toEqual([
      1.2000000000000002,
      ['chassis return 0 Ω', 'use `other`, the limit of the rest'],
    ])
  })
})

test('the worked example of the format: 7 A over 4.8 m of 2.5 mm² at 70 °C with 6 mΩ of joints', () => {
  const given = {
    'circuit/load': '7 A',
    'circuit/use': 'pump',
    'circuit/length': '4.8 m',
    'circuit/cable.area': '2.5 mm²',
    'circuit/return': 'chassis',
    'circuit/joints': '6 mΩ',
    'circuit/zone': 'engine-bay',
    'build/nominal': '12 V',
    'build/zones.engine-bay': '70 °C',
  }
  const { result, working, verdict } = answerTo(voltageDrop, { given })
  expect(verdict).toBe('marginal')
  // By hand: u² = (0.5/√3 × 51.83 mΩ)² + (7 A × 9.548 mΩ/m × 0.05 m/√3)² + (7 A × 0.5 mΩ/√3)² + (7 A × 38.3 mΩ × 0.00393 × 0.5/√3)²
  expect(result?.value).toBeCloseTo(0.36281515, 7)
  expect(result?.uncertainty).toBeCloseTo(0.0304, 3)
  expect(result?.worst).toBeCloseTo(7.5 * (7.98e-3 * (1 + 0.00393 * 50.5) * 4.85 + 6.5e-3), 9)
  expect(working.contributions.map(({ path }) => path.replace('circuit:example/', ''))).toEqual([
    'load',
    'joints',
    'length',
    'build:electrical/zones.engine-bay',
  ])
  expect(working.measureNext).toEqual([{ path: 'circuit:example/load', why: 'load carries 97 % of the uncertainty' }])
  expect(
    working.steps.map(({ symbol, values, result: shown }) =>
      `${symbol.text} = ${values.text} = ${shown.text}`.replace(/\s/gu, ' '),
    ),
  ).toEqual([
    'limit = 0.03 × 12 V = 0.36 V',
    'r_t = 7.98 mΩ/m × (1 + 0.00393 × (70 °C − 20 °C)) = 9.54807 mΩ/m',
    'R_out = 9.54807 mΩ/m × 4.8 m = 45.8307 mΩ',
    'ΔU = 7 A × (45.8307 mΩ + 0 Ω + 6 mΩ) = 0.3628 V',
  ])
})
