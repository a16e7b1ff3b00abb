import { describe, expect, test } from 'vitest'
import { loadChecks } from '../../src/checker/load-checks.ts'
import type { Verdict } from '../../src/checker/verdict.ts'
import type { Given } from '../checker/record-maker.ts'
import { answerTo } from './answer-to.ts'

// No published row is behind these: they hold what every builder knows of a thing, whatever its formula.
const checks = new Map((await loadChecks('src/checks')).map(check => [check.id, check]))

interface Series {
  readonly id: string
  readonly given: Given
  readonly aspect?: string
  /** Whether the result, or the limit's end, goes up or down with the figure. */
  readonly of: 'result' | 'most' | 'least'
}

const figureOf: Readonly<Record<Series['of'], (verdict: Verdict) => number | null>> = {
  result: ({ result }) => result?.value ?? null,
  most: ({ limit }) => limit?.max ?? null,
  least: ({ limit }) => limit?.min ?? null,
}

function series({ id, given, aspect, of }: Series, path: string, values: readonly string[]): number[] {
  const check = checks.get(id)
  if (check === undefined) throw new Error(`Unexpected check \`${id}\`, expected one of src/checks`)
  return values.map(value => {
    const answer = answerTo(check, { given: { ...given, [path]: value }, ...(aspect === undefined ? {} : { aspect }) })
    return figureOf[of](answer) ?? Number.NaN
  })
}

const mm = [0.5, 1, 2, 3, 5, 8].map(size => `${size} mm`)
const held: Series = {
  id: 'restraint',
  of: 'result',
  given: {
    'tank/mass': '10 kg',
    'tank/filled-volume': '50 L',
    'tank/contents': 'petrol',
    'strap:tank-straps/count': '2',
    'strap:tank-straps/width': '30 mm',
    'strap:tank-straps/thickness': '2 mm',
    'strap:tank-straps/yield-stress': '210 MPa',
  },
}
const bolt = { 'bolt/load': '2 kN', 'bolt/thread': 'M8', 'bolt/proof-stress': '580 MPa' }
const tapped = {
  'bolt/thread': 'M8',
  'bolt/tensile-strength': '800 MPa',
  'bolt/engagement': '12 mm',
  'bolt/plate-yield-stress': '250 MPa',
}
const weld = {
  'weld/leg-size': '5 mm',
  'weld/length': '80 mm',
  'weld/load': '10 kN',
  'weld/allowable-stress': '90 MPa',
}
const shaft = {
  'prop-shaft/length': '1000 mm',
  'prop-shaft/outside-diameter': '50 mm',
  'prop-shaft/wall': '2 mm',
  'prop-shaft/max-speed': '3000 rpm',
}
const tank = { 'tank/length': '500 mm', 'tank/width': '300 mm', 'tank/height': '200 mm', 'tank/wall': '2 mm' }
const car = { 'vehicle/wheelbase': '2400 mm', 'part:engine/mass': '200 kg', 'part:engine/at': '600 mm' }
const body = {
  'vehicle/wheelbase': '2400 mm',
  'vehicle/front-clearance': '300 mm',
  'vehicle/front-overhang': '600 mm',
  'vehicle/belly-clearance': '200 mm',
}
const line = { 'hose/bore': '8 mm', 'hose/length': '2 m', 'hose/flow': '100 L/h', 'hose/contents': 'petrol' }

describe('a size and what comes of it', () => {
  test.each([
    ['a thicker strap is never weaker', held, 'strap:tank-straps/thickness', mm, 'falls'],
    ['a wider strap is never weaker', held, 'strap:tank-straps/width', ['10 mm', '20 mm', '40 mm', '80 mm'], 'falls'],
    ['one strap more is never weaker', held, 'strap:tank-straps/count', ['1', '2', '3', '4'], 'falls'],
    ['a heavier tank asks more of its straps', held, 'tank/mass', ['5 kg', '10 kg', '20 kg'], 'rises'],
    [
      'a bigger bolt may carry more',
      { id: 'bolt-load', given: bolt, of: 'most' },
      'bolt/thread',
      ['M5', 'M6', 'M8', 'M10', 'M12', 'M16'],
      'rises',
    ],
    [
      'a harder bolt may carry more',
      { id: 'bolt-load', given: bolt, of: 'most' },
      'bolt/proof-stress',
      ['310 MPa', '580 MPa', '830 MPa', '970 MPa'],
      'rises',
    ],
    [
      'a harder plate needs less thread',
      { id: 'thread-engagement', given: tapped, of: 'least' },
      'bolt/plate-yield-stress',
      ['80 MPa', '125 MPa', '250 MPa', '355 MPa'],
      'falls',
    ],
    ['a bigger weld is stressed less', { id: 'fillet-weld', given: weld, of: 'result' }, 'weld/leg-size', mm, 'falls'],
    [
      'a longer weld is stressed less',
      { id: 'fillet-weld', given: weld, of: 'result' },
      'weld/length',
      ['20 mm', '40 mm', '80 mm'],
      'falls',
    ],
    [
      'a longer shaft may turn less fast',
      { id: 'prop-shaft-speed', given: shaft, of: 'most' },
      'prop-shaft/length',
      ['600 mm', '900 mm', '1200 mm', '1800 mm'],
      'falls',
    ],
    [
      'a wider shaft may turn faster',
      { id: 'prop-shaft-speed', given: shaft, of: 'most' },
      'prop-shaft/outside-diameter',
      ['40 mm', '50 mm', '75 mm'],
      'rises',
    ],
    [
      'a longer tank holds more',
      { id: 'tank-volume', given: tank, of: 'result' },
      'tank/length',
      ['300 mm', '500 mm', '900 mm'],
      'rises',
    ],
    ['a thicker wall leaves less', { id: 'tank-volume', given: tank, of: 'result' }, 'tank/wall', mm, 'falls'],
    [
      'what stands inside leaves less',
      { id: 'tank-volume', given: { ...tank, 'volume/outside': 'box 500 x 300 x 200 mm' }, of: 'result' },
      'volume/less',
      ['box 10 x 10 x 10 mm', 'box 100 x 50 x 50 mm', 'box 200 x 100 x 100 mm'],
      'falls',
    ],
    [
      'a mass further back bears more on the rear axle',
      { id: 'axle-loads', given: car, aspect: 'rear', of: 'result' },
      'part:engine/at',
      ['-400 mm', '0 mm', '600 mm', '2400 mm', '3000 mm'],
      'rises',
    ],
    [
      'and less on the front axle',
      { id: 'axle-loads', given: car, aspect: 'front', of: 'result' },
      'part:engine/at',
      ['-400 mm', '0 mm', '600 mm', '2400 mm', '3000 mm'],
      'falls',
    ],
    [
      'a nose held higher climbs a steeper ramp',
      { id: 'ramp-angles', given: body, aspect: 'approach', of: 'result' },
      'vehicle/front-clearance',
      ['100 mm', '200 mm', '400 mm'],
      'rises',
    ],
    [
      'a longer nose climbs a less steep one',
      { id: 'ramp-angles', given: body, aspect: 'approach', of: 'result' },
      'vehicle/front-overhang',
      ['300 mm', '600 mm', '900 mm'],
      'falls',
    ],
    [
      'a longer wheelbase grounds sooner',
      { id: 'ramp-angles', given: body, aspect: 'breakover', of: 'result' },
      'vehicle/wheelbase',
      ['2000 mm', '2400 mm', '3000 mm'],
      'falls',
    ],
    [
      'a wider hose flows slower',
      { id: 'fuel-line', given: line, aspect: 'speed', of: 'result' },
      'hose/bore',
      ['4 mm', '6 mm', '8 mm', '12 mm'],
      'falls',
    ],
  ] as [string, Series, string, string[], 'rises' | 'falls'][])('%s', (_, tried, path, values, way) => {
    const found = series(tried, path, values)
    expect(found.every(Number.isFinite), JSON.stringify(found)).toBe(true)
    const sorted = [...found].sort((one, other) => (way === 'rises' ? one - other : other - one))
    expect(found).toEqual(sorted)
    expect(new Set(found).size).toBe(found.length)
  })
})
