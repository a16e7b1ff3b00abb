import { describe, expect, test } from 'vitest'
import { correctedRating } from '../../src/checker/derived/cable-rating.ts'
import { circuitCurrent } from '../../src/checker/derived/circuit-current.ts'
import { pinsOfMate, pinsOfSubject } from '../../src/checker/derived/connector-pins.ts'
import { each, members } from '../../src/checker/inputs/each.ts'
import { optional, value } from '../../src/checker/inputs/value.ts'
import { optionalWords } from '../../src/checker/inputs/words.ts'
import { wordsOf } from '../../src/checker/look-up.ts'
import type { CheckSubject, Scope } from '../../src/checker/scope.ts'
import { fuseWays, subjectOf, things, wholeVehicle } from '../../src/checker/subjects.ts'
import { ask, makeCheck } from './made-check.ts'
import type { Given } from './record-maker.ts'

const mass = value({ of: 'part/mass', symbol: 'm', meaning: 'mass', dimension: 'mass', unit: 'kg' })
const heavyParts = ({ record }: Scope): CheckSubject[] => record.parts.map(part => subjectOf('part', part))

describe('a set of figures in a formula', () => {
  const axle = makeCheck({
    subject: wholeVehicle('the vehicle'),
    inputs: {
      masses: each(
        { symbol: 'm', meaning: 'masses', dimension: 'mass', of: heavyParts, wanted: 'parts with a mass' },
        mass,
      ),
      places: each(
        { symbol: 'x', meaning: 'places', dimension: 'length', of: heavyParts },
        value({ of: 'part/at', symbol: 'x', meaning: 'place', dimension: 'length', unit: 'mm' }),
      ),
      base: value({ of: 'vehicle/wheelbase', symbol: 'L', meaning: 'wheelbase', dimension: 'length', unit: 'mm' }),
    },
    formula: [{ line: 'm_r = sum(m * x) / L', unit: 'kg', says: 'on the rear axle' }],
  })
  const given = {
    'engine:front/mass': '120 kg',
    'engine:front/at': '-300 mm',
    'tank:rear/mass': '60 kg',
    'tank:rear/at': '2000 mm',
    'vehicle/wheelbase': '2400 mm',
  }

  test('is worked member by member, each with its own uncertainty and place', () => {
    const verdict = ask(axle, given)
    expect(verdict.result?.value).toBeCloseTo((120 * -300 + 60 * 2000) / 2400, 9)
    expect(verdict.inputs.map(({ path, value: figure, line }) => `${path} ${figure} ${line}`)).toEqual([
      'front/mass 120 3',
      'rear/mass 60 5',
      'front/at -300 4',
      'rear/at 2000 6',
      'vehicle/wheelbase 2400 7',
    ])
    expect(verdict.working.steps[0]?.values.text.replace(/\s/gu, ' ')).toBe(
      '(120 kg × -300 mm + 60 kg × 2000 mm) / 2400 mm'.replace('× -300 mm', '× (−300 mm)'),
    )
  })

  test('a member without its figure is missing by its own path', () => {
    const { 'tank:rear/at': _, ...without } = given
    expect(ask(axle, without)).toMatchObject({ verdict: 'missing', missing: ['rear/at'] })
  })

  test('an empty set is missing where one is wanted', () => {
    expect(ask(axle, { 'vehicle/wheelbase': '2400 mm' }).working.needs).toEqual([
      { path: 'vehicle', why: 'no parts with a mass' },
    ])
  })
})

describe('the circuits of one way', () => {
  const onWay = ({ record, subject }: Scope): CheckSubject[] =>
    record.circuits
      .filter(circuit => `${wordsOf(circuit, 'fuse.box')}/${wordsOf(circuit, 'fuse.way')}` === subject.id)
      .map(circuit => subjectOf('circuit', circuit))
  const way = makeCheck({
    subject: fuseWays('each way that is used'),
    inputs: {
      loads: each({ symbol: 'I', meaning: 'loads', dimension: 'current', of: onWay }, circuitCurrent()),
      ratings: each({ symbol: 'I_z', meaning: 'ratings', dimension: 'current', of: onWay }, correctedRating()),
    },
    formula: [{ line: 'I_way = sum(I)', unit: 'A', says: 'all on the way' }],
    limit: {
      who: 'standard',
      source: 'this test',
      max: { formula: [{ line: 'I_least = min(I_z)', unit: 'A', says: 'the least of their cables' }] },
    },
  })

  test('are added up and held against the least of their cables', () => {
    const circuit = (id: string, area: string): Given => ({
      [`circuit:${id}/load`]: '5 A',
      [`circuit:${id}/fuse.box`]: 'box',
      [`circuit:${id}/fuse.way`]: '3',
      [`circuit:${id}/cable.area`]: area,
      [`circuit:${id}/cable.insulation`]: '105 °C',
    })
    const verdict = ask(way, {
      ...circuit('a', '2.5 mm²'),
      ...circuit('b', '0.5 mm²'),
      'fuse-box:box/ways': '6',
      'build/ambient': '30 °C',
    })
    expect(verdict).toMatchObject({
      subject: 'box/3',
      verdict: 'pass',
      result: { value: 10 },
      limit: { max: 11, from: 'the least of their cables' },
    })
  })
})

describe('the ways of a mated pair', () => {
  const fields = {
    area: optional({ of: 'pin/wire.area', symbol: 'A', meaning: 'section', dimension: 'area', unit: 'mm2' }),
    carries: optionalWords({ of: 'pin/carries', meaning: 'what it carries' }),
  }
  const pair = makeCheck({
    subject: things('connector', 'each connector'),
    worthAsking: ['connector/mates'],
    inputs: {
      own: members({ meaning: 'its ways', of: pinsOfSubject }, fields),
      mate: members({ meaning: 'ways of its mate', of: pinsOfMate }, fields),
    },
    compute: ({ own, mate }) => {
      const like = new Map(mate.map(({ name, carries }) => [name, carries]))
      return {
        offenders: own
          .filter(({ name, carries }) => like.get(name) !== carries)
          .map(({ path, area }) => ({ path, why: `${area === null ? 'no section' : area * 1e6}` })),
      }
    },
    limit: { who: 'practice', source: 'this test', max: { value: 0, unit: '1' } },
  })

  test('are read by name from both halves, with what they carry and their sections', () => {
    const given = {
      'connector:stalk/mates': 'column',
      'connector:stalk/pins.1.carries': 'side lamps',
      'connector:stalk/pins.31b.carries': 'horn',
      'connector:stalk/pins.31b.wire.area': '0.75 mm²',
      'connector:column/pins.1.carries': 'side lamps',
      'connector:column/pins.31b.carries': 'dip',
    }
    const verdict = ask(pair, given)
    expect([verdict.subject, verdict.verdict, verdict.offenders, verdict.working.offenders]).toEqual([
      'stalk',
      'fail',
      ['connector:stalk/pins.31b'],
      [{ path: 'connector:stalk/pins.31b', why: '0.75' }],
    ])
    expect(verdict.inputs.find(({ path }) => path === 'connector:stalk/pins.31b.wire.area')).toMatchObject({
      value: 0.75,
      unit: 'mm2',
    })
  })
})
