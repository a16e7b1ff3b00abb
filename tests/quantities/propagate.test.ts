import { derivative } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { propagate, type UncertainInput } from '../../src/quantities/propagate.ts'

const input = (name: string, value: number, standard: number, source = name): UncertainInput => ({
  name,
  value,
  standard,
  low: value - standard * Math.sqrt(3),
  high: value + standard * Math.sqrt(3),
  source,
})

describe('JCGM 100:2008, annex H.1: the end gauge', () => {
  // As worked in the documentation of MSLNZ/GTC: l = 50 000 838 nm, u = 32 nm at first order.
  const inputs = [
    input('ls', 50000623, 25), input('d', 215, 0), input('repeat', 0, 5.8), input('random', 0, 3.9), input('systematic', 0, 6.7),
    input('deltaAlpha', 0, 0.577e-6), input('theta', -0.1, 0.41), input('alpha', 11.5e-6, 1.2e-6), input('deltaTheta', 0, 0.029),
  ] // biome-ignore format: a table reads better in rows
  const result = propagate(
    ({
      ls = 0,
      d = 0,
      repeat = 0,
      random = 0,
      systematic = 0,
      deltaAlpha = 0,
      theta = 0,
      alpha = 0,
      deltaTheta = 0,
    }) => ({
      l: ls + d + repeat + random + systematic - ls * (deltaAlpha * theta + alpha * deltaTheta),
    }),
    inputs,
  )?.l

  test('the length is 50 000 838 nm', () => {
    expect(result?.value).toBeCloseTo(50000838, 0)
  })

  test('its standard uncertainty is 32 nm', () => {
    expect(Math.abs((result?.standard ?? 0) - 32)).toBeLessThan(0.5)
  })

  test.each([
    ['ls', 25],
    ['deltaTheta', 16.599],
    ['deltaAlpha', 2.887],
    ['theta', 0],
  ])('%s contributes %d nm', (source, size) => {
    const own = result?.contributions.find(one => one.source === source)
    expect(Math.abs(Math.abs(own?.size ?? -1) - size)).toBeLessThan(0.08)
  })
})

test('JCGM 100:2008, annex H.2: correlated readings of voltage, current and phase', () => {
  // R 127.732(70), X 219.85(30), Z 254.26(24) ohm, as worked in the documentation of MSLNZ/GTC.
  const results = propagate(
    ({ v = 0, i = 1, phi = 0 }) => ({ r: (v * Math.cos(phi)) / i, x: (v * Math.sin(phi)) / i, z: v / i }),
    [input('v', 4.999, 0.0032), input('i', 0.019661, 9.5e-6), input('phi', 1.04446, 0.00075)],
    [
      { sources: ['v', 'i'], coefficient: -0.36 },
      { sources: ['v', 'phi'], coefficient: 0.86 },
      { sources: ['i', 'phi'], coefficient: -0.65 },
    ],
  )
  expect(Math.abs((results?.r?.value ?? 0) - 127.732)).toBeLessThan(0.001)
  expect(Math.abs((results?.r?.standard ?? 0) - 0.07)).toBeLessThan(0.0015)
  expect(Math.abs((results?.x?.value ?? 0) - 219.85)).toBeLessThan(0.005)
  expect(Math.abs((results?.x?.standard ?? 0) - 0.3)).toBeLessThan(0.006)
  expect(Math.abs((results?.z?.value ?? 0) - 254.26)).toBeLessThan(0.005)
  expect(Math.abs((results?.z?.standard ?? 0) - 0.24)).toBeLessThan(0.006)
})

test('EURACHEM/CITAC QUAM:2012, A1: a calibration standard, products of mixed distributions', () => {
  const volume = Math.hypot(0.1 / Math.sqrt(6), 0.02, 0.084 / Math.sqrt(3))
  const { c } = propagate(
    ({ m = 0, p = 0, v = 1 }) => ({ c: (1000 * m * p) / v }),
    [input('m', 100.28, 0.05), input('p', 0.9999, 0.0001 / Math.sqrt(3)), input('v', 100, volume)],
  ) ?? { c: undefined }
  expect(c?.value).toBeCloseTo(1002.7, 1)
  expect(c?.standard).toBeCloseTo(0.835199, 5)
  expect(c?.expanded).toBeCloseTo(2 * 0.835199, 4)
})

test('the slopes agree with the derivatives that mathjs takes', () => {
  const formula = 'x^3 * sin(y) / sqrt(z)'
  const at = { x: 1.7, y: 0.4, z: 2.9 }
  const { f } = propagate(
    ({ x = 0, y = 0, z = 1 }) => ({ f: (x ** 3 * Math.sin(y)) / Math.sqrt(z) }),
    [input('x', at.x, 0.01), input('y', at.y, 0.02), input('z', at.z, 0.03)],
  ) ?? { f: undefined }
  const exact = [
    ['x', 0.01],
    ['y', 0.02],
    ['z', 0.03],
  ] as const
  for (const [name, standard] of exact) {
    const slope = derivative(formula, name).evaluate(at) as number
    const own = f?.contributions.find(({ source }) => source === name)?.size ?? 0
    expect(own / (slope * standard)).toBeCloseTo(1, 6)
  }
})

/** A seeded generator (mulberry32), so that the trial comes out alike each time. */
function makeRandom(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

test('a Monte Carlo trial of a tank’s volume gives the same uncertainty (as JCGM 101 would)', () => {
  const random = makeRandom(7)
  const halves = { l: 2, w: 2, h: 3 }
  const trials = Array.from({ length: 40_000 }, () => {
    const draw = (middle: number, half: number) => middle + half * (2 * random() - 1)
    return draw(860, halves.l) * draw(380, halves.w) * draw(300, halves.h)
  })
  const mean = trials.reduce((sum, value) => sum + value, 0) / trials.length
  const deviation = Math.sqrt(trials.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (trials.length - 1))
  const { volume } = propagate(
    ({ l = 0, w = 0, h = 0 }) => ({ volume: l * w * h }),
    [
      input('l', 860, halves.l / Math.sqrt(3)),
      input('w', 380, halves.w / Math.sqrt(3)),
      input('h', 300, halves.h / Math.sqrt(3)),
    ],
  ) ?? { volume: undefined }
  expect((volume?.standard ?? 0) / deviation).toBeCloseTo(1, 1)
  expect((volume?.value ?? 0) / mean).toBeCloseTo(1, 3)
})

describe('inputs of one source are one variable', () => {
  test('x − x is nothing, without doubt', () => {
    const { d } = propagate(
      ({ a = 0, b = 0 }) => ({ d: a - b }),
      [input('a', 5, 0.1, 'x'), input('b', 5, 0.1, 'x')],
    ) ?? { d: undefined }
    expect(d).toMatchObject({ value: 0, standard: 0, low: 0, high: 0 })
  })

  test('two like values from two sources do not cancel', () => {
    const { d } = propagate(({ a = 0, b = 0 }) => ({ d: a - b }), [input('a', 5, 0.1), input('b', 5, 0.1)]) ?? {
      d: undefined,
    }
    expect(d?.standard).toBeCloseTo(0.1 * Math.SQRT2, 10)
  })
})

describe('the worst case', () => {
  test('stands at the ends of every input', () => {
    const ends = (name: string, low: number, high: number): UncertainInput => ({
      ...input(name, (low + high) / 2, 0.1),
      low,
      high,
    })
    const { q } = propagate(({ a = 0, b = 1 }) => ({ q: a / b }), [ends('a', 9, 11), ends('b', 4, 6)]) ?? {
      q: undefined,
    }
    expect([q?.low, q?.high]).toEqual([9 / 6, 11 / 4])
  })

  test('is found for many inputs as well', () => {
    const many = Array.from({ length: 14 }, (_, at) => ({ ...input(`x${at}`, 1, 0.1), low: 0.9, high: 1.1 }))
    const { s } = propagate(values => ({ s: Object.values(values).reduce((sum, value) => sum + value, 0) }), many) ?? {
      s: undefined,
    }
    expect(s?.low).toBeCloseTo(12.6, 10)
    expect(s?.high).toBeCloseTo(15.4, 10)
  })
})

test.each([
  ['a division by zero', ({ a = 0 }) => ({ q: 1 / (a - a) })],
  ['a root of less than nothing', ({ a = 0 }) => ({ q: Math.sqrt(-a) })],
  ['infinity near the value', ({ a = 0 }) => ({ q: 1 / (a - 5.0005) === 0 ? 0 : Math.sqrt(5 - a) })],
] as const)('%s gives no result at all', (_name, compute) => {
  expect(propagate(compute, [input('a', 5, 0.1)])).toBeNull()
})
