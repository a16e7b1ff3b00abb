import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/checker/check.ts'
import type { Verdict } from '../../src/checker/verdict.ts'
import chargingBalance from '../../src/checks/charging-balance.ts'
import colourClash from '../../src/checks/colour-clash.ts'
import connectorMap from '../../src/checks/connector-map.ts'
import faultClears from '../../src/checks/fault-clears.ts'
import fuseBoxTotal from '../../src/checks/fuse-box-total.ts'
import fuseCarriesLoad from '../../src/checks/fuse-carries-load.ts'
import relayLoad from '../../src/checks/relay-load.ts'
import returnPath from '../../src/checks/return-path.ts'
import startingDrop from '../../src/checks/starting-drop.ts'
import trailerSocket from '../../src/checks/trailer-socket.ts'
import unfused from '../../src/checks/unfused.ts'
import type { Given } from '../checker/record-maker.ts'
import { answersTo } from './answer-to.ts'

const subjectsOf = (check: Check, given: Given): string[] =>
  answersTo(check, given).map(({ subject, aspect }) => [subject, aspect].filter(part => part !== null).join(' '))
const onlyOf = (check: Check, given: Given): Verdict => {
  const [verdict] = answersTo(check, given)
  if (verdict === undefined) throw new Error(`Unexpected silence of ${check.id}, expected an answer`)
  return verdict
}

describe('what is asked, and of what', () => {
  test.each([
    [
      'a circuit that starts the engine is not asked whether its fuse carries it',
      fuseCarriesLoad,
      { 'circuit/duty': 'starting', 'circuit/fuse.rating': '200 A' },
      [],
    ],
    ['nor whether a short clears it', faultClears, { 'circuit/duty': 'starting', 'circuit/fuse.rating': '200 A' }, []],
    [
      'a circuit that is only planned is not asked',
      fuseCarriesLoad,
      { 'circuit/state': 'planned', 'circuit/fuse.rating': '10 A' },
      [],
    ],
    [
      'unless build.md asks for it by name',
      fuseCarriesLoad,
      { 'circuit/state': 'planned', 'circuit/fuse.rating': '10 A', 'ask/fuse-carries-load': 'example' },
      ['example'],
    ],
    [
      'a temporary circuit is asked',
      fuseCarriesLoad,
      { 'circuit/state': 'temporary', 'circuit/fuse.rating': '10 A' },
      ['example'],
    ],
    [
      'only what starts the engine is asked for its drop while cranking',
      startingDrop,
      {
        'circuit:starter/use': 'starting',
        'circuit:starter/length': '2 m',
        'circuit:solenoid/use': 'starting',
        'circuit:solenoid/duty': 'intermittent',
        'circuit:solenoid/length': '2 m',
      },
      ['starter both', 'starter earth', 'starter supply'],
    ],
    ['a box is asked in the aspects that it gives', fuseBoxTotal, { 'fuse-box/rating': '60 A' }, ['example rating']],
    ['a box that is merely listed is not', fuseBoxTotal, { 'fuse-box/ways': '6' }, []],
    [
      'without an alternator the vehicle is asked',
      chargingBalance,
      { 'build/alternator.rating': '70 A', 'circuit:lamps/load': '5 A' },
      ['vehicle idle', 'vehicle speed'],
    ],
    ['an alternator in a record without circuits is not', chargingBalance, { 'alternator/rating': '70 A' }, []],
    [
      'a relay that no circuit goes through is not',
      relayLoad,
      { 'relay/rating': '30 A', 'circuit:lamps/load': '5 A' },
      [],
    ],
    ['a record without circuits is asked for no fuse', unfused, { 'tank/length': '860 mm' }, []],
    ['nor for a return', returnPath, { 'tank/length': '860 mm' }, []],
    ['a connector that names no other half is not', connectorMap, { 'connector/pins.1.carries': 'horn' }, []],
    [
      'where both halves name each other, the first by name is',
      connectorMap,
      {
        'connector:beta-plug/mates': 'alpha-plug',
        'connector:alpha-plug/mates': 'beta-plug',
        'connector:alpha-plug/pins.1.carries': 'horn',
      },
      ['alpha-plug'],
    ],
    [
      'where one names the other, that one is',
      connectorMap,
      { 'connector:beta-plug/mates': 'alpha-plug', 'connector:alpha-plug/pins.1.carries': 'horn' },
      ['beta-plug'],
    ],
  ] as [string, Check, Given, string[]][])('%s', (_, check, given, subjects) => {
    expect(subjectsOf(check, given)).toEqual(subjects)
  })
})

describe('what a working says that it assumed or left out', () => {
  test('charging-balance lists what was not counted, each with its reason', () => {
    const { working, assumed } = onlyOf(chargingBalance, {
      'alternator/rating': '70 A',
      'circuit:horn/load': '5 A',
      'circuit:horn/duty': 'intermittent',
      'circuit:lamps/load': '5 A',
      'circuit:clock/duty': 'standing',
      'circuit:clock/load': '10 mA',
      'build/nominal': '12 V',
    })
    expect(working.notes).toContain('Left out: clock (standing), horn (intermittent).')
    expect(assumed).toEqual(['duty of lamps `continuous`'])
  })

  test('starting-drop says that its limit is borrowed at 24 V, and only there', () => {
    const assumedAt = (nominal: string): readonly string[] =>
      onlyOf(startingDrop, { 'circuit/duty': 'starting', 'circuit/length': '2 m', 'build/nominal': nominal }).assumed
    expect(assumedAt('24 V')).toContain('limit published for 12 V, borrowed at 24 V')
    expect(assumedAt('12 V').join()).not.toContain('borrowed')
  })

  test('fault-clears says what it took for the fuse, the chassis, the joints and the battery', () => {
    const given = {
      'circuit/fuse.rating': '10 A',
      'circuit/cable.area': '1 mm²',
      'circuit/cable.insulation': '105 °C',
      'circuit/length': '1 m',
      'circuit/return': 'chassis',
      'build/nominal': '12 V',
    }
    expect([...onlyOf(faultClears, given).assumed].sort()).toEqual([
      'battery resistance left out',
      'blade fuse',
      'chassis return 5 mΩ',
      'joints 0 Ω',
    ])
  })

  test('unfused says whose nearness was not asked', () => {
    expect(onlyOf(unfused, { 'circuit/fuse.rating': '10 A' }).working.notes).toContain(
      'How far the fuse is from the source is not written, so nearness is not asked: circuit:example.',
    )
  })
})

describe('colours that are one however they are written', () => {
  test.each([
    ['green/purple', 'gn/vt', 1],
    ['Green/Violet', 'GN-VT', 1],
    ['brown with white tracer', 'BN/WH', 1],
    ['grey', 'gray', 1],
    ['green/purple', 'purple/green', 0],
    ['light green', 'green', 0],
    ['B', 'black', 0],
  ])('%s and %s: %d pair', (one, other, pairs) => {
    const given = {
      'circuit:a/loom': 'example',
      'circuit:b/loom': 'example',
      'circuit:a/cable.colour': one,
      'circuit:b/cable.colour': other,
    }
    expect(onlyOf(colourClash, given).result?.value).toBe(pairs)
  })
})

describe('words for the contacts of ISO 11446', () => {
  const contacts: Readonly<Record<string, readonly [fits: readonly string[], not: readonly string[]]>> = {
    '1': [
      ['left turn signal', 'LH indicator', 'indicator, left'],
      ['right indicator', 'indicators', 'left tail lamp'],
    ],
    '2': [
      ['fog lamp', '54G'],
      ['front fog lamps', 'fog return'],
    ],
    '3': [
      ['earth', 'ground', 'return 1 to 8', '31'],
      ['return for 9', 'stop lamps'],
    ],
    '5': [
      ['right tail lamp', 'RH side lamps', 'right rear position and number plate'],
      ['left tail lamp', 'right rear indicator', 'tail lamps'],
    ],
    '6': [
      ['brake lights', 'stop lamps'],
      ['horn', 'earth for stop lamps'],
    ],
    '8': [['reversing lamp', 'reverse light'], ['rear fog lamp']],
    '9': [
      ['permanent live', 'battery supply', 'constant 12 volts'],
      ['ignition supply', 'battery return'],
    ],
    '10': [
      ['ignition live', 'fridge, switched', 'charging supply'],
      ['permanent supply', 'unswitched supply'],
    ],
    '12': [['reserved', 'not used', 'trailer detection'], ['radio']],
  }
  const cases = Object.entries(contacts).flatMap(([contact, [fits, not]]) => [
    ...fits.map(words => [contact, words, true] as const),
    ...not.map(words => [contact, words, false] as const),
  ])

  test.each(cases)('contact %s carries `%s`: %s', (contact, words, isRight) => {
    const given: Record<string, string> = { 'trailer-socket/standard': 'ISO 11446' }
    const usual = {
      '1': 'left indicator',
      '3': 'earth',
      '4': 'right indicator',
      '5': 'right tail',
      '6': 'stop',
      '7': 'left tail',
    }
    for (const [pin, carries] of Object.entries({ ...usual, [contact]: words })) {
      given[`connector/pins.${pin}.carries`] = carries
      given[`connector/pins.${pin}.wire.area`] = '2.5 mm²'
    }
    const { offenders } = onlyOf(trailerSocket, given)
    expect(offenders?.includes(`connector:example/pins.${contact}`)).toBe(!isRight)
  })
})
