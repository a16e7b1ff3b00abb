import { describe, expect, test } from 'vitest'
import { optional, value } from '../../src/checker/inputs/value.ts'
import { words } from '../../src/checker/inputs/words.ts'
import { parts } from '../../src/checker/subjects.ts'
import { ask, makeCheck, run } from './made-check.ts'

describe('aspects, lines beside the answer, remarks', () => {
  const ramp = makeCheck({
    subject: parts(['chassis'], 'the chassis'),
    inputs: {
      clear: value({
        of: 'chassis/front-clearance',
        symbol: 'h',
        meaning: 'clearance',
        dimension: 'length',
        unit: 'mm',
      }),
      over: value({ of: 'chassis/front-overhang', symbol: 'l', meaning: 'overhang', dimension: 'length', unit: 'mm' }),
      belly: optional({
        of: 'chassis/belly-clearance',
        symbol: 'h_b',
        meaning: 'belly clearance',
        dimension: 'length',
        unit: 'mm',
      }),
      base: value({ of: 'chassis/wheelbase', symbol: 'L', meaning: 'wheelbase', dimension: 'length', unit: 'mm' }),
      name: words({ of: 'chassis/name', meaning: 'name', default: { words: 'none', said: 'no name' } }),
    },
    aspects: {
      approach: {
        formula: [{ line: 'alpha = atan(h / l)', unit: 'deg', says: 'approach' }],
        limit: { who: 'builder', source: 'build.md', required: ['vehicle/approach-angle'] },
      },
      breakover: {
        formula: [{ line: 'beta = 2 * atan(2 * h_b / L)', unit: 'deg', says: 'breakover' }],
        limit: null,
        worthAsking: ['chassis/belly-clearance'],
      },
    },
    beside: [{ line: 's = h / h_b', unit: '1', says: 'front beside belly' }],
    remark: {
      of: ['h', 'h_b'],
      say: ({ h, h_b }) => ((h?.value ?? 0) < (h_b?.value ?? 0) ? 'The front hangs lower than the belly.' : null),
    },
  })
  const given = {
    'chassis/front-clearance': '350 mm',
    'chassis/front-overhang': '700 mm',
    'chassis/belly-clearance': '15 in',
    'chassis/wheelbase': '120 in',
  }

  test('one entry an aspect, that of a published row: 2 atan(2 × 15 / 120) is 28.07°', () => {
    const [approach, breakover] = run(ramp, given)
    expect([approach?.aspect, approach?.verdict, Number(approach?.result?.value.toFixed(2)), approach?.limit]).toEqual([
      'approach',
      'pass',
      26.57,
      null,
    ])
    expect([breakover?.aspect, Number(breakover?.result?.value.toFixed(2))]).toEqual(['breakover', 28.07])
  })

  test('an aspect of which nothing is given does not appear', () => {
    const { 'chassis/belly-clearance': _, ...without } = given
    expect(run(ramp, without).map(({ aspect }) => aspect)).toEqual(['approach'])
  })

  test('what may be absent elsewhere, and on which all turns, is missing', () => {
    const check = makeCheck({
      ...ramp,
      inputs: ramp.inputs,
      subject: ramp.subject,
      aspects: { breakover: { formula: ramp.aspects?.breakover?.formula ?? [], limit: null } },
    } as never)
    const { 'chassis/belly-clearance': _, ...without } = given
    expect(ask(check, without)).toMatchObject({ verdict: 'missing', missing: ['example/belly-clearance'] })
  })

  test('what build.md requires of a path is the limit, and is not asked twice', () => {
    const [approach] = run(ramp, { ...given, 'require/vehicle/approach-angle': 'at least 30 deg' })
    expect(approach).toMatchObject({
      verdict: 'fail',
      limit: { min: 30, unit: 'deg', who: 'builder', from: 'at least 30 deg' },
      working: { requirement: 'vehicle/approach-angle' },
    })
  })

  test('lines and remarks stand beside the answer and want nothing', () => {
    const [approach] = run(ramp, given)
    expect([
      approach?.working.beside.map(({ symbol, result }) => `${symbol.text} ${result.text}`),
      approach?.working.notes,
    ]).toEqual([['s 0.9186'], ['The front hangs lower than the belly.']])
    const { 'chassis/belly-clearance': _, ...without } = given
    expect(run(ramp, without)).toMatchObject([{ verdict: 'pass', missing: [], working: { beside: [], notes: [] } }])
  })
})
