import { describe, expect, test } from 'vitest'
import { latest, quantityAt, resolvePath } from '../../src/record/lookups.ts'
import { fold, measured, part, said, session, subject, told } from './stated.ts'

const first = '2026-03-07-tank'
const second = '2026-03-14-tank'
const pump = subject('circuit', 'fuel-pump')

describe('the fold', () => {
  test('a later note replaces a measurement and the earlier value stays in the history with its place', () => {
    const { record } = fold([
      session(second, [measured('fuel-tank/length', '861 mm ± 2')]),
      session(first, [
        part('fuel-tank'),
        measured('fuel-tank/length', '860 mm ± 2'),
        measured('fuel-tank/width', '380 mm'),
      ]),
    ])
    const tank = record.parts[0]
    if (tank === undefined) throw new Error('expected the tank')
    expect(quantityAt(tank, 'length')?.value.text).toBe('861 mm ± 2')
    expect(quantityAt(tank, 'width')?.value.text).toBe('380 mm')
    expect(tank.properties.length?.map(({ session, place }) => [session, place.line])).toEqual([
      [first, 4],
      [second, 3],
    ])
    expect(record.measurements.map(({ path, superseded }) => [path, superseded])).toEqual([
      ['fuel-tank/length', true],
      ['fuel-tank/length', false],
      ['fuel-tank/width', false],
    ])
  })

  test('a value taken back is gone from what stands and not from the history', () => {
    const { record } = fold([
      session(first, [
        said(pump, 'fuse.rating', '15 A'),
        said(pump, 'fuse.box', 'aux-fuses'),
        said(pump, 'use', 'pump'),
      ]),
      session(second, [said(pump, 'fuse', null)]),
    ])
    const circuit = record.circuits[0]
    if (circuit === undefined) throw new Error('expected the circuit')
    expect(['fuse.rating', 'fuse.box', 'use'].map(key => latest(circuit, key) !== null)).toEqual([false, false, true])
    expect(circuit.properties['fuse.box']?.map(({ value }) => value.type)).toEqual(['words', 'nothing'])
  })

  test('sessions follow their dates, then their file names, a note without a date last', () => {
    const { record } = fold([
      session('2026-03-07-b', []),
      session('undated', []),
      session('2026-03-07-a', []),
      session('2026-01-10-z', []),
    ])
    expect(record.sessions.map(({ number, id }) => `${number} ${id}`)).toEqual([
      '1 2026-01-10-z',
      '2 2026-03-07-a',
      '3 2026-03-07-b',
      '4 undated',
    ])
  })

  test('of two files of one name and date the path decides', () => {
    const { record } = fold([
      session('2026-03-07-a', [], 'content/sessions/b/'),
      session('2026-03-07-a', [], 'content/sessions/a/'),
    ])
    expect(record.sessions.map(({ file }) => file)).toEqual([
      'content/sessions/a/2026-03-07-a.md',
      'content/sessions/b/2026-03-07-a.md',
    ])
  })
})

describe('a bare path', () => {
  const circuit = said(pump, 'use', 'pump')
  const loom = said(subject('loom', 'fuel-pump'), 'name', 'Pump loom')
  test.each([
    ['the part of that name', [part('fuel-pump'), circuit], 'fuel-pump/load'],
    ['where there is no part, the one other thing', [circuit], 'circuit:fuel-pump/load'],
    ['a thing that nobody declared', [], 'fuel-pump/load'],
  ])('means %s', (_, facts, path) => {
    const { record, findings } = fold([session(first, [...facts, measured('fuel-pump/load', '7 A')])])
    expect(record.measurements.map(each => each.path)).toEqual([path])
    expect(findings).toEqual([])
    expect(resolvePath(record, 'fuel-pump/load')?.subject.kind).toBe(path.startsWith('circuit') ? 'circuit' : 'part')
  })

  test('that may mean two things asks for the kind', () => {
    const { record, findings } = fold([session(first, [circuit, loom, measured('fuel-pump/load', '7 A')])])
    expect(told(findings)).toEqual([
      'unknown-target 2026-03-07-tank.md:5:3 Unexpected `fuel-pump/load`, which may be of the circuit or of the loom `fuel-pump`, expected the kind in front of it | circuit:fuel-pump/load',
    ])
    expect(resolvePath(record, 'fuel-pump/load')).toBeNull()
  })

  test('of the vehicle is always clear', () => {
    const { record } = fold([session(first, [measured('vehicle/wheelbase', '2010 mm')])])
    expect(quantityAt(record.vehicle, 'wheelbase')?.value.si).toBeCloseTo(2.01, 12)
    expect(record.measurements.map(({ path }) => path)).toEqual(['vehicle/wheelbase'])
  })
})
