import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/checker/check.ts'
import { runChecks } from '../../src/checker/run-checks.ts'
import type { Verdict } from '../../src/checker/verdict.ts'
import ductArea from '../../src/checks/duct-area.ts'
import fuseProtectsCable from '../../src/checks/fuse-protects-cable.ts'
import requirement from '../../src/checks/requirement.ts'
import unfinished from '../../src/checks/unfinished.ts'
import voltageDrop from '../../src/checks/voltage-drop.ts'
import { type Given, makeRecord } from './record-maker.ts'

const lamp = (id: string): Given => ({
  [`circuit:${id}/load`]: '10.0 A',
  [`circuit:${id}/use`]: 'lighting',
  [`circuit:${id}/length`]: '5.00 m',
  [`circuit:${id}/cable.area`]: '2.5 mm²',
  [`circuit:${id}/return`]: 'chassis',
  [`circuit:${id}/joints`]: '0 mΩ',
})
const electrical = { 'build/nominal': '12 V', 'build/ambient': '20 °C' } as const

const told = (verdicts: readonly Verdict[]): string[] =>
  verdicts.map(({ check, subject, verdict }) => `${check} ${subject} ${verdict}`)
const run = (given: Given, ...checks: readonly Check[]): string[] => told(runChecks(makeRecord(given), checks))

describe('what is asked', () => {
  test('a check is asked of each subject, sorted by check, subject and aspect, whatever the order of the checks', () => {
    const given = { ...lamp('b'), ...lamp('a'), ...electrical, 'duct/bore': '60 mm', 'duct/replaced-bore': '75 mm' }
    const expected = ['duct-area example fail', 'unfinished vehicle pass', 'voltage-drop a fail', 'voltage-drop b fail']
    expect(run(given, voltageDrop, unfinished, ductArea)).toEqual(expected)
    expect(run(given, ductArea, unfinished, voltageDrop)).toEqual(expected)
  })

  test('a thing of which nothing is written that only this check needs is left alone', () => {
    expect(
      run({ 'circuit/load': '7 A', 'circuit/use': 'pump', ...electrical }, voltageDrop, fuseProtectsCable),
    ).toEqual([])
    expect(run({ 'duct/bore': '60 mm' }, ductArea)).toEqual([])
  })

  test('build.md can ask a check of everything, or of what it names', () => {
    const given = { 'circuit:a/load': '7 A', 'circuit:b/load': '7 A', ...electrical }
    expect(run({ ...given, 'ask/voltage-drop': 'all' }, voltageDrop)).toEqual([
      'voltage-drop a missing',
      'voltage-drop b missing',
    ])
    expect(run({ ...given, 'ask/voltage-drop': 'b' }, voltageDrop)).toEqual(['voltage-drop b missing'])
    expect(run({ ...given, 'ask/voltage-drop': 'circuit:a' }, voltageDrop)).toEqual(['voltage-drop a missing'])
  })

  test('what is planned or gone is asked only by its name', () => {
    const planned = { ...lamp('a'), ...electrical, 'circuit:a/state': 'planned' }
    expect(run(planned, voltageDrop)).toEqual([])
    expect(run({ ...planned, 'ask/voltage-drop': 'all' }, voltageDrop)).toEqual([])
    expect(run({ ...planned, 'ask/voltage-drop': 'a' }, voltageDrop)).toEqual(['voltage-drop a fail'])
  })

  test.each([
    ['fitted', true],
    ['modified', true],
    ['made', true],
    ['trial-fitted', true],
    ['ordered', false],
    ['removed', false],
    ['rejected', false],
    ['sold', false],
  ])('a part that is %s is asked about: %s', (state, isAsked) => {
    const given = { 'duct/bore': '60 mm', 'duct/replaced-bore': '75 mm', 'state/example': state }
    expect(run(given, ductArea)).toEqual(isAsked ? ['duct-area example fail'] : [])
  })
})

describe('a limit of build.md', () => {
  const given = { ...lamp('work-lamp'), ...electrical } // 0.399 V of 12 V: 3.3 %
  const first = (limits: Given): Verdict => {
    const [verdict] = runChecks(makeRecord({ ...given, ...limits }), [voltageDrop])
    if (verdict === undefined) throw new Error('expected a verdict')
    return verdict
  }

  test.each([
    ['none: the check’s own fails', {}, 'fail', 0.36],
    ['wider, with its reason, waives', { 'limit/voltage-drop/lighting': 'max 4 %, work lamps only' }, 'waived', 0.48],
    ['wider, without a reason, waives nothing', { 'limit/voltage-drop/lighting': 'max 4 %' }, 'fail', 0.48],
    ['in volts', { 'limit/voltage-drop/lighting': 'max 0.5 V, work lamps only' }, 'waived', 0.5],
    ['narrower fails', { 'limit/voltage-drop/lighting': 'max 2 %, our own target' }, 'fail', 0.24],
    [
      'the subject’s goes before its group’s',
      {
        'limit/voltage-drop/work-lamp': 'max 2 %, it is far away',
        'limit/voltage-drop/lighting': 'max 4 %, work lamps only',
      },
      'fail',
      0.24,
    ],
    ['of another group changes nothing', { 'limit/voltage-drop/pump': 'max 4 %, the pump is small' }, 'fail', 0.36],
    ['of the whole check', { 'limit/voltage-drop': 'max 5 %, a field car' }, 'waived', 0.6],
  ] as [string, Given, string, number][])('%s', (_, limits, verdict, max) => {
    const found = first(limits)
    expect([found.verdict, Number(found.limit?.max?.toFixed(9))]).toEqual([verdict, max])
  })

  test('stands beside the check’s own, with its reason and its place', () => {
    expect(first({ 'limit/voltage-drop/lighting': 'max 4 %, work lamps only' })).toMatchObject({
      limit: { from: '4 % of 12\u202fV', who: 'builder', source: 'work lamps only' },
      working: {
        override: {
          default: { max: 0.36, from: '3 % of 12\u202fV', who: 'practice' },
          verdict: 'fail',
          why: 'work lamps only',
          place: { file: 'content/build.md' },
        },
      },
    })
  })

  test('without a reason the working says why it waives nothing', () => {
    expect(first({ 'limit/voltage-drop/lighting': 'max 4 %' }).working.notes).toContain(
      'The limit of build.md has no reason beside it, so it waives nothing.',
    )
  })
})

describe('a figure that is only a bound', () => {
  const drop = (load: string): string => {
    const [verdict] = runChecks(makeRecord({ ...lamp('a'), ...electrical, 'circuit:a/load': load }), [voltageDrop])
    return `${verdict?.verdict} ${verdict?.missing.join()}`
  }

  test('shows what it can show: a greatest load that is small enough, a least load that is too much', () => {
    expect([drop('up to 5 A'), drop('at least 12 A')]).toEqual(['pass ', 'fail '])
  })

  test('and is missing where it cannot: a least load may be more, a greatest load may be less', () => {
    expect([drop('at least 5 A'), drop('up to 12 A')]).toEqual(['missing circuit:a/load', 'missing circuit:a/load'])
  })
})

describe('a requirement of build.md', () => {
  const ask = (required: string, measured: string, head = {}) =>
    runChecks(makeRecord({ 'require/example/ground-clearance': required, 'tank/ground-clearance': measured }, head), [
      requirement,
    ])[0]

  test.each([
    ['at least 200 mm', '205 mm', 'pass', '205.00 ± 0.58 mm against 200 mm at least: 5 mm to spare.'],
    ['at least 200 mm', '196 mm', 'fail', '196.00 ± 0.58 mm against 200 mm at least: short by 4 mm.'],
    [
      'at least 200 mm',
      '200 mm',
      'marginal',
      '200.00 ± 0.58 mm against 200 mm at least: 0 mm to spare, and the limit lies within what the result can be.',
    ],
    ['at most 200 mm', '210 mm', 'fail', '210.00 ± 0.58 mm against 200 mm at most: over by 10 mm.'],
    ['612 mm to 618 mm', '620 mm', 'fail', '620.00 ± 0.58 mm against 618 mm at most: over by 2 mm.'],
    ['612 mm to 618 mm', '610 mm', 'fail', '610.00 ± 0.58 mm against 612 mm at least: short by 2 mm.'],
    ['615 mm ± 3 mm', '616 mm', 'pass', '616.00 ± 0.58 mm against 618 mm at most: 2 mm to spare.'],
    ['at least 200 mm', 'at least 210 mm', 'pass', '210\u202fmm against 200 mm at least: 10 mm to spare.'],
  ])('%s, measured %s: %s', (required, measured, verdict, says) => {
    const found = ask(required, measured)
    expect([found?.verdict, found?.working.says.replace(/\s/gu, ' ')]).toEqual([verdict, says.replace(/\s/gu, ' ')])
  })

  test('short by 4 mm is told on its own', () => {
    expect(ask('at least 200 mm', '196 mm')?.working.beyondBy?.replace(/\s/gu, ' ')).toBe('4 mm')
  })

  test('result and limit are in the unit that the build names, else as measured', () => {
    expect(ask('at least 200 mm', '8 in')).toMatchObject({ result: { value: 8, unit: 'in' }, limit: { unit: 'in' } })
    expect(ask('at least 200 mm', '8 in', { units: { length: 'mm' } })).toMatchObject({
      result: { value: 203.2, unit: 'mm' },
      limit: { min: 200, unit: 'mm' },
    })
  })

  test('of a thing that nobody has mentioned yet is missing', () => {
    expect(
      runChecks(makeRecord({ 'require/left-drive-shaft/length': '612 mm to 618 mm' }), [requirement]),
    ).toMatchObject([
      {
        subject: 'left-drive-shaft/length',
        verdict: 'missing',
        result: null,
        missing: ['left-drive-shaft/length'],
        limit: { min: 612, max: 618, unit: 'mm', who: 'builder' },
      },
    ])
  })

  test('of a circuit or of the vehicle is found by its path', () => {
    const given = {
      'require/circuit:fuel-pump/length': 'at most 5 m',
      'circuit:fuel-pump/length': '4.8 m',
      'require/vehicle/wheelbase': 'at least 2.3 m',
      'vehicle/wheelbase': '2.38 m',
    }
    expect(run(given, requirement)).toEqual([
      'requirement circuit:fuel-pump/length pass',
      'requirement vehicle/wheelbase pass',
    ])
  })
})
