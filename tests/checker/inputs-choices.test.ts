import { describe, expect, test } from 'vitest'
import { firstGiven } from '../../src/checker/inputs/choose.ts'
import { derived } from '../../src/checker/inputs/derived.ts'
import { constant, value } from '../../src/checker/inputs/value.ts'
import { optionalWords, wordList } from '../../src/checker/inputs/words.ts'
import { circuits, partElseVehicle, parts } from '../../src/checker/subjects.ts'
import { ask, makeCheck } from './made-check.ts'

describe('one of several ways to know a figure', () => {
  const spec = { symbol: 'R_i', meaning: 'internal resistance', dimension: 'resistance' } as const
  const battery = makeCheck({
    subject: partElseVehicle('battery', 'the battery, else the vehicle'),
    inputs: {
      resistance: firstGiven(
        spec,
        value({ of: 'battery/internal-resistance', ...spec, unit: 'mOhm' }),
        derived({
          ...spec,
          inputs: {
            cold: firstGiven(
              { symbol: 'I_cc', meaning: 'cold cranking current', dimension: 'current' },
              value({
                of: 'battery/cold-cranking',
                symbol: 'I_cc',
                meaning: 'cold cranking current',
                dimension: 'current',
                unit: 'A',
              }),
              value({
                of: 'build/battery.cold-cranking',
                symbol: 'I_cc',
                meaning: 'cold cranking current',
                dimension: 'current',
                unit: 'A',
              }),
            ),
            drop: constant({
              symbol: 'U_c',
              meaning: 'drop while cranking',
              dimension: 'voltage',
              value: 5.4,
              unit: 'V',
            }),
          },
          formula: [{ line: 'R_i = U_c / I_cc', unit: 'mOhm', says: 'from the cold cranking current' }],
        }),
      ),
    },
    formula: [{ line: 'R = R_i', unit: 'mOhm', says: 'the battery' }],
  })

  test.each([
    [
      'its own figure goes first',
      { 'battery/internal-resistance': '6 mΩ', 'battery/cold-cranking': '540 A' },
      'example',
      6,
    ],
    ['then what can be worked out', { 'battery/cold-cranking': '540 A' }, 'example', 10],
    ['then build.md', { 'build/battery.cold-cranking': '270 A' }, 'vehicle', 20],
  ])('%s', (_, given, subject, milliohms) => {
    const verdict = ask(battery, given)
    expect([verdict.subject, Number(verdict.result?.value.toFixed(9))]).toEqual([subject, milliohms])
  })

  test('what the last way wants is named, and what is written wrongly is not passed over', () => {
    expect(ask(battery, {}).missing).toEqual(['build:electrical/battery.cold-cranking'])
    expect(ask(battery, { 'battery/internal-resistance': '6 kg', 'battery/cold-cranking': '540 A' }).missing).toEqual([
      'example/internal-resistance',
    ])
  })
})

describe('words', () => {
  const relays = makeCheck({
    subject: circuits('each circuit'),
    inputs: {
      through: wordList({ of: 'circuit/through', meaning: 'relays' }),
      zone: optionalWords({ of: 'circuit/zone', meaning: 'zone' }),
    },
    compute: ({ through, zone }) => ({
      offenders: through.map(path => ({ path, why: `in ${zone ?? 'no zone'}` })),
      notes: ['counted'],
    }),
    limit: { who: 'practice', source: 'this test', max: { value: 0, unit: '1' } },
  })

  test('a list is read entry by entry, a single word as a list of one, nothing as none', () => {
    expect(
      ask(relays, { 'circuit/through': '[pump-relay, main-switch]', 'circuit/zone': 'cabin' }).working.offenders,
    ).toEqual([
      { path: 'pump-relay', why: 'in cabin' },
      { path: 'main-switch', why: 'in cabin' },
    ])
    expect(ask(relays, { 'circuit/through': 'pump-relay' })).toMatchObject({
      offenders: ['pump-relay'],
      working: { offenders: [{ why: 'in no zone' }], notes: ['counted'] },
    })
    expect(ask(relays, { 'circuit/load': '5 A' }).verdict).toBe('pass')
  })
})

describe('the one part of a kind', () => {
  const speed = makeCheck({
    subject: parts(['gearbox'], 'the gearbox'),
    inputs: {
      ratio: value({
        of: 'axle/ratio',
        symbol: 'i',
        meaning: 'axle ratio',
        dimension: 'ratio',
        unit: '1',
        exact: true,
      }),
    },
    formula: [{ line: 'i_f = i', unit: '1', says: 'the axle' }],
  })

  test('is found wherever it is; two that say the same are as one; two that differ are named', () => {
    const box = { 'gearbox/ratio-1': '3.5' }
    expect(ask(speed, { ...box, 'axle:rear/ratio': '4.30' }).result?.value).toBe(4.3)
    expect(ask(speed, { ...box, 'axle:rear/ratio': '4.30', 'axle:front/ratio': '4.30' }).result?.value).toBe(4.3)
    expect(ask(speed, { ...box, 'axle:rear/ratio': '4.30', 'axle:front/ratio': '4.10' }).working.needs).toEqual([
      { path: 'front/ratio', why: 'front, rear differ in their ratio' },
    ])
    expect(ask(speed, box).working.needs).toEqual([{ path: 'axle/ratio', why: 'no axle is on the vehicle' }])
  })
})
